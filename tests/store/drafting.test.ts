/** Drawing by hand, as the mouse, the finger and the typed number drive it: one entry a shape, and nothing lost. */
import { describe, expect, test } from "vitest";
import { type PlanDocument, read, type Walkway, write } from "../../src/plan";
import { draftingOf, type Editor, edits, shapesOf, shown } from "../../src/store";
import { beam, editorOn } from "./plans";

const inHall: PlanDocument = {
  ...beam,
  bay: {
    floor: { slope: [0, 0] },
    outline: [
      [-3, -3],
      [15, -3],
      [15, 3],
      [-3, 3],
    ],
  },
};

/** As the page refuses: what cannot be read again is not made. */
function refuse(document: PlanDocument): string | null {
  const answer = read(write(document));
  return answer.ok ? null : answer.message;
}

function begun(document: PlanDocument = inHall): {
  readonly editor: Editor;
  readonly entries: () => readonly string[];
} {
  const editor = editorOn(document, { refuse });
  return {
    editor,
    entries: () =>
      editor
        .state()
        .history.entries.slice(1)
        .map(({ label }) => label),
  };
}

describe("a shape drawn", () => {
  test("by two opposite corners is a rectangle and one entry of the history", () => {
    const { editor, entries } = begun();
    const drafting = draftingOf(editor);
    drafting.begin("obstacle");
    drafting.place([5, 2.5]);
    expect(entries()).toEqual([]);
    drafting.place([4, 2]);
    expect(entries()).toEqual(["Draw an obstacle"]);
    expect(shown(editor.state()).bay?.obstacles).toEqual([
      {
        name: "column 1",
        polygon: [
          [4, 2],
          [5, 2],
          [5, 2.5],
          [4, 2.5],
        ],
      },
    ]);
    // It is open for changes at once: its name can be typed.
    expect(drafting.state().tool).toEqual({ kind: "change", ref: { kind: "obstacle", index: 0 }, corner: null });
    editor.undo();
    expect(shown(editor.state()).bay?.obstacles).toEqual([]);
    expect(drafting.state().tool).toEqual({ kind: "none" });
  });

  test("corner by corner is closed on its first corner", () => {
    const { editor, entries } = begun();
    const drafting = draftingOf(editor);
    drafting.begin("noRestZone", { form: "corners" });
    for (const corner of [
      [1, -0.1],
      [2, -0.1],
      [1.5, 0.1],
      [1, -0.1],
    ] as const)
      drafting.place(corner);
    expect(entries()).toEqual(["Draw a keep-off zone"]);
    expect(shown(editor.state()).piece.noRestZones).toEqual([
      {
        name: "keep off 1",
        polygon: [
          [1, -0.1],
          [2, -0.1],
          [1.5, 0.1],
        ],
      },
    ]);
  });

  test("that would cross itself is refused with one sentence, and the corners stay", () => {
    const { editor, entries } = begun();
    const drafting = draftingOf(editor);
    drafting.begin("workWindow", { form: "corners" });
    for (const corner of [
      [0, 0],
      [4, 0],
      [4, 2],
    ] as const)
      drafting.place(corner);
    drafting.place([2, -1]);
    expect(drafting.state().refusal).toBe("This edge would cross or touch the one from corner 1 to corner 2.");
    drafting.place([4, 0]);
    expect(drafting.state().refusal).toBe("Corner 2 lies there already.");
    expect(drafting.state().tool).toMatchObject({
      points: [
        [0, 0],
        [4, 0],
        [4, 2],
      ],
    });
    // Round the outside to the right: only the closing edge, from (6, 1) to (0, 0), would cross, at x = 4 m.
    for (const corner of [
      [-2, 2],
      [-2, -1],
      [6, -1],
      [6, 1],
    ] as const) {
      drafting.place(corner);
      expect(drafting.state().refusal).toBeNull();
    }
    drafting.close();
    expect(drafting.state().refusal).toBe("The edge from corner 2 and the edge from corner 7 would cross or touch.");
    drafting.place([0, 0]);
    expect(drafting.state().refusal).toMatch(/^The edge from corner 2/);
    expect(entries()).toEqual([]);
    for (let corner = 7; corner > 4; corner -= 1) drafting.takeBack();
    drafting.close();
    expect(entries()).toEqual(["Draw a zone to keep clear for work"]);
  });

  test("without an area is refused: a rectangle of no width, two corners, three on a line", () => {
    const { editor, entries } = begun();
    const drafting = draftingOf(editor);
    drafting.begin("restZone");
    drafting.place([1, 0]);
    drafting.place([2, 0]);
    expect(drafting.state().refusal).toMatch(/no area/);
    drafting.setForm("corners");
    drafting.place([2, 0]);
    drafting.close();
    expect(drafting.state().refusal).toBe("An outline takes at least three corners.");
    drafting.place([3, 0]);
    drafting.close();
    expect(drafting.state().refusal).toMatch(/cross or touch/);
    expect(entries()).toEqual([]);
    expect(drafting.state().tool).toMatchObject({
      kind: "draw",
      points: [
        [1, 0],
        [2, 0],
        [3, 0],
      ],
    });
  });

  test("needs a bay to lie in", () => {
    const { editor } = begun(beam);
    const drafting = draftingOf(editor);
    drafting.begin("obstacle");
    expect(drafting.state().tool.kind).toBe("none");
    expect(editor.state().notice?.text).toBe("Draw the bay’s outline first.");
    drafting.begin("bay");
    drafting.place([0, 0]);
    drafting.place([10, 8]);
    expect(editor.state().document.bay?.outline).toHaveLength(4);
  });

  test("is left without a trace, and so is one of another plan", () => {
    const { editor, entries } = begun();
    const drafting = draftingOf(editor);
    drafting.begin("restZone");
    drafting.place([1, 0]);
    drafting.leave();
    expect(entries()).toEqual([]);
    drafting.begin("restZone");
    drafting.place([1, 0]);
    editor.open(inHall);
    expect(drafting.state().tool.kind).toBe("none");
  });

  test("of every kind comes out where it belongs and reads back", () => {
    const { editor } = begun();
    const drafting = draftingOf(editor);
    const drawn = [
      ["outline", [0, -0.3], [12, 0.3]],
      ["restZone", [1, -0.2], [2, 0.2]],
      ["noRestZone", [3, -0.2], [4, 0.2]],
      ["workWindow", [5, -0.2], [6, 0.2]],
      ["bay", [-4, -4], [16, 4]],
      ["obstacle", [8, 2], [8.4, 2.4]],
      ["noFootZone", [9, 2], [9.4, 3]],
      ["walkway", [-3, 3.5], [15, 3.5]],
      ["lane", [-3, 3], [15, 3.9]],
    ] as const;
    for (const [kind, first, second] of drawn) {
      drafting.begin(kind);
      drafting.place(first);
      drafting.place(second);
      expect(drafting.state().refusal, kind).toBeNull();
    }
    const { document, history } = editor.state();
    expect(history.entries).toHaveLength(1 + drawn.length);
    expect(read(write(document))).toEqual({ ok: true, document });
    expect(shapesOf(shown(editor.state())).map(({ kind, name }) => [kind, name])).toEqual([
      ["bay", "bay"],
      ["lane", "lane of walkway 1"],
      ["walkway", "walkway 1"],
      ["noFootZone", "no feet 1"],
      ["obstacle", "column 1"],
      ["outline", "Beam"],
      ["restZone", "bearing area 1"],
      ["noRestZone", "keep off 1"],
      ["workWindow", "work 1"],
    ]);
    expect(document.piece.workWindows?.[0]?.clearance).toBe(0.3);
    expect(document.bay?.walkways?.[0]).toMatchObject({ from: [-3, 3.5], to: [15, 3.5] } satisfies Partial<Walkway>);
  });
});

