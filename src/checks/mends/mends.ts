/**
 * Single changes that mend a finding: a shim of a thickness that shops have, a shift by 50 mm, a swap with a free stand.
 * Each is verified by checking the changed plan: the finding is gone and nothing fails that did not fail before.
 */

import type { Layout, LayoutId, Placement, Plan, StandId, StandType, StepId } from "../../plan";
import { layoutOf, typeOf } from "../../plan";
import { forFindings } from "../engine";
import { checkOf, failingInStep, failingOnFloor } from "../failing";
import { memoByIdentity } from "../memo";
import { type Answers, awaited } from "../parts";
import type { Finding } from "../report";
import { freeStands, withPlacement } from "../variations";
import { sameThickness, shopShims } from "./shopShims";

export type Mend =
  /** Take shims out or put some in, up to a thickness, m. */
  | { readonly kind: "shim"; readonly layout: LayoutId; readonly stand: StandId; readonly shim: number }
  /** Move along (s) or across (t), to a place, m. */
  | {
      readonly kind: "shift";
      readonly layout: LayoutId;
      readonly stand: StandId;
      readonly s: number;
      readonly t: number;
    }
  /** Put a free stand in the place of another, at a height, m. */
  | {
      readonly kind: "swap";
      readonly layout: LayoutId;
      readonly stand: StandId;
      readonly by: StandId;
      readonly height: number;
    };

/** How far a stand is shifted at a time, m, and how many times at most. */
const shift = { by: 0.05, times: 4 } as const;

/** The plan with a mend done. */
export function mended(plan: Plan, mend: Mend): Plan {
  return withPlacement(plan, mend.layout, mend.stand, changeOf(mend));
}

/** What a mend changes of its placement. */
export function changeOf(mend: Mend): Partial<Placement> {
  switch (mend.kind) {
    case "shim":
      return { shim: mend.shim };
    case "shift":
      return { s: mend.s, t: mend.t };
    case "swap":
      return { stand: mend.by, height: mend.height };
  }
}

/**
 * Looks for mends of a finding that fails, the likeliest first, and pauses after every plan that it has checked with the mend that
 * it found, or null. Ends after `enough` of them. What it has checked is remembered for the plan's other findings.
 */
export function* mendsSearch(plan: Plan, finding: Finding, enough = 3): Generator<Mend | null, void> {
  const layout = layoutOf(plan, finding.layout);
  const target = nameOf(finding.step, checkOf(finding));
  const tried = triedOn(plan, layout);
  let found = 0;
  if (!tried.before.has(target)) return;
  for (const mend of candidates(plan, layout, finding)) {
    const good = tried.mends(mend, target);
    if (good) found += 1;
    yield good ? mend : null;
    if (found >= enough) return;
  }
}

/** The mends of a finding, at most `enough`; those found until `stop` said so. */
export function mends(plan: Plan, finding: Finding, enough = 3, stop: () => boolean = () => false): readonly Mend[] {
  const all: Mend[] = [];
  for (const mend of mendsSearch(plan, finding, enough)) {
    if (mend !== null) all.push(mend);
    if (stop()) break;
  }
  return all;
}

/**
 * The same answers, the quicker first. What fails as planned fails with the bounds too, and is told in a tenth of the
 * time; the floor, whose walkways take longest, comes last.
 */
const stages: readonly Answers[] = [awaited, { ...forFindings, floor: awaited.floor }, forFindings];

/** What has been checked of one layout, so that all its findings are looked at in the same changed plans. */
interface Tried {
  /** What fails in the plan as it is. */
  readonly before: ReadonlySet<string>;
  /** Whether a mend takes away the target and nothing fails that did not fail before. */
  readonly mends: (mend: Mend, target: string) => boolean;
}

const triedOn: (plan: Plan, layout: Layout) => Tried = memoByIdentity(
  (plan: Plan, layout: Layout) => [plan, layout],
  (plan, layout) => {
    const before = new Set(failing(plan, layout, forFindings));
    const changedPlans = new Map<string, (stage: number) => readonly string[]>();
    const failingAfter = (mend: Mend) => {
      const name = JSON.stringify(mend);
      const stagesOf = changedPlans.get(name) ?? stagesIn(mended(plan, mend), layout);
      changedPlans.set(name, stagesOf);
      return stagesOf;
    };
    return {
      before,
      mends: (mend, target) => {
        const failingAt = failingAfter(mend);
        return stages.every((_, stage) => failingAt(stage).every((check) => check !== target && before.has(check)));
      },
    };
  },
);

/** What fails in a plan at each stage, looked for once. */
function stagesIn(plan: Plan, layout: Pick<Layout, "id">): (stage: number) => readonly string[] {
  const found: (readonly string[])[] = [];
  return (stage) => {
    found[stage] ??= failing(plan, layout, stages[stage]!);
    return found[stage];
  };
}

const nameOf = (step: StepId | null, check: string) => `${step ?? ""} ${check}`;

/** All that fails in the steps of a layout and on its floor. */
function failing(plan: Plan, { id }: Pick<Layout, "id">, answers: Answers): readonly string[] {
  const steps = plan.steps.filter((step) => step.layout === id);
  return [
    ...steps.flatMap((step) => failingInStep(plan, step, answers).map((check) => nameOf(step.id, check))),
    ...failingOnFloor(plan, layoutOf(plan, id), answers).map((check) => nameOf(null, check)),
  ];
}

/** Shims, then shifts, then swaps; of each the stand that the finding speaks of first. */
function* candidates(plan: Plan, { id, placements }: Layout, finding: Finding): Generator<Mend> {
  const own = placements.filter(({ stand }) => stand === finding.stand);
  const others = placements.filter(({ stand }) => stand !== finding.stand);
  const ordered = [...own, ...others];
  for (const placement of ordered) yield* shimsOf(id, placement);
  for (let times = 1; times <= shift.times; times++)
    for (const placement of ordered) yield* shiftsOf(id, placement, times * shift.by);
  for (const by of freeStands(plan, id))
    for (const placement of ordered) {
      const height = nearestHeight(typeOf(plan, by), placement.height);
      yield { kind: "swap", layout: id, stand: placement.stand, by, height };
    }
}

/** Out altogether first, then any shop thickness put in, taken out or set alone, the smaller change first. */
function* shimsOf(layout: LayoutId, { stand, shim }: Placement): Generator<Mend> {
  const thicknesses = shopShims.flatMap((one) => [shim - one, shim + one, one]).filter((one) => one > sameThickness);
  thicknesses.sort((one, two) => Math.abs(one - shim) - Math.abs(two - shim));
  const tried: number[] = [shim];
  for (const thickness of [0, ...thicknesses]) {
    if (tried.some((one) => Math.abs(one - thickness) <= sameThickness)) continue;
    tried.push(thickness);
    yield { kind: "shim", layout, stand, shim: thickness };
  }
}

function* shiftsOf(layout: LayoutId, { stand, s, t }: Placement, by: number): Generator<Mend> {
  for (const [along, across] of [
    [by, 0],
    [-by, 0],
    [0, by],
    [0, -by],
  ] as const)
    yield { kind: "shift", layout, stand, s: s + along, t: t + across };
}

/** The height that a type can have nearest to one wished for, m. */
function nearestHeight({ height: { min, max, increment } }: StandType, wished: number): number {
  const within = Math.min(max, Math.max(min, wished));
  if (increment === 0) return within;
  const holes = Math.min(Math.floor((max - min) / increment + 1e-9), Math.round((within - min) / increment));
  return min + holes * increment;
}
