/**
 * The report parts, computed. Each is remembered by the identity of what it reads, so that an edit recomputes only
 * what it touches: a change of title, of the selection or of another layout recomputes nothing.
 */

import type { FloorReport } from "../floor";
import { floorOf } from "../floor";
import type { Layout, Plan, Step } from "../plan";
import { criteriaOf, layoutOf, memo, setDownFactorOf } from "../plan";
import {
  assembleStep,
  boundsSearch,
  certifiedBoundsSearch,
  ended,
  mapped,
  type Pausing,
  type StepLevel,
  solveStep,
  tippingOf,
} from "../statics";
import { boundsFrom, certificatesFrom } from "./bounds";
import { memoByIdentity, workByIdentity } from "./memo";
import {
  type Answers,
  known,
  knownValue,
  type Part,
  pending,
  type StepBounds,
  type StepCertificates,
  type StepDiagrams,
  type StepSlab,
  type StepStrength,
  type StepTipping,
} from "./parts";
import { slabUnder } from "./slab";
import { strengthOf } from "./strength";

/** What the level solution of a step reads. */
const levelKeys = (plan: Plan, step: Step): readonly [object, ...unknown[]] => [
  plan.piece,
  layoutOf(plan, step).placements,
  plan.stands,
  plan.standTypes,
  plan.bay?.floor.slope ?? null,
  step.loads,
  step.absent,
  step.parts,
];

/** What the box of a step reads besides. Single criteria, so that another criterion's change leaves the bounds alone. */
const boundsKeys = (plan: Plan, step: Step): readonly [object, ...unknown[]] => {
  const { levelTolerance, topTilt, straightness } = criteriaOf(plan);
  return [...levelKeys(plan, step), levelTolerance, topTilt, straightness, step.bow, step.readings];
};

/** Reactions as planned, stability, residuals. Fast enough for every pointer move. */
export const levelPart: (plan: Plan, step: Step) => Part<StepLevel> = memoByIdentity(levelKeys, (plan, step) =>
  known(solveStep(plan, step)),
);

/** Tipping lines and reserves; the tipping lines of all contacts while the bounds are not known. */
export const tippingPart: (plan: Plan, step: Step, bounds: Part<StepBounds>) => Part<StepTipping> = memoByIdentity(
  (plan: Plan, step: Step, bounds: Part<StepBounds>) => [
    ...levelKeys(plan, step),
    criteriaOf(plan).personLoad,
    knownValue(bounds)?.stands ?? null,
  ],
  (plan, step, bounds) => {
    const level = knownValue(levelPart(plan, step));
    if (level === null) return pending();
    const most = knownValue(bounds)?.stands?.map((stand) => stand.over?.most ?? null) ?? null;
    return known(tippingOf(assembleStep(plan, step), level, plan.piece, most, criteriaOf(plan).personLoad));
  },
);

/** Trip zones, walkways and overlaps of a layout. */
export const floorPart: (plan: Plan, layout: Layout) => Part<FloorReport> = memoByIdentity(
  (plan: Plan, layout: Layout) => {
    const { tripHeight, toeClearance, headroom, walkwayWidth } = criteriaOf(plan);
    const { piece, stands, standTypes, bay } = plan;
    return [
      piece,
      layout.placements,
      stands,
      standTypes,
      bay,
      layout.id,
      tripHeight,
      toeClearance,
      headroom,
      walkwayWidth,
    ];
  },
  (plan, layout) => known(floorOf(plan, layout)),
);

/** Moment, shear, torque, deflection and twist of the level case. */
export function diagramsPart(plan: Plan, step: Step): Part<StepDiagrams> {
  const level = levelPart(plan, step);
  return level.status === "known" ? diagramsOf(level.value) : pending();
}
const diagramsOf = memo(({ parts }: StepLevel): Part<StepDiagrams> => known(parts));

/** Least and most of each reaction over the box, with witnesses, and the statics limits; pauses after every climb. */
export const boundsWork: (plan: Plan, step: Step) => Pausing<Part<StepBounds>> = workByIdentity(
  boundsKeys,
  (plan, step) => mapped(boundsSearch(plan, step), (bounds) => known(boundsFrom(bounds))),
);
export const boundsPart = (plan: Plan, step: Step): Part<StepBounds> => ended(boundsWork(plan, step));

/** Proved outer bounds; pauses after every branch with what is proved so far. */
export const certificatesWork: (plan: Plan, step: Step) => Pausing<Part<StepCertificates>> = workByIdentity(
  boundsKeys,
  (plan, step) => mapped(certifiedBoundsSearch(plan, step), (bounds) => known(certificatesFrom(bounds))),
);
export const certificatesPart = (plan: Plan, step: Step): Part<StepCertificates> => ended(certificatesWork(plan, step));

/** The bounds as a proof leaves them: the same object for the same certificates. */
export const boundsProved: (certificates: StepCertificates) => Part<StepBounds> = memo(({ bounds }) => known(bounds));

const strengthFrom = memoByIdentity(
  (plan: Plan, step: Step, bounds: Part<StepBounds>) => {
    const { sagLimit, allowableStressFactor } = criteriaOf(plan);
    return [...boundsKeys(plan, step), setDownFactorOf(plan, step), sagLimit, allowableStressFactor, bounds];
  },
  (plan: Plan, step: Step, bounds: Part<StepBounds>): Part<StepStrength | null> =>
    known(strengthOf(plan, step, knownValue(levelPart(plan, step)), knownValue(bounds))),
);

/** The piece's own strength and the pressure on the tops, as far as climbs attain; null where there are no reactions. */
export function strengthPart(plan: Plan, step: Step): Part<StepStrength | null> {
  return strengthFrom(plan, step, boundsPart(plan, step));
}

/** The same over what the proof leaves as the bounds; pauses with it. */
export function strengthWork(plan: Plan, step: Step): Pausing<Part<StepStrength | null>> {
  return mapped(certificatesWork(plan, step), (certificates) =>
    certificates.status === "known"
      ? strengthFrom(plan, step, boundsProved(certificates.value))
      : strengthPart(plan, step),
  );
}

/** Stresses of the slab under the feet of a step; null without a slab, and where there are no greatest reactions. */
export const slabPart: (plan: Plan, step: Step, bounds: Part<StepBounds>) => Part<StepSlab | null> = memoByIdentity(
  (plan: Plan, step: Step, bounds: Part<StepBounds>) => [
    ...boundsKeys(plan, step),
    plan.bay?.slab ?? null,
    setDownFactorOf(plan, step),
    criteriaOf(plan).slabFactor,
    bounds,
  ],
  (plan, step, bounds) => {
    if (plan.bay === null || plan.bay.slab === null) return known(null);
    if (bounds.status !== "known") return bounds.status === "pending" ? pending() : bounds;
    return known(slabUnder(plan, step, plan.bay.slab, bounds.value));
  },
);

/** What the findings rest on: everything but certificates and margins. */
export const forFindings: Answers = {
  bounds: boundsPart,
  certificates: () => pending(),
  strength: strengthPart,
  margins: () => pending(),
  standing: () => pending(),
  floor: floorPart,
};

/** Everything but the margins, which take seconds. */
export const withoutMargins: Answers = {
  ...forFindings,
  certificates: certificatesPart,
  strength: (plan, step) => ended(strengthWork(plan, step)),
};