describe("a shape changed", () => {
  function withColumn() {
    const made = begun();
    const drafting = draftingOf(made.editor);
    drafting.begin("obstacle");
    drafting.place([4, 2]);
    drafting.place([5, 3]);
    const column = () => shown(made.editor.state()).bay!.obstacles[0]?.polygon;
    return { ...made, drafting, column };
  }

  test("corner by corner, by its name and as a whole; each is one entry", () => {
    const { editor, drafting, column, entries } = withColumn();
    const ref = { kind: "obstacle", index: 0 } as const;
    drafting.choose(ref, 2);
    drafting.nudge([0.1, 0]);
    expect(column()?.[2]).toEqual([5.1, 3]);
    drafting.choose(ref);
    drafting.nudge([0, -1]);
    expect(column()?.[2]).toEqual([5.1, 2]);
    editor.run("shape.name", { ref, name: "crane column" });
    drafting.choose(ref, 0);
    drafting.remove();
    expect(column()).toHaveLength(3);
    drafting.choose(ref, 0);
    drafting.remove();
    expect(drafting.state().refusal).toBe("An outline takes at least three corners.");
    drafting.choose(ref);
    drafting.remove();
    expect(shown(editor.state()).bay!.obstacles).toEqual([]);
    expect(entries()).toEqual([
      "Draw an obstacle",
      "Change column 1",
      "Change column 1",
      "Name crane column",
      "Remove a corner of crane column",
      "Remove crane column",
    ]);
    expect(drafting.state().tool.kind).toBe("none");
  });

  test("is not changed into what crosses itself", () => {
    const { drafting, column, entries } = withColumn();
    drafting.choose({ kind: "obstacle", index: 0 }, 0);
    expect(drafting.reshape([[6, 2.5], ...column()!.slice(1)])).toBe(false);
    expect(drafting.state().refusal).toMatch(
      /^The edge from corner \d and the edge from corner \d would cross or touch\.$/,
    );
    expect(column()?.[0]).toEqual([4, 2]);
    expect(entries()).toHaveLength(1);
  });

  test("lets go where something else is chosen", () => {
    const { editor, drafting } = withColumn();
    editor.select({ kind: "piece" });
    expect(drafting.state().tool.kind).toBe("none");
  });
});

