/** A plan with one thing changed: what "good up to" and the mends try. The plan itself is never touched. */

import { pieceFrame, toOuter } from "../geometry";
import type { Criteria, Layout, LayoutId, Load, Mass, Placement, Plan, StandId, Step } from "../plan";
import { layoutOf, pieceLength } from "../plan";

/** The plan with the placements of one layout replaced. */
export function withPlacements(
  plan: Plan,
  layout: LayoutId,
  change: (placements: readonly Placement[]) => readonly Placement[],
): Plan {
  const layouts = plan.layouts.map(
    (one): Layout => (one.id === layout ? { ...one, placements: change(one.placements) } : one),
  );
  return { ...plan, layouts };
}

/** All masses so many times as heavy. */
export function withWeight(plan: Plan, factor: number): Plan {
  const masses = plan.piece.masses.map((mass): Mass => {
    if (mass.kind === "point") return { ...mass, mass: mass.mass * factor };
    const [from, to] = mass.massPerLength;
    return { ...mass, massPerLength: [from * factor, to * factor] };
  });
  return { ...plan, piece: { ...plan.piece, masses } };
}

/** Every top known within so much, m. */
export function withLevelTolerance(plan: Plan, step: Step, levelTolerance: number): Plan {
  return withPlacements(plan, step.layout, (placements) =>
    placements.map((placement) => ({ ...placement, levelTolerance })),
  );
}

/** The piece landed so far off its marks along and across, m; the stands stay on the floor. */
export function landedOff(plan: Plan, step: Step, along: number, across: number): Plan {
  const [x, y] = toOuter(pieceFrame(plan.piece.pose), [along, across]);
  const moved = { ...plan, piece: { ...plan.piece, pose: { ...plan.piece.pose, x, y } } };
  return withPlacements(moved, step.layout, (placements) =>
    placements.map((placement) => ({ ...placement, s: placement.s - along, t: placement.t - across })),
  );
}

/** The piece set down end for end where it was; the stands stay on the floor. */
export function turnedRound(plan: Plan, step: Step): Plan {
  const length = pieceLength(plan.piece);
  const [x, y] = toOuter(pieceFrame(plan.piece.pose), [length, 0]);
  const pose = { x, y, heading: plan.piece.pose.heading + 180 };
  return withPlacements({ ...plan, piece: { ...plan.piece, pose } }, step.layout, (placements) =>
    placements.map((placement) => ({
      ...placement,
      s: length - placement.s,
      t: -placement.t,
      angle: placement.angle + 180,
    })),
  );
}

/** One stand taken away. */
export function withoutStand(plan: Plan, step: Step, stand: StandId): Plan {
  return withPlacements(plan, step.layout, (placements) => placements.filter((one) => one.stand !== stand));
}

/** A criterion changed. */
export function withCriterion<Key extends keyof Criteria>(plan: Plan, key: Key, value: Criteria[Key]): Plan {
  return { ...plan, criteria: { ...plan.criteria, [key]: value } };
}

/** A weight more on the piece in one step, N. */
export function withAddedLoad(plan: Plan, step: Step, s: number, t: number, force: number): Plan {
  const load: Load = { name: "", s, t, z: 0, force: [0, 0, -force] };
  return { ...plan, steps: plan.steps.map((one) => (one === step ? { ...one, loads: [...one.loads, load] } : one)) };
}

/** The layout's placements with one replaced. */
export function withPlacement(plan: Plan, layout: LayoutId, stand: StandId, change: Partial<Placement>): Plan {
  return withPlacements(plan, layout, (placements) =>
    placements.map((one) => (one.stand === stand ? { ...one, ...change } : one)),
  );
}

/** The stands of the register that a layout does not use. */
export function freeStands(plan: Plan, layout: LayoutId): readonly StandId[] {
  const used = new Set(layoutOf(plan, layout).placements.map((placement) => placement.stand));
  return plan.stands.map((stand) => stand.id).filter((id) => !used.has(id));
}
