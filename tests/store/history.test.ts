import { describe, expect, test } from "vitest";
import { awaited, reportOf } from "../../src/checks";
import { beam, editorOn, h1, h2, layoutA } from "./plans";

const move = (s: number) => ({ layout: layoutA, stand: h1, s, t: 0 });
const sOf = (editor: ReturnType<typeof editorOn>) => editor.state().document.layouts[0]!.placements[0]!.s;

describe("history", () => {
  test("every edit is one entry, and undo gives back the very document that was", () => {
    const editor = editorOn();
    const documents = [editor.state().document];
    for (const s of [2, 3, 4]) {
      expect(editor.run("stand.move", move(s))).toBe(true);
      documents.push(editor.state().document);
    }
    expect(editor.state().history.entries.map(({ label }) => label)).toEqual([
      "Opened",
      "Move H-1",
      "Move H-1",
      "Move H-1",
    ]);
    for (const document of documents.slice(0, -1).reverse()) {
      editor.undo();
      expect(editor.state().document).toBe(document);
    }
    editor.undo();
    expect(editor.state().document).toBe(beam);
    editor.goTo(3);
    expect(editor.state().document).toBe(documents[3]);
  });

  test("redo brings back what was undone until another edit is made", () => {
    const editor = editorOn();
    editor.run("stand.move", move(2));
    editor.undo();
    expect(sOf(editor)).toBe(1);
    editor.redo();
    expect(sOf(editor)).toBe(2);
    editor.undo();
    editor.run("stand.move", move(5));
    editor.redo();
    expect(sOf(editor)).toBe(5);
    expect(editor.state().history.entries).toHaveLength(2);
  });

  test("there is no limit to it", () => {
    const once = editorOn().state().answers.report;
    const editor = editorOn(beam, { report: () => once });
    for (let index = 0; index < 3000; index += 1) editor.run("stand.move", move(1 + (index + 1) / 1000));
    for (let index = 0; index < 3000; index += 1) editor.undo();
    expect(editor.state().document).toBe(beam);
  });

  test("an edit that changes nothing makes no entry", () => {
    const editor = editorOn();
    expect(editor.run("stand.move", move(1))).toBe(false);
    expect(editor.run("plan.title", { title: beam.title })).toBe(false);
    expect(editor.state().history.entries).toHaveLength(1);
    expect(editor.state().document).toBe(beam);
  });

  test("quick repeats of one nudge are one entry, slow ones and those of another stand are not", () => {
    let time = 0;
    const editor = editorOn(beam, { now: () => time });
    const nudge = (stand: typeof h1, s: number) =>
      editor.run("stands.move", { layout: layoutA, moves: [{ stand, s, t: 0 }], burst: `nudge ${stand}` });
    nudge(h1, 1.01);
    time += 100;
    nudge(h1, 1.02);
    expect(editor.state().history.entries).toHaveLength(2);
    time += 1500;
    nudge(h1, 1.03);
    time += 100;
    nudge(h2, 6.01);
    expect(editor.state().history.entries).toHaveLength(4);
    editor.undo();
    editor.undo();
    expect(sOf(editor)).toBe(1.02);
    editor.undo();
    expect(editor.state().document).toBe(beam);
  });

  test("a refused edit leaves everything as it is and says why", () => {
    const editor = editorOn(beam, { refuse: ({ title }) => (title === "" ? "title: an empty one will not do" : null) });
    const before = editor.state();
    expect(editor.run("plan.title", { title: "" })).toBe(false);
    expect(editor.state().document).toBe(before.document);
    expect(editor.state().history).toBe(before.history);
    expect(editor.state().notice).toEqual({ kind: "refusal", text: "title: an empty one will not do" });
    expect(editor.run("plan.title", { title: "Another" })).toBe(true);
    expect(editor.state().notice).toBeNull();
  });

  test("an edit that the engine cannot answer is not taken, and nothing is lost", () => {
    const editor = editorOn(beam, {
      report: (plan) => {
        if (plan.title === "Too much") throw new Error("out of range");
        return reportOf(plan, awaited);
      },
    });
    editor.run("stand.move", move(2));
    const before = editor.state();
    expect(editor.run("plan.title", { title: "Too much" })).toBe(false);
    expect(editor.state().document).toBe(before.document);
    expect(editor.state().notice?.text).toBe("This cannot be computed: out of range");
    editor.undo();
    expect(editor.state().document).toBe(beam);
  });
});
