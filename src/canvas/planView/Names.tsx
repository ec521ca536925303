/** Every name on the plan view, placed so that none lies on another or on a stand. */

import { memo, useMemo } from "react";
import { knownValue, type VerdictSoFar } from "../../checks";
import { distanceBetween } from "../../geometry";
import {
  type Layout,
  type MassId,
  type Plan,
  type Point,
  type Polygon,
  presentMasses,
  type StandId,
  type Step,
} from "../../plan";
import {
  layoutInView,
  levelInView,
  type Overlay,
  reportInView,
  selectedStands,
  shown,
  standIdsInView,
  stepInView,
  useEditor,
  useEditorList,
} from "../../store";
import { lineWeight, typeSize } from "../../ui";
import type { PlanMap } from "../camera";
import { loadNames } from "../growing/StepSigns";
import { type Box, placeLabels } from "../labels";
import { inkOf, type Look } from "../look";
import { boxOf, line, type Paper, Sketch, widthOf, write } from "../sketch";
import { standingNames } from "../standing/StandingInPlan";
import { standVerdict } from "../verdicts";
import { floorInView, pinchBoxes, settledFloor, walkwayNames } from "../walkways/WalkwaysInPlan";
import { massWords } from "../words";
import { dimensionStrip } from "./Dimensions";
import { along, type Name, named } from "./named";
import { handleBoxes, jointBoxes, markBoxes, topBoxes, topOf } from "./taken";

interface NamesProps {
  readonly map: PlanMap;
  readonly look: Look;
}

export const Names = memo(function Names({ map, look }: NamesProps) {
  const plan = useEditor(shown);
  const step = useEditor(stepInView);
  const layout = useEditor(layoutInView);
  const selected = useEditor(selectedStands);
  const mass = useEditor((state) => (state.selection.kind === "mass" ? state.selection.id : null));
  const pieceChosen = useEditor((state) => state.selection.kind === "piece");
  const overlays = useEditor((state) => state.view.overlays);
  const verdicts = useEditorList<VerdictSoFar | null>((state) =>
    standIdsInView(state).map((stand) => standVerdict(state, stand)),
  );
  const floor = useEditor(floorInView);
  const settled = useEditor(settledFloor);
  const standing = useEditor((state) => knownValue(reportInView(state).standing));
  const level = useEditor(levelInView);
  const draw = useMemo(() => {
    const names = [
      ...standNames(plan, layout, selected, verdicts, map, look),
      ...(overlays.masses ? massNames(plan, step, mass, map, look) : []),
      ...(overlays.zones ? zoneNames(plan, map, look) : []),
      ...loadNames(step, boxOf(plan.piece.outline.map(map.piece)), map, look),
      ...walkwayNames(plan, floor, settled, map, look, lowerEdge(map, overlays)),
      ...(overlays.standing ? standingNames(standing, level, plan, map, look) : []),
      ...bayNames(plan, map, look),
      ...(pieceChosen ? [] : endNames(plan, map, look)),
    ];
    const within = { left: 4, top: 4, right: map.size.width - 4, bottom: lowerEdge(map, overlays) };
    const taken = [
      ...topBoxes(plan, layout, map),
      ...markBoxes(plan, level, overlays.masses, map),
      ...(pieceChosen ? jointBoxes(plan, step, map) : []),
      ...handleBoxes(plan, layout, selected, pieceChosen, map),
      ...pinchBoxes(plan, floor, settled, map, look),
    ];
    const middles = placeLabels(names, taken, within);
    return (paper: Paper) => {
      names.forEach((name, index) => {
        const at = middles[index];
        if (at != null) drawName(paper, name, at, look);
      });
    };
  }, [plan, step, layout, selected, mass, pieceChosen, overlays, verdicts, floor, settled, standing, level, map, look]);
  return <Sketch draw={draw} />;
});

function lowerEdge(map: PlanMap, overlays: Readonly<Record<Overlay, boolean>>): number {
  return map.size.height - (overlays.dimensions ? dimensionStrip : 4);
}

function drawName(paper: Paper, { text, colour, strong, from, height }: Name, at: Point, look: Look): void {
  if (from !== null) {
    const above = at[1] < from[1];
    line(paper, [from[0], from[1] + (above ? -6 : 6)], [from[0], at[1] + (above ? height / 2 : -height / 2)], {
      colour,
      width: lineWeight.hair,
    });
  }
  write(paper, text, at, { colour, size: typeSize.small, strong, rim: look.colours.paper });
}

