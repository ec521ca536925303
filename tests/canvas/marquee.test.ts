import { describe, expect, test } from "vitest";
import { elevationMap, planMap } from "../../src/canvas/camera";
import { carry, setDown } from "../../src/canvas/hand/carried";
import { marquee, sideInElevation, standsTouched, topInPlan } from "../../src/canvas/hand/marquee";
import type { Box } from "../../src/canvas/labels";
import type { Point, StandTypeId } from "../../src/plan";
import { layoutInView, selectedStands, shown } from "../../src/store";
import { editorOn, h1, h2, h3, spare } from "../store/plans";

const nowhere = { x: 0, y: 0, heading: 0 };
// 100 px a metre, s = 6 m in the middle of 1400 px: s is at 100 + 100·s px, t at 200 − 100·t px.
const camera = { scale: 100, s: 6, t: 0, z: 0 };
const plan = planMap(camera, { width: 1400, height: 400 }, nowhere, nowhere);
const elevation = elevationMap(camera, { width: 1400, height: 400 }, 0);

describe("the box that selects", () => {
  // Tops of 1.5 m by 0.2 m, square to the piece: 20 px wide, from y = 125 to 275.
  test("holds every stand whose top it touches, from whichever corner it is drawn", () => {
    const editor = editorOn();
    const state = editor.state();
    const { placements } = layoutInView(state);
    const of = (box: Box) => standsTouched(shown(state), placements, topInPlan(plan), box);
    const [first, second] = placements;
    const edge = 100 + 100 * first!.s + 10;
    expect(of({ left: edge - 1, right: edge + 5, top: 0, bottom: 130 })).toEqual([h1]);
    expect(of({ left: edge + 1, right: edge + 5, top: 0, bottom: 130 })).toEqual([]);
    expect(of({ left: 0, right: 100 + 100 * second!.s, top: 0, bottom: 400 })).toEqual([h1, h2]);
    expect(of({ left: 0, right: 1400, top: 0, bottom: 120 })).toEqual([]);
  });

  test("in the elevation a stand reaches from the floor to its top", () => {
    const editor = editorOn();
    const { placements } = layoutInView(editor.state());
    const of = (box: Box) => standsTouched(shown(editor.state()), placements, sideInElevation(elevation), box);
    const top = 200 - 100 * placements[0]!.height;
    expect(of({ left: 0, right: 1400, top: 0, bottom: top - 1 })).toEqual([]);
    expect(of({ left: 0, right: 1400, top: 0, bottom: top + 1 })).toEqual([h1, h2, h3]);
  });

  test("adds to what was selected, lets go of what it has left again, and is taken back whole", () => {
    const editor = editorOn();
    editor.select({ kind: "stands", ids: [h3] });
    const shownBoxes: (Box | null)[] = [];
    const stroke = marquee(editor, [1390, 0], topInPlan(plan), (box) => shownBoxes.push(box));
    const from: Point = [0, 400];
    stroke.move(from, false);
    expect(selectedStands(editor.state())).toEqual([h3, h1, h2]);
    stroke.move([1380, 400], false);
    expect(selectedStands(editor.state())).toEqual([h3]);
    stroke.move(from, false);
    stroke.cancel();
    expect(editor.state().selection).toEqual({ kind: "stands", ids: [h3] });
    expect(shownBoxes.at(-1)).toBeNull();
    expect(editor.state().history.entries).toHaveLength(1);
  });

  test("what it selects moves together", () => {
    const editor = editorOn();
    const stroke = marquee(editor, [0, 0], topInPlan(plan), () => {});
    stroke.move([1400, 400], false);
    stroke.end();
    expect(selectedStands(editor.state())).toEqual([h1, h2, h3]);
  });
});

describe("a stand carried from a list", () => {
  const drawn = { camera, plan, elevation, look: null as never };
  const free = { stand: spare, made: null, height: 0.762 };

  test("stands where it is let go, as one entry, and is chosen", () => {
    const editor = editorOn();
    carry(editor, free, { drawing: "plan", at: [100 + 100 * 8, 200 - 100 * 0.3] }, drawn, true);
    carry(editor, free, { drawing: "plan", at: [100 + 100 * 8.25, 200 - 100 * 0.3] }, drawn, true);
    expect(layoutInView(editor.state()).placements).toHaveLength(4);
    expect(editor.state().history.entries).toHaveLength(1);
    setDown(editor, free);
    expect(layoutInView(editor.state()).placements.at(-1)).toMatchObject({
      stand: spare,
      s: 8.25,
      t: 0.3,
      angle: 0,
      height: 0.762,
    });
    expect(editor.state().history.entries.map(({ label }) => label)).toEqual(["Opened", "Place H-4"]);
    expect(selectedStands(editor.state())).toEqual([spare]);
  });

  test("taken off the drawings it is in no place, and let go there nothing has happened", () => {
    const editor = editorOn();
    const before = editor.state().document;
    carry(editor, free, { drawing: "elevation", at: [900, 100] }, drawn, true);
    expect(layoutInView(editor.state()).placements).toHaveLength(4);
    carry(editor, free, null, drawn, true);
    expect(layoutInView(editor.state()).placements).toHaveLength(3);
    setDown(editor, free);
    expect(editor.state().document).toBe(before);
    expect(editor.state().history.entries).toHaveLength(1);
  });

  test("one of a type becomes one of the plan's stands with its place, in one entry", () => {
    const editor = editorOn();
    const made = {
      id: "H-5" as typeof spare,
      type: "horse" as StandTypeId,
      condition: "in-service",
      lastInspected: null,
    } as const;
    const one = { stand: made.id, made, height: 0.762 };
    carry(editor, one, { drawing: "elevation", at: [100 + 100 * 9.5, 150] }, drawn, true);
    expect(editor.state().document.stands.some(({ id }) => id === "H-5")).toBe(false);
    setDown(editor, one);
    expect(editor.state().document.stands.at(-1)?.id).toBe("H-5");
    expect(layoutInView(editor.state()).placements.at(-1)).toMatchObject({ stand: "H-5", s: 9.5, t: 0 });
    editor.undo();
    expect(editor.state().document.stands.some(({ id }) => id === "H-5")).toBe(false);
  });
});
