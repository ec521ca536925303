import { beforeEach, expect, test, vi } from "vitest";
import type * as Statics from "../../src/statics";

const solved = vi.hoisted(() => ({ steps: [] as string[] }));
vi.mock("../../src/statics", async (original) => {
  const statics = await original<typeof Statics>();
  const solveStep: typeof statics.solveStep = (plan, step, ...more) => {
    solved.steps.push(step.id);
    return statics.solveStep(plan, step, ...more);
  };
  return { ...statics, solveStep };
});

const { edits } = await import("../../src/store");
const { beam, editorOn, h1, layoutA, stepOne } = await import("./plans");

/** Two layouts, each with a step of its own. */
const twoLayouts = edits["layout.add"].run(beam, { name: "B", copyOf: layoutA });
const other = twoLayouts.layouts[1]!.id;
const plan = edits["step.change"].run(twoLayouts, { step: "weld" as never, change: { layout: other } });

const editor = editorOn(plan);
beforeEach(() => {
  solved.steps = [];
});

const callsOf = (edit: () => unknown): readonly string[] => {
  solved.steps = [];
  edit();
  return solved.steps;
};

test("each edit solves only the steps that read what it changes", () => {
  const edit = (id: Parameters<typeof editor.run>[0], args: never) =>
    callsOf(() => expect(editor.run(id, args)).toBe(true));
  expect(edit("plan.title", { title: "Another" } as never)).toEqual([]);
  expect(edit("plan.units", { display: { units: "us" } } as never)).toEqual([]);
  expect(edit("plan.criteria", { change: { levelTolerance: 0.001 } } as never)).toEqual([]);
  expect(edit("step.change", { step: stepOne, change: { name: "Down" } } as never)).toEqual([]);
  expect(edit("stand.move", { layout: layoutA, stand: h1, s: 1.5, t: 0 } as never)).toEqual([stepOne]);
  expect(edit("stand.move", { layout: other, stand: h1, s: 1.5, t: 0 } as never)).toEqual(["weld"]);
  expect(edit("mass.change", { mass: { ...beam.piece.masses[0]!, massPerLength: [90, 90] } } as never)).toEqual([
    stepOne,
    "weld",
  ]);
});

test("selecting, looking and going back in the history solve nothing", () => {
  expect(callsOf(() => editor.select({ kind: "stands", ids: [h1] }))).toEqual([]);
  expect(callsOf(() => editor.look({ step: "weld" as never }))).toEqual([]);
  expect(callsOf(() => editor.look({ camera: { scale: 80, s: 6, t: 0, z: 1 } }))).toEqual([]);
  editor.run("stand.move", { layout: layoutA, stand: h1, s: 2, t: 0 });
  expect(callsOf(editor.undo)).toEqual([]);
  expect(callsOf(editor.redo)).toEqual([]);
});

test("a move of a gesture is one solve of each step on that layout, and finishing it none", () => {
  editor.gesture.start("Move H-1");
  const moves = [2.1, 2.2, 2.3].map((s) =>
    callsOf(() =>
      editor.gesture.move((document) => edits["stand.move"].run(document, { layout: layoutA, stand: h1, s, t: 0 })),
    ),
  );
  expect(moves).toEqual([[stepOne], [stepOne], [stepOne]]);
  expect(callsOf(editor.gesture.finish)).toEqual([]);
});