describe("a drawing taken over", () => {
  test("brings outline and holes in one entry; the holes of an earlier one go, other zones stay", () => {
    const { editor, entries } = begun();
    const zone = {
      name: "machined pad",
      polygon: [
        [1, -0.1],
        [2, -0.1],
        [2, 0.1],
      ] as const,
    };
    editor.run("piece.change", { change: { noRestZones: [zone] } });
    const outline = [
      [0, -1],
      [6, -1],
      [6, 1],
      [0, 1],
    ] as const;
    const hole = [
      [2, -0.5],
      [3, -0.5],
      [3, 0.5],
    ] as const;
    editor.run("drawing.piece", {
      outline,
      holes: [hole, hole.map(([s, t]) => [s + 2, t] as const)],
      keeping: "shares",
    });
    expect(shown(editor.state()).piece.noRestZones.map(({ name }) => name)).toEqual([
      "machined pad",
      "hole 1",
      "hole 2",
    ]);
    editor.run("drawing.piece", { outline, holes: [hole], keeping: "shares" });
    expect(shown(editor.state()).piece.noRestZones.map(({ name }) => name)).toEqual(["machined pad", "hole 1"]);
    expect(entries().slice(1)).toEqual(Array(2).fill("Take the outline over from a drawing"));
  });

  test("of a bay puts the piece in its middle where that is asked for", () => {
    const outline = [
      [0, 0],
      [20, 0],
      [20, 10],
      [0, 10],
    ] as const;
    const turned = edits["piece.turn"].run(beam, { heading: 90 });
    const after = edits["drawing.bay"].run(turned, { outline, obstacles: [], noFootZones: [], centre: true });
    // The beam's middle, (6, 0), turned by 90° lies 6 m up from the datum end: (10, 5) less (0, 6).
    expect(after.piece.pose).toEqual({ x: 10, y: -1, heading: 90 });
    const left = edits["drawing.bay"].run(turned, { outline, obstacles: [], noFootZones: [], centre: false });
    expect(left.piece).toBe(turned.piece);
  });
});
