/** The plans in tests/cases/reference with the answers of an independent reference (README there). */

import { readdirSync, readFileSync } from "node:fs";
import { complete, type Plan, type PlanDocument } from "../../src/plan";

const folder = new URL("../cases/reference/", import.meta.url);

/** The numbers of a right answer, key by key those of the result file. */
// biome-ignore lint/suspicious/noExplicitAny: the files are read by many tests, each taking its own keys
export type Expected = any;

export interface ReferenceCase {
  readonly name: string;
  readonly document: PlanDocument;
  readonly plan: Plan;
  readonly expected: Expected;
}

function readJson(file: string): unknown {
  return JSON.parse(readFileSync(new URL(file, folder), "utf8"));
}

/** All cases, in the order of their names. */
export const referenceCases: readonly ReferenceCase[] = readdirSync(folder)
  .filter((file) => file.endsWith(".expected.json"))
  .map((file) => file.slice(0, -".expected.json".length))
  .sort()
  .map((name) => {
    const document = readJson(`${name}.json`) as PlanDocument;
    return { name, document, plan: complete(document), expected: readJson(`${name}.expected.json`) };
  });
