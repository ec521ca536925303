import { describe, expect, test } from "vitest";
import { actionFor, layoutInView, selectedStands } from "../../src/store";
import { editorOn, h1, h2, h3, spare } from "./plans";

const copy = (editor: ReturnType<typeof editorOn>) => actionFor("C", "drawings", editor.state())?.run(editor);

describe("copies of stands", () => {
  test("the free stand of the type is taken first, and stands clear of the one it copies", () => {
    const editor = editorOn();
    editor.select({ kind: "stands", ids: [h2] });
    copy(editor);
    const { placements } = layoutInView(editor.state());
    // A top of 0.2 m: twice its width farther along, which leaves as much room between them as it is wide.
    expect(placements.at(-1)).toMatchObject({ stand: spare, s: 6.4, t: 0, height: 0.762 });
    expect(editor.state().document.stands).toHaveLength(4);
    expect(selectedStands(editor.state())).toEqual([spare]);
    expect(editor.state().history.entries.map(({ label }) => label)).toEqual(["Opened", "Copy H-2"]);
  });

  test("where none is free the plan gets new ones; one undo takes them all back", () => {
    const editor = editorOn();
    editor.select({ kind: "stands", ids: [h1, h2] });
    const before = editor.state().document;
    copy(editor);
    const { placements } = layoutInView(editor.state());
    expect(placements.map(({ stand }) => stand)).toEqual([h1, h2, h3, spare, "H-5"]);
    // From the first to the second it is 5 m; the copies stand 5 m and twice the top farther on.
    expect(placements.slice(3).map(({ s }) => s)).toEqual([6.4, 11.4]);
    expect(editor.state().document.stands.map(({ id }) => id)).toContain("H-5");
    editor.undo();
    expect(editor.state().document).toBe(before);
  });

  test("past the far end they go the other way", () => {
    const editor = editorOn();
    editor.select({ kind: "stands", ids: [h3] });
    editor.run("stands.move", { layout: layoutInView(editor.state()).id, moves: [{ stand: h3, s: 11.8, t: 0 }] });
    copy(editor);
    expect(layoutInView(editor.state()).placements.at(-1)?.s).toBeCloseTo(11.4, 9);
  });

  test("without a stand selected there is nothing to copy", () => {
    const editor = editorOn();
    expect(actionFor("C", "drawings", editor.state())).toBeNull();
  });
});
