/** The text of a plan that shows every key. */

import { readFileSync } from "node:fs";

export const wholePlan = readFileSync(new URL("../versions/1.json", import.meta.url), "utf8");
