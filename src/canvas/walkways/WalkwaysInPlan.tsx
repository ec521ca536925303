/** How wide each walkway is where it is narrowest: a dimension line across the pinch. */

import { memo, useMemo } from "react";
import { type VerdictSoFar, walkwayVerdict } from "../../checks";
import type { FloorReport, WalkwayWidth } from "../../floor";
import { criteriaOf, type Plan, type Point } from "../../plan";
import { type EditorState, layoutInView, shown, useEditor } from "../../store";
import { dash, lineWeight } from "../../ui";
import type { PlanMap } from "../camera";
import type { Box } from "../labels";
import type { Look } from "../look";
import { type Name, named } from "../planView/named";
import { arrowHead, fill, line, type Paper, Sketch, stroke } from "../sketch";
import { walkwayWords } from "./words";

/** The floor of the layout in view, the last one while another is on its way; null before there is any. */
export function floorInView(state: EditorState): FloorReport | null {
  const layout = layoutInView(state).id;
  const part = state.answers.report.layouts.find((one) => one.layout === layout)?.floor;
  switch (part?.status) {
    case "known":
      return part.value;
    case "pending":
      return part.last;
    case "failed":
    case undefined:
      return null;
    default:
      return part satisfies never;
  }
}

export const settledFloor = (state: EditorState): boolean =>
  state.answers.report.layouts.some(
    ({ layout, floor }) => layout === layoutInView(state).id && floor.status === "known",
  );

function inkOfWalkway(verdict: VerdictSoFar, look: Look): string {
  switch (verdict) {
    case "fails":
      return look.colours.drawing.pinch;
    case "close":
    case "unknown":
    case "pending":
      return look.colours.verdict[verdict].ink;
    case "holds":
      return look.colours.drawing.walkway;
    default:
      return verdict satisfies never;
  }
}

/** How far the end of a dimension line across a pinch reaches to each side, px. */
const endReach = 7;

interface Pinch {
  readonly walkway: WalkwayWidth;
  readonly verdict: VerdictSoFar;
  readonly colour: string;
  /** Middle of the pinch, or the start of one that is blocked, px. */
  readonly at: Point;
  /** Half the clear width across the pinch, px. */
  readonly half: Point;
}

function pinchesOf(plan: Plan, floor: FloorReport | null, settled: boolean, map: PlanMap, look: Look): Pinch[] {
  if (floor === null || plan.bay === null) return [];
  const { walkways } = plan.bay;
  return floor.walkways.flatMap((walkway, index) => {
    const place = walkway.narrowestAt ?? walkways[index]?.from;
    if (place === undefined) return [];
    const verdict = settled ? walkwayVerdict(walkway, criteriaOf(plan)) : "pending";
    const at = map.bay(place);
    const [ux, uy] = walkway.across ?? [0, 1];
    const reach = walkway.clearWidth / 2;
    const [x, y] = map.bay([place[0] + ux * reach, place[1] + uy * reach]);
    return [{ walkway, verdict, colour: inkOfWalkway(verdict, look), at, half: [x - at[0], y - at[1]] as const }];
  });
}

export const WalkwaysInPlan = memo(function WalkwaysInPlan({
  map,
  look,
}: {
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const plan = useEditor(shown);
  const floor = useEditor(floorInView);
  const settled = useEditor(settledFloor);
  const draw = useMemo(() => {
    const pinches = pinchesOf(plan, floor, settled, map, look);
    return (paper: Paper) => {
      for (const pinch of pinches) drawPinch(paper, pinch, look);
    };
  }, [plan, floor, settled, map, look]);
  return <Sketch draw={draw} />;
});

function drawPinch(paper: Paper, { walkway, colour, at, half }: Pinch, look: Look): void {
  const [x, y] = at;
  const { paper: ground } = look.colours;
  if (walkway.clearWidth === 0) {
    paper.beginPath();
    paper.arc(x, y, 9, 0, 2 * Math.PI);
    fill(paper, ground);
    stroke(paper, { colour, width: lineWeight.heavy });
    for (const slope of [1, -1])
      line(paper, [x - 5, y - 5 * slope], [x + 5, y + 5 * slope], { colour, width: lineWeight.heavy });
    return;
  }
  const reach = Math.hypot(half[0], half[1]);
  if (reach < 1) return;
  const [ux, uy] = [half[0] / reach, half[1] / reach];
  const [from, to]: readonly [Point, Point] = [
    [x - half[0], y - half[1]],
    [x + half[0], y + half[1]],
  ];
  // The widest disc that gets through, where it fits tightest.
  paper.beginPath();
  paper.arc(x, y, reach, 0, 2 * Math.PI);
  stroke(paper, { colour, width: lineWeight.hair, dash: dash.zone });
  line(paper, from, to, { colour: ground, width: 4 });
  line(paper, from, to, { colour, width: lineWeight.outline });
  for (const [tip, sign] of [
    [from, -1],
    [to, 1],
  ] as const) {
    if (reach > 12) arrowHead(paper, tip, [sign * ux, sign * uy], 9, colour);
    line(paper, [tip[0] - uy * endReach, tip[1] + ux * endReach], [tip[0] + uy * endReach, tip[1] - ux * endReach], {
      colour,
      width: lineWeight.outline,
    });
  }
}

/** The dimension line across each pinch, which no name may cover. */
export function pinchBoxes(
  plan: Plan,
  floor: FloorReport | null,
  settled: boolean,
  map: PlanMap,
  look: Look,
): readonly Box[] {
  return pinchesOf(plan, floor, settled, map, look).map(({ at: [x, y], half: [dx, dy] }) => ({
    left: x - Math.abs(dx) - endReach,
    right: x + Math.abs(dx) + endReach,
    top: y - Math.abs(dy) - endReach,
    bottom: y + Math.abs(dy) + endReach,
  }));
}

/** The words of each pinch, beside it; of one off the paper that does not hold, at the paper's edge. */
export function walkwayNames(
  plan: Plan,
  floor: FloorReport | null,
  settled: boolean,
  map: PlanMap,
  look: Look,
  lower: number,
): readonly Name[] {
  return pinchesOf(plan, floor, settled, map, look).flatMap(({ walkway, verdict, colour, at, half }) => {
    const words = walkwayWords(walkway, verdict, look.display);
    const [x, y] = at;
    const off = x < 0 || x > map.size.width || y < 0 || y > lower;
    if (off && verdict !== "fails" && verdict !== "close") return [];
    const label = named(off ? `${walkway.name}: ${words}` : words, [], colour, { strong: true, must: true });
    const beside = label.width / 2 + 12 + Math.abs(half[0]);
    const above = Math.abs(half[1]) + 13;
    const held = (value: number, most: number): number => Math.max(0, Math.min(most, value));
    const places: readonly Point[] = off
      ? [0, 1, 2].map((row): Point => {
          const edge = held(y, lower - 10);
          return [held(x, map.size.width), edge > lower / 2 ? edge - row * 16 : edge + 10 + row * 16];
        })
      : [
          [x + beside, y],
          [x - beside, y],
          [x, y - above],
          [x, y + above],
          [x + beside, y - 16],
          [x - beside, y + 16],
        ];
    return [{ ...label, places }];
  });
}
