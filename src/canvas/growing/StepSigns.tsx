/** What comes and goes with the steps besides masses and stands: loads on the piece, people under it, the crane's hook. */

import { memo, useMemo } from "react";
import { type Plan, type Point, partsOf, type Step } from "../../plan";
import type { StepLevel } from "../../statics";
import { lineWeight, typeSize } from "../../ui";
import type { ElevationMap, PlanMap } from "../camera";
import { datumAt } from "../elevation/PieceInElevation";
import type { Profile } from "../elevation/profile";
import type { Look } from "../look";
import { besideRing, type Name, named } from "../planView/named";
import { arrowHead, fill, line, type Paper, rowsFor, Sketch, stroke, widthOf, write } from "../sketch";
import { forceWords } from "../words";

/** An arrow's length, px. */
const arrow = 26;

/** Name and force of a load: the downward one, or the horizontal one where that is greater. */
function loadWords({ name, force: [fs, ft, fz] }: Step["loads"][number], look: Look): string {
  const across = Math.hypot(fs, ft);
  const force =
    across > Math.abs(fz) ? `${forceWords(across, look.display)} sideways` : forceWords(Math.abs(fz), look.display);
  return `${name} ${force}${across <= Math.abs(fz) && fz > 0 ? " upward" : ""}`;
}

export const SignsInElevation = memo(function SignsInElevation({
  plan,
  step,
  level,
  profile,
  map,
  look,
}: {
  readonly plan: Plan;
  readonly step: Step;
  readonly level: StepLevel | null;
  readonly profile: Profile;
  readonly map: ElevationMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      drawLoads(paper, plan, step, profile, map, look);
      if (step.peopleUnder) drawPeople(paper, profile, map, look);
      if (step.craneHolds) drawHook(paper, plan, step, level, profile, map, look);
    },
    [plan, step, level, profile, map, look],
  );
  return <Sketch draw={draw} />;
});

function drawLoads(paper: Paper, plan: Plan, step: Step, profile: Profile, map: ElevationMap, look: Look): void {
  const { keepClear: colour } = look.colours.drawing;
  const words = step.loads.map((load) => loadWords(load, look));
  const rows = rowsFor(
    step.loads.map(({ s }, index) => ({ at: map.x(s), width: widthOf(words[index]!, { size: typeSize.small }) })),
  );
  step.loads.forEach(({ s, force: [fs, , fz] }, index) => {
    const x = map.x(s);
    const y = map.y(datumAt(profile, s) + plan.piece.depth);
    const top = y - arrow - 15 * rows[index]!;
    const along = Math.abs(fs) > Math.abs(fz);
    const [from, to]: readonly [Point, Point] = along
      ? [
          [x - Math.sign(fs) * arrow, y - 4],
          [x, y - 4],
        ]
      : fz > 0
        ? [
            [x, y],
            [x, top],
          ]
        : [
            [x, top],
            [x, y],
          ];
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    line(paper, from, to, { colour, width: lineWeight.heavy });
    arrowHead(paper, to, [(to[0] - from[0]) / length, (to[1] - from[1]) / length], 9, colour);
    const half = widthOf(words[index]!, { size: typeSize.small }) / 2 + 4;
    const at = Math.max(half, Math.min(map.size.width - half, x));
    write(paper, words[index]!, [at, Math.max(10, top - 9)], {
      colour,
      size: typeSize.small,
      rim: look.colours.paper,
    });
  });
}

/** A person on the floor in the widest space between stands. */
function drawPeople(paper: Paper, profile: Profile, map: ElevationMap, look: Look): void {
  const [first, last] = [profile.parts[0], profile.parts.at(-1)];
  if (first === undefined || last === undefined) return;
  const stands = profile.stands.map(({ placement }) => placement.s).sort((a, b) => a - b);
  const stations = [first.from, ...stands, last.to];
  let [s, widest] = [(first.from + last.to) / 2, 0];
  for (let index = 1; index < stations.length; index++) {
    const [a, b] = [stations[index - 1]!, stations[index]!];
    if (b - a > widest + 1e-9) [s, widest] = [(a + b) / 2, b - a];
  }
  const { ink, paper: ground } = look.colours;
  const words = "people under";
  const x = map.x(s) - widthOf(words, { size: typeSize.small }) / 2 - 4;
  const floor = map.y(profile.floor(s));
  const pen = { colour: ink, width: lineWeight.outline };
  paper.beginPath();
  paper.arc(x, floor - 15, 3, 0, 2 * Math.PI);
  fill(paper, ground);
  stroke(paper, pen);
  for (const [from, to] of [
    [
      [x, floor - 12],
      [x, floor - 6],
    ],
    [
      [x - 5, floor - 10],
      [x + 5, floor - 10],
    ],
    [
      [x, floor - 6],
      [x - 4, floor],
    ],
    [
      [x, floor - 6],
      [x + 4, floor],
    ],
  ] as const)
    line(paper, from, to, pen);
  write(paper, words, [x + 9, floor - 9], { colour: ink, size: typeSize.small, align: "left", rim: ground });
}

/** The crane's hook over the centre of gravity. */
function drawHook(
  paper: Paper,
  plan: Plan,
  step: Step,
  level: StepLevel | null,
  profile: Profile,
  map: ElevationMap,
  look: Look,
): void {
  const [from, to] = partsOf(plan.piece, step)[0]!;
  const s = level?.cg?.s ?? (from + to) / 2;
  const x = map.x(s);
  const y = map.y(datumAt(profile, s) + plan.piece.depth) - 4;
  const { ink, paper: ground } = look.colours;
  const pen = { colour: ink, width: lineWeight.heavy };
  line(paper, [x, 0], [x, y - 14], { colour: ink, width: lineWeight.thin });
  paper.beginPath();
  paper.moveTo(x, y - 14);
  paper.lineTo(x, y - 9);
  paper.arc(x, y - 5, 4, -Math.PI / 2, Math.PI);
  stroke(paper, pen);
  write(paper, "the crane still holds it", [x + 10, y - 10], {
    colour: ink,
    size: typeSize.small,
    align: "left",
    rim: ground,
  });
}

/** Loads on the piece from above. */
export const LoadsInPlan = memo(function LoadsInPlan({
  step,
  map,
  look,
}: {
  readonly step: Step;
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { keepClear: colour } = look.colours.drawing;
      const pen = { colour, width: lineWeight.outline };
      for (const { s, t } of step.loads) {
        const [x, y] = map.piece([s, t]);
        paper.beginPath();
        paper.rect(x - 5, y - 5, 10, 10);
        fill(paper, look.colours.paper);
        stroke(paper, pen);
        line(paper, [x - 5, y - 5], [x + 5, y + 5], pen);
        line(paper, [x - 5, y + 5], [x + 5, y - 5], pen);
      }
    },
    [step, map, look],
  );
  return <Sketch draw={draw} />;
});

/** Names of the loads, beside the piece. */
export function loadNames(
  step: Step,
  box: { readonly top: number; readonly bottom: number },
  map: PlanMap,
  look: Look,
): readonly Name[] {
  return step.loads.map((load) => {
    const from = map.piece([load.s, load.t]);
    const places = besideRing(from[0], box, map);
    return named(loadWords(load, look), places, look.colours.drawing.keepClear, { from });
  });
}
