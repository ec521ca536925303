/** What can be drawn, as rows of the table of actions: found by their words, without keys of their own. */

import type { Action } from "../commands/action";
import { shown } from "../selectors";
import { draftingOf } from "./drafting";
import { type ShapeKind, shapeNatures } from "./shapes";

const kinds: readonly ShapeKind[] = [
  "outline",
  "restZone",
  "noRestZone",
  "workWindow",
  "bay",
  "obstacle",
  "noFootZone",
  "walkway",
];

export const drawActions: readonly Action[] = kinds.map((kind) => ({
  id: `draw.${kind}`,
  label: `Draw ${shapeNatures[kind].one}`,
  keys: [],
  where: "page",
  group: "draw",
  enabled: (state) => shapeNatures[kind].frame === "piece" || kind === "bay" || shown(state).bay !== null,
  run: (editor) => draftingOf(editor).begin(kind),
}));
