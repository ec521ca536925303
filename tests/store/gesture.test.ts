import { describe, expect, test } from "vitest";
import type { PlanDocument } from "../../src/plan";
import { edits, shown } from "../../src/store";
import { beam, countingReport, editorOn, h1, layoutA } from "./plans";

const to = (s: number) => (document: PlanDocument) =>
  edits["stand.move"].run(document, { layout: layoutA, stand: h1, s, t: 0 });

/** A frame that comes when it is told to. */
function handFrames() {
  const tasks: (() => void)[] = [];
  return {
    schedule: (task: () => void) => void tasks.push(task),
    draw: () => {
      for (const task of tasks.splice(0)) task();
    },
  };
}

describe("gesture", () => {
  test("a finished one is exactly one entry, computed from the start", () => {
    const editor = editorOn();
    editor.gesture.start("Move H-1");
    for (const s of [1.5, 2.5, 3.25]) editor.gesture.move(to(s));
    expect(editor.state().document).toBe(beam);
    expect(shown(editor.state()).layouts[0]!.placements[0]!.s).toBe(3.25);
    editor.gesture.finish();
    expect(editor.state().preview).toBeNull();
    expect(editor.state().history.entries.map(({ label }) => label)).toEqual(["Opened", "Move H-1"]);
    expect(editor.state().document.layouts[0]!.placements[0]!.s).toBe(3.25);
    editor.undo();
    expect(editor.state().document).toBe(beam);
  });

  test("cancelled, it leaves nothing", () => {
    const editor = editorOn();
    const before = editor.state();
    editor.gesture.start("Move H-1");
    editor.gesture.move(to(4));
    editor.gesture.cancel();
    expect(editor.state().document).toBe(beam);
    expect(editor.state().preview).toBeNull();
    expect(editor.state().gesture).toBeNull();
    expect(editor.state().history).toBe(before.history);
    expect(editor.state().answers.revision).toBe(before.answers.revision);
    editor.gesture.move(to(5));
    expect(editor.state().preview).toBeNull();
  });

  test("moves are coalesced to one report a frame, and the last one is not lost", () => {
    const frames = handFrames();
    const engine = countingReport();
    const editor = editorOn(beam, { schedule: frames.schedule, report: engine.report });
    const before = engine.count();
    editor.gesture.start("Move H-1");
    for (let index = 1; index <= 8; index += 1) editor.gesture.move(to(1 + index / 10));
    expect(engine.count()).toBe(before);
    frames.draw();
    expect(engine.count()).toBe(before + 1);
    editor.gesture.move(to(2.5));
    editor.gesture.finish();
    expect(editor.state().document.layouts[0]!.placements[0]!.s).toBe(2.5);
    frames.draw();
    expect(editor.state().preview).toBeNull();
  });

  test("one that ends where it began makes no entry", () => {
    const editor = editorOn();
    editor.gesture.start("Move H-1");
    editor.gesture.move(to(3));
    editor.gesture.move(to(1));
    editor.gesture.finish();
    expect(editor.state().history.entries).toHaveLength(1);
    expect(editor.state().gesture).toBeNull();
    expect(editor.state().document).toBe(beam);
  });

  test("undo while one runs takes the gesture back first", () => {
    const editor = editorOn();
    editor.run("plan.title", { title: "Second" });
    editor.gesture.start("Move H-1");
    editor.gesture.move(to(3));
    editor.undo();
    expect(editor.state().document).toBe(beam);
    expect(editor.state().preview).toBeNull();
  });
});
