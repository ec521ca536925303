import { describe, expect, test } from "vitest";
import { complete, type MassId, type PlanDocument, read, type StandTypeId, type StepId, write } from "../../src/plan";
import { actionFor, actions, edits, keyName, selectedStands } from "../../src/store";
import { beam, editorOn, h1, h2, h3, layoutA, spare, stepOne } from "./plans";

/** Both documents read back, and everything but the named keys is the same object. */
function expectShared(after: PlanDocument, ...touched: (keyof PlanDocument)[]): void {
  expect(read(write(after))).toEqual({ ok: true, document: after });
  for (const key of Object.keys(beam) as (keyof PlanDocument)[])
    if (!touched.includes(key)) expect(after[key], key).toBe(beam[key]);
}

describe("edits", () => {
  test("moving a stand shares everything but that stand", () => {
    const after = edits["stand.move"].run(beam, { layout: layoutA, stand: h2, s: 5, t: 0.1 });
    expectShared(after, "layouts");
    const [first, second, third] = after.layouts[0]!.placements;
    expect(first).toBe(beam.layouts[0]!.placements[0]);
    expect(third).toBe(beam.layouts[0]!.placements[2]);
    expect(second).toEqual({ stand: h2, s: 5, t: 0.1, height: 0.762 });
    expect(complete(after).layouts[0]!.placements[0]).toBe(complete(beam).layouts[0]!.placements[0]);
  });

  test("a stand is placed, changed and taken away again", () => {
    let document = edits["stand.place"].run(beam, {
      layout: layoutA,
      placement: { stand: spare, s: 3, t: 0, height: 0.762 },
    });
    expect(document.layouts[0]!.placements.map(({ stand }) => stand)).toEqual([h1, h2, h3, spare]);
    document = edits["stand.turn"].run(document, { layout: layoutA, stand: spare, angle: 30 });
    document = edits["stand.shim"].run(document, { layout: layoutA, stand: spare, shim: 0.003 });
    document = edits["stand.height"].run(document, { layout: layoutA, stand: spare, height: 0.8 });
    document = edits["stand.levelTolerance"].run(document, { layout: layoutA, stand: spare, levelTolerance: 0.0005 });
    expect(document.layouts[0]!.placements[3]).toEqual({
      stand: spare,
      s: 3,
      t: 0,
      height: 0.8,
      angle: 30,
      shim: 0.003,
      levelTolerance: 0.0005,
    });
    document = edits["stand.levelTolerance"].run(document, { layout: layoutA, stand: spare, levelTolerance: null });
    expect(document.layouts[0]!.placements[3]).not.toHaveProperty("levelTolerance");
    document = edits["stands.remove"].run(document, { layout: layoutA, stands: [spare] });
    expect(document.layouts[0]!.placements).toEqual(beam.layouts[0]!.placements);
    expect(document.stands).toBe(beam.stands);
  });

  test("a stand removed from the plan goes from layouts and readings", () => {
    const read1 = edits["step.change"].run(beam, {
      step: stepOne,
      change: { readings: [{ stand: h2, kind: "gap", value: 0.001, tolerance: 0.0001 }] },
    });
    const after = edits["register.remove"].run(read1, { stand: h2 });
    expect(after.stands.map(({ id }) => id)).toEqual([h1, h3, spare]);
    expect(after.layouts[0]!.placements.map(({ stand }) => stand)).toEqual([h1, h3]);
    expect(after.steps[0]!.readings).toEqual([]);
    expect(read(write(after)).ok).toBe(true);
  });

  test("a type removed takes its stands along", () => {
    const after = edits["type.remove"].run(beam, { type: "horse" as StandTypeId });
    expect([after.standTypes, after.stands, after.layouts[0]!.placements]).toEqual([[], [], []]);
    expect(read(write(after)).ok).toBe(true);
  });

  test("a mass removed goes from the steps where it is absent", () => {
    const after = edits["mass.remove"].run(beam, { mass: "lug" as MassId });
    expect(after.piece.masses.map(({ id }) => id)).toEqual(["beam"]);
    expect(after.steps[0]!.absent).toEqual([]);
    expect(after.steps[1]).toBe(beam.steps[1]);
    expectShared(after, "piece", "steps");
  });

  test("the piece is moved and turned, and a pose left out begins at nothing", () => {
    const moved = edits["piece.move"].run(beam, { x: 2, y: 1 });
    expect(moved.piece.pose).toEqual({ x: 2, y: 1, heading: 0 });
    const turned = edits["piece.turn"].run(moved, { heading: 90, x: 3 });
    expect(turned.piece.pose).toEqual({ x: 3, y: 1, heading: 90 });
    expectShared(turned, "piece");
  });

  test("a criterion given as undefined returns to its default", () => {
    const set = edits["plan.criteria"].run(beam, { change: { levelTolerance: 0.001 } });
    expect(set.criteria).toEqual({ levelTolerance: 0.001 });
    expect(edits["plan.criteria"].run(set, { change: { levelTolerance: undefined } }).criteria).toEqual({});
  });

  test("steps are added after another, put in order, and the last one stays", () => {
    const inspect = { id: "inspect" as StepId, name: "Inspect", layout: layoutA };
    const added = edits["step.add"].run(beam, { step: inspect, after: stepOne });
    expect(added.steps.map(({ id }) => id)).toEqual([stepOne, "inspect", "weld"]);
    const last = edits["step.order"].run(added, { step: "inspect" as StepId, to: 2 });
    expect(last.steps.map(({ id }) => id)).toEqual([stepOne, "weld", "inspect"]);
    let one = last;
    for (const { id } of last.steps) one = edits["step.remove"].run(one, { step: id });
    expect(one.steps.map(({ id }) => id)).toEqual(["inspect"]);
  });

  test("a layout in use stays, a copy can go", () => {
    const copied = edits["layout.add"].run(beam, { name: "A", copyOf: layoutA });
    expect(copied.layouts.map(({ id }) => id)).toEqual(["A", "A-2"]);
    expect(copied.layouts[1]!.placements).toBe(beam.layouts[0]!.placements);
    expect(edits["layout.remove"].run(copied, { layout: layoutA })).toBe(copied);
    expect(edits["layout.remove"].run(copied, { layout: copied.layouts[1]!.id }).layouts).toEqual(beam.layouts);
  });
});

