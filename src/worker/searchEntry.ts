/** What runs in the second worker. */

import { expose } from "comlink";
import { breathe } from "./breathe";
import { createSearch } from "./search";

expose(createSearch(breathe));
