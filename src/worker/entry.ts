/** What runs in the worker. */

import { expose } from "comlink";
import { createEngine } from "./engine";

expose(createEngine());