describe("keys", () => {
  const press = (key: string, modifiers: Partial<Parameters<typeof keyName>[0]> = {}) =>
    keyName({ key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false, ...modifiers });

  test("names", () => {
    expect(press("z", { ctrlKey: true })).toBe("Mod+Z");
    expect(press("Z", { metaKey: true, shiftKey: true })).toBe("Mod+Shift+Z");
    expect(press("ArrowLeft", { shiftKey: true })).toBe("Shift+ArrowLeft");
    expect(press("+", { shiftKey: true })).toBe("+");
    expect(press(" ")).toBe("Space");
  });

  test("no key means two actions, and each id is its own", () => {
    const keys = actions.flatMap((action) => action.keys);
    expect(new Set(keys).size).toBe(keys.length);
    expect(new Set(actions.map(({ id }) => id)).size).toBe(actions.length);
  });

  test("Tab walks along the piece, arrows nudge by 10 mm and with Shift by 1 mm, Delete takes away", () => {
    const editor = editorOn();
    const key = (name: string) => actionFor(name, "drawings", editor.state())?.run(editor);
    key("Tab");
    expect(selectedStands(editor.state())).toEqual([h1]);
    key("Tab");
    key("ArrowRight");
    key("Shift+ArrowUp");
    expect(editor.state().document.layouts[0]!.placements[1]).toMatchObject({ s: 6.01, t: 0.001 });
    key("Delete");
    expect(editor.state().document.layouts[0]!.placements.map(({ stand }) => stand)).toEqual([h1, h3]);
    key("Mod+Z");
    expect(editor.state().document.layouts[0]!.placements[1]).toMatchObject({ s: 6.01, t: 0.001 });
  });

  test("in US customary units arrows nudge by an inch and by a sixteenth", () => {
    const editor = editorOn({ ...beam, display: { units: "us" } });
    const key = (name: string) => actionFor(name, "drawings", editor.state())?.run(editor);
    key("Tab");
    key("ArrowRight");
    key("Shift+ArrowRight");
    expect(editor.state().document.layouts[0]!.placements[0]!.s).toBeCloseTo(1 + 0.0254 + 0.0254 / 16, 7);
  });

  test("stands are spaced evenly between the outermost two, and mirrored about the middle", () => {
    const editor = editorOn();
    editor.run("stand.move", { layout: layoutA, stand: h2, s: 3, t: 0.2 });
    actionFor("E", "drawings", editor.state())?.run(editor);
    expect(editor.state().document.layouts[0]!.placements.map(({ s, t }) => [s, t])).toEqual([
      [1, 0],
      [6, 0.2],
      [11, 0],
    ]);
    editor.run("stand.move", { layout: layoutA, stand: h2, s: 4, t: 0 });
    actionFor("M", "drawings", editor.state())?.run(editor);
    expect(editor.state().document.layouts[0]!.placements.map(({ s }) => s)).toEqual([11, 8, 1]);
  });

  test("keys of the drawings do not answer elsewhere", () => {
    expect(actionFor("Delete", "page", editorOn().state())).toBeNull();
  });
});
