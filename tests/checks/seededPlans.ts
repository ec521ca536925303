/**
 * Plans that fail by chance, for trying the mends on: two to five stands under a stiff, a bending or a rigid piece, with
 * shims that may be too much, ratings that may be too small, stands too near each other, to a keep-off zone, to a walkway
 * or to the end of the piece, one out of service, one or two left over. One or two steps.
 */

import type { Plan } from "../../src/plan";
import { randomNumbers } from "../statics/bounds/plans";
import { type Draft, planWith } from "./base";

export function seededPlan(seed: number): Plan {
  const random = randomNumbers(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const pick = <Value>(values: readonly Value[]): Value => values[Math.floor(random() * values.length)]!;
  const chance = (share: number) => random() < share;
  return planWith((draft: Draft) => {
    const count = pick([2, 2, 2, 2, 3, 3, 3, 3, 4, 5]);
    const ids = Array.from({ length: count + pick([0, 0, 1, 1, 1]) }, (_, index) => `S${index + 1}`);
    const [horse] = draft.standTypes;
    horse!.ratedLoad = between(0.9, 2) * (19613 / count) * 1.4;
    horse!.ratedLoadCentre = pick([horse!.ratedLoad, 0.8 * horse!.ratedLoad]);
    horse!.top.length = pick([1, 0.6]);
    horse!.stiffness = pick([2e7, 5e7, 1e8]);
    const strong = { ...structuredClone(horse!), id: "strong", name: "Strong", ratedLoad: 2 * horse!.ratedLoad };
    strong.ratedLoadCentre = strong.ratedLoad;
    strong.height = { min: 0.6, max: 0.9, increment: pick([0, 0.1]) };
    draft.standTypes.push(strong as typeof horse & object);
    draft.stands = ids.map((id, index) => ({
      id,
      type: index >= count && chance(0.6) ? "strong" : "horse",
      condition: chance(0.06) ? "out-of-service" : "in-service",
    })) as Draft["stands"];
    const [from, to] = [between(0.3, 2.5), between(7.5, 9.9)];
    draft.layouts[0]!.placements = ids.slice(0, count).map((stand, index) => ({
      stand,
      s: from + ((to - from) * index) / (count - 1) + between(-0.2, 0.2),
      t: pick([0, 0, 0, between(-0.3, 0.3)]),
      height: 0.8,
      shim: pick([0, 0, 0, 0, 0.001, 0.003, 0.003175]),
    })) as Draft["layouts"][number]["placements"];
    draft.piece.stiffness = pick([
      "rigid",
      [{ from: 0, to: 10, EI: 2e7, GJ: 1e7, kGA: null }],
      [{ from: 0, to: 10, EI: 1e8, GJ: null, kGA: null }],
    ]) as never;
    draft.piece.masses.push({
      ...{ id: "lug", name: "Lug", kind: "point", mass: between(50, 600), s: between(0.3, 9.7), t: between(-0.2, 0.2) },
      ...{ z: 0.6, uncertainty: 0.1 },
    } as never);
    if (chance(0.3)) {
      const at = from + pick([0.08, -0.08]);
      draft.piece.noRestZones = [{ name: "joint", polygon: zone(at, at + 0.15) }] as never;
    }
    draft.criteria = { topTilt: 0, levelTolerance: pick([0, 0.00002, 0.0001]) } as never;
    if (chance(0.15)) {
      draft.steps.push({
        ...structuredClone(draft.steps[0]!),
        id: "lug-off",
        name: "Lug off",
        absent: ["lug"],
      } as never);
    }
    if (chance(0.6)) draft.bay = null as never;
    else if (chance(0.5)) {
      const walkway = { name: "aisle", from: [1, 6.3], to: [17, 6.3], width: null, lane: null };
      draft.bay!.obstacles = [{ name: "bench", polygon: box(3, 6.75 + between(0, 0.1), 15, 7.5) }] as never;
      draft.bay!.walkways = [walkway] as never;
    }
  });
}

const zone = (from: number, to: number) => box(from, -0.5, to, 0.5);
const box = (left: number, low: number, right: number, high: number) => [
  [left, low],
  [right, low],
  [right, high],
  [left, high],
];
