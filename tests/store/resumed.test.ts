import { describe, expect, test } from "vitest";
import type { History } from "../../src/store";
import { beam, editorOn, h1, layoutA } from "./plans";

const move = (s: number) => ({ layout: layoutA, stand: h1, s, t: 0 });
const labels = (history: History) => history.entries.map(({ label }) => label);
const sOf = (editor: ReturnType<typeof editorOn>) => editor.state().document.layouts[0]!.placements[0]!.s;

/** What an earlier visit left: opened, moved to 2, 3 and 4 m, the last of them undone. */
function earlier(): History {
  const editor = editorOn();
  for (const s of [2, 3, 4]) editor.run("stand.move", move(s));
  editor.undo();
  return editor.state().history;
}

/** A visit that opens the document as it was read again: the same in words, another object. */
const visit = () => editorOn(structuredClone(earlier().entries[2]!.document));

describe("a history taken up again", () => {
  test("goes back and forward as before the reload", () => {
    const editor = visit();
    const opened = editor.state().document;
    editor.resume(earlier(), true);
    expect(editor.state().document).toBe(opened);
    expect(labels(editor.state().history)).toEqual(["Opened", "Move H-1", "Move H-1", "Move H-1"]);
    editor.undo();
    expect(sOf(editor)).toBe(2);
    editor.redo();
    expect(editor.state().document).toBe(opened);
    editor.redo();
    expect(sOf(editor)).toBe(4);
    editor.goTo(0);
    expect(editor.state().document).toEqual(beam);
  });

  test("what was done before it was there follows it; what had been undone is gone then", () => {
    const editor = visit();
    editor.run("stand.move", move(5));
    editor.resume(earlier(), true);
    expect(labels(editor.state().history)).toEqual(["Opened", "Move H-1", "Move H-1", "Move H-1"]);
    expect(editor.state().history.entries.map(({ id }) => id)).toEqual([0, 1, 2, 3]);
    expect(sOf(editor)).toBe(5);
    editor.undo();
    expect(sOf(editor)).toBe(3);
    editor.undo();
    expect(sOf(editor)).toBe(2);
  });

  test("a document that is not the one of the history is opened after it", () => {
    const editor = editorOn({ ...beam, title: "Written by a crashed visit" });
    editor.resume(earlier(), false);
    expect(labels(editor.state().history)).toEqual(["Opened", "Move H-1", "Move H-1", "Opened"]);
    expect(editor.state().document.title).toBe("Written by a crashed visit");
    editor.undo();
    expect(sOf(editor)).toBe(3);
    editor.redo();
    expect(editor.state().document.title).toBe("Written by a crashed visit");
  });
});
