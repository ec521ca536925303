/** Random plans for trying the bounds on: one step, a box that does not tip it, everything from stiff dies to soft beams. */

import type { Plan, PlanDocument } from "../../../src/plan";
import { complete } from "../../../src/plan";

/** Uniform on [0, 1), repeatable: the generator mulberry32 (T. Ettinger, public domain). */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export interface PlanWishes {
  readonly stands?: number;
  readonly masses?: number;
  readonly beam?: "rigid" | "elastic" | "torsion-flexible";
  /** m; left out = anything from 0.01 to 6 mm. */
  readonly levelTolerance?: number;
  readonly topTilt?: number;
  /** No eccentric masses, turned stands, shims, centres, bows or loads. */
  readonly plain?: boolean;
  /** A Bernoulli beam that a general-purpose solver can cope with (EI from 1e7 N·m² up), no estimated stands. */
  readonly simpleBeam?: boolean;
}

/** A plan with one step, which may or may not be stable over its whole box. */
export function randomPlan(random: () => number, wishes: PlanWishes = {}): Plan {
  const between = (low: number, high: number) => low + (high - low) * random();
  const logBetween = (low: number, high: number) => Math.exp(between(Math.log(low), Math.log(high)));
  const chance = (share: number) => random() < share;
  const count = wishes.stands ?? 2 + Math.floor(random() * 4);
  const masses = wishes.masses ?? 1 + Math.floor(random() * 5);
  const beam = wishes.beam ?? (["rigid", "elastic", "torsion-flexible"] as const)[Math.floor(random() * 3)]!;
  const plain = wishes.plain ?? false;
  const length = between(2, 16);
  const width = chance(0.5) ? between(0.2, 0.6) : between(0.8, 2.5);
  const k = logBetween(1e7, 1e9);
  const spread = between(0.55, 0.98);
  const top = Math.max(0.4, width * between(0.6, 1.2));
  const stands = Array.from({ length: count }, (_, i) => {
    const even = length * (0.5 + spread * (i / (count - 1) - 0.5));
    return {
      id: `S${i + 1}`,
      s: even + (i === 0 || i === count - 1 ? 0 : between(-0.3, 0.3) * ((length * spread) / (count - 1))),
      t: plain || chance(0.7) ? 0 : between(-0.1, 0.1) * width,
      angle: plain || chance(0.8) ? 0 : between(-30, 30),
    };
  });
  const document = {
    format: "trestleboard-plan",
    version: 1,
    title: "random",
    piece: {
      name: "random",
      outline: [
        [0, -width / 2],
        [length, -width / 2],
        [length, width / 2],
        [0, width / 2],
      ],
      depth: 0.6,
      stiffness:
        beam === "rigid"
          ? "rigid"
          : [
              {
                from: 0,
                to: length,
                EI: logBetween(wishes.simpleBeam ? 1e7 : 3e5, 3e9),
                kGA: chance(0.3) && !wishes.simpleBeam ? logBetween(1e7, 1e9) : null,
                GJ: beam === "torsion-flexible" ? logBetween(wishes.simpleBeam ? 1e5 : 1e4, 1e8) : null,
              },
            ],
      underside: [],
      masses: [
        {
          id: "body",
          name: "body",
          kind: "line",
          from: 0,
          to: length,
          massPerLength: [between(80, 2000), between(80, 2000)],
          t: 0,
          z: 0.3,
          uncertainty: chance(0.2) ? 0 : between(0, 0.06),
        },
        ...Array.from({ length: masses - 1 }, (_, i) => ({
          id: `m${i}`,
          name: `m${i}`,
          kind: "point",
          s: between(0.1, 0.9) * length,
          t: plain || chance(0.5) ? 0 : between(-0.2, 0.2) * width,
          z: 0.3,
          mass: between(50, 1500),
          uncertainty: between(0, 0.15),
          ...(plain || chance(0.6)
            ? {}
            : { centreWithin: { s: between(0, 0.05) * length, t: chance(0.5) ? 0 : between(0, 0.1) * width } }),
        })),
      ],
      restZones: null,
      noRestZones: [],
      workWindows: [],
      section: null,
    },
    standTypes: [
      {
        id: "t1",
        name: "t1",
        legs: "a-frame",
        height: { min: 0.5, max: 1.2, increment: 0 },
        top: { length: top, width: 0.2, material: "hardwood" },
        legSpacing: top * between(0.6, 0.95),
        splay: { along: 15, across: 0 },
        foot: { length: 0.15, width: 0.1 },
        ratedLoad: 90000,
        stiffness: wishes.simpleBeam || chance(0.9) ? k : null,
        selfMass: 100,
        liftingPoints: true,
      },
    ],
    stands: stands.map(({ id }) => ({ id, type: "t1", condition: "in-service" })),
    layouts: [
      {
        id: "A",
        name: "A",
        placements: stands.map(({ id, s, t, angle }) => ({
          stand: id,
          s,
          t,
          angle,
          height: 0.8,
          shim: plain || chance(0.8) ? 0 : between(0, 0.002),
          ...(plain || chance(0.9) ? {} : { levelTolerance: between(0, 0.002) }),
        })),
      },
    ],
    steps: [
      {
        id: "only",
        name: "only",
        layout: "A",
        bow: plain || chance(0.7) ? null : between(0, 0.003),
        loads:
          plain || chance(0.6)
            ? []
            : [
                {
                  name: "push",
                  s: between(0.2, 0.8) * length,
                  t: 0,
                  z: 0.5,
                  force: [between(-300, 300), between(-100, 100), -between(0, 1500)],
                },
              ],
      },
    ],
    criteria: {
      levelTolerance: wishes.levelTolerance ?? logBetween(1e-5, 6e-3),
      topTilt: wishes.topTilt ?? (chance(0.3) ? 0 : logBetween(1e-5, 2e-3)),
    },
  };
  return complete(document as unknown as PlanDocument);
}