/** A stand's mark stands at the upper end of its top, of a chosen one at the lower. */
function standNames(
  plan: Plan,
  layout: Layout,
  selected: readonly StandId[],
  verdicts: readonly (VerdictSoFar | null)[],
  map: PlanMap,
  look: Look,
): readonly Name[] {
  return layout.placements.map((placement, index) => {
    const ring = topOf(plan, placement, map);
    const box = boxOf(ring);
    const middleOf = (points: readonly Point[]): number => points.reduce((sum, [x]) => sum + x, 0) / points.length;
    const upper = middleOf(ring.filter(([, y]) => y < box.top + 1));
    const lower = middleOf(ring.filter(([, y]) => y > box.bottom - 1));
    const chosen = selected.includes(placement.stand);
    const verdict = verdicts[index] ?? null;
    const ink = chosen ? look.colours.accent : inkOf(look, verdict === "unknown" ? null : verdict);
    const above: readonly Point[] = [
      [upper, box.top - 10],
      [upper, box.top - 25],
    ];
    const below: Point = [lower, box.bottom + 10];
    // The turning handle of a chosen one stands above it.
    const places = chosen ? [below, ...above] : [...above, below];
    return named(placement.stand, places, ink, { strong: true, must: true });
  });
}

function massNames(plan: Plan, step: Step, chosen: MassId | null, map: PlanMap, look: Look): readonly Name[] {
  const { drawing, accent } = look.colours;
  const box = boxOf(plan.piece.outline.map(map.piece));
  const present = new Set(presentMasses(plan.piece, step));
  return plan.piece.masses.flatMap((mass) => {
    if (mass.kind !== "point") return [];
    const from = map.piece([mass.s, mass.t]);
    const [x, y] = from;
    const above = Math.min(box.top, y - 6) - 12;
    const below = Math.max(box.bottom, y + 6) + 12;
    const places: Point[] = [0, 1, 2, 3].flatMap((row): Point[] => [
      [x, above - row * 15],
      [x, below + row * 15],
    ]);
    const colour = mass.id === chosen ? accent : present.has(mass) ? drawing.mass : drawing.absent;
    return [named(massWords(mass, look.display), places, colour, { from, must: mass.id === chosen })];
  });
}

function besides(ring: readonly Point[]): readonly Point[] {
  const box = boxOf(ring);
  const x = (box.left + box.right) / 2;
  return [
    [x, box.bottom + 11],
    [x, box.top - 11],
    [x, box.bottom + 26],
    [x, box.top - 26],
  ];
}

function zoneNames({ piece }: Plan, map: PlanMap, look: Look): readonly Name[] {
  const { keepOff, keepClear } = look.colours.drawing;
  const ring = (polygon: Polygon): readonly Point[] => polygon.map(map.piece);
  return [
    ...piece.noRestZones.map(({ name, polygon }) => named(name, besides(ring(polygon)), keepOff)),
    ...piece.workWindows.map(({ name, polygon }) => named(name, besides(ring(polygon)), keepClear)),
  ];
}

function bayNames({ bay }: Plan, map: PlanMap, look: Look): readonly Name[] {
  if (bay === null) return [];
  const { drawing, inkSoft } = look.colours;
  const ring = (polygon: Polygon): readonly Point[] => polygon.map(map.bay);
  return [
    ...bay.walkways.map(({ name, from, to }) => {
      const [a, b] = [map.bay(from), map.bay(to)];
      return named(name, along(a, b, map.size), drawing.walkway);
    }),
    ...longest(bay.slab?.joints ?? []).map(([from, to]) =>
      named("slab joint", along(map.bay(from), map.bay(to), map.size), inkSoft),
    ),
    ...bay.obstacles
      .filter(({ polygon }) => onSheet(boxOf(ring(polygon)), map))
      .map(({ name, polygon }) => named(name, besides(ring(polygon)), inkSoft)),
    ...bay.noFootZones.map(({ name, polygon }) => {
      const box = boxOf(ring(polygon));
      const x = (box.left + box.right) / 2;
      const [top, bottom] = [Math.max(8, box.top), Math.min(map.size.height - dimensionStrip, box.bottom)];
      const places = [0.15, 0.85, 0.3, 0.7, 0.5].map((share): Point => [x, top + (bottom - top) * share]);
      return named(name, places, drawing.noFoot);
    }),
  ];
}

/** Whether any of a box lies on the paper: a name without its thing says nothing. */
const onSheet = ({ left, top, right, bottom }: Box, { size }: PlanMap): boolean =>
  right > 0 && left < size.width && bottom > 0 && top < size.height;

/** The longest of the lines, as a list; none of none. */
function longest(lines: readonly (readonly [Point, Point])[]): readonly (readonly [Point, Point])[] {
  return lines.toSorted(([a, b], [c, d]) => distanceBetween(c, d) - distanceBetween(a, b)).slice(0, 1);
}

/** How the two ends are told apart, where there is room beside them. */
function endNames({ piece }: Plan, map: PlanMap, look: Look): readonly Name[] {
  const ss = piece.outline.map(([s]) => s);
  const ends = [
    { name: piece.ends.datum, s: Math.min(...ss), side: -1 },
    { name: piece.ends.far, s: Math.max(...ss), side: 1 },
  ];
  return ends.flatMap(({ name, s, side }) => {
    const [x, y] = map.piece([s, 0]);
    const half = widthOf(name, { size: typeSize.small }) / 2 + 8;
    const beside = x + side * half;
    const fits = beside - half > 0 && beside + half < map.size.width;
    return fits ? [named(name, [[beside, y]], look.colours.inkSoft)] : [];
  });
}
