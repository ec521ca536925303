/** Plans at random for property tests: ordinary, stiff, soft, lopsided and degenerate ones. */

import fc from "fast-check";
import { complete, type Plan, type PlanDocument } from "../../src/plan";

/** A number from 10^low to 10^high, evenly in its logarithm, with four digits. */
function decades(low: number, high: number): fc.Arbitrary<number> {
  return fc.double({ min: low, max: high, noNaN: true }).map((exponent) => Number((10 ** exponent).toPrecision(4)));
}

/** A multiple of a step, so that coincidences (one s for two stands, a load over a stand, symmetry) are frequent. */
function lattice(from: number, to: number, step: number): fc.Arbitrary<number> {
  return fc
    .integer({ min: Math.round(from / step), max: Math.round(to / step) })
    .map((count) => Number((count * step).toPrecision(12)));
}

/** One in `chances` has it, the others null. */
function sometimes<Value>(arbitrary: fc.Arbitrary<Value>, chances: number): fc.Arbitrary<Value | null> {
  return fc.oneof({ weight: chances - 1, arbitrary: fc.constant(null) }, { weight: 1, arbitrary });
}

const somewhere = (from: number, to: number) =>
  fc.oneof(lattice(from, to, (to - from) / 8), fc.double({ min: from, max: to, noNaN: true }));

const rigidOrElastic = (length: number) =>
  fc.oneof(
    { weight: 2, arbitrary: fc.constant("rigid" as const) },
    {
      weight: 5,
      arbitrary: fc
        .record({
          joints: fc.uniqueArray(lattice(length / 8, (7 * length) / 8, length / 8), { maxLength: 3 }),
          EI: fc.array(decades(5, 10), { minLength: 4, maxLength: 4 }),
          kGA: fc.array(fc.option(decades(6, 10), { freq: 2 }), { minLength: 4, maxLength: 4 }),
          GJ: fc.array(fc.option(decades(3, 9), { freq: 2 }), { minLength: 4, maxLength: 4 }),
        })
        .map(({ joints, EI, kGA, GJ }) => {
          const ends = [0, ...joints.sort((a, b) => a - b), length];
          return ends.slice(1).map((to, i) => ({ from: ends[i]!, to, EI: EI[i]!, kGA: kGA[i]!, GJ: GJ[i]! }));
        }),
    },
  );

const massAt = (length: number, width: number) =>
  fc.oneof(
    fc
      .record({
        ends: fc.uniqueArray(somewhere(0, length), { minLength: 2, maxLength: 2 }),
        massPerLength: fc.tuple(decades(0, 3), decades(0, 3)),
        t: offset(width / 2),
      })
      .filter(({ ends }) => Math.abs(ends[0]! - ends[1]!) > 1e-6)
      .map(({ ends, massPerLength, t }) => ({
        kind: "line" as const,
        from: Math.min(...ends),
        to: Math.max(...ends),
        massPerLength,
        t,
      })),
    fc.record({
      kind: fc.constant("point" as const),
      s: somewhere(0, length),
      t: offset(width / 2),
      mass: decades(1, 4),
    }),
  );

/** Mostly in the middle or near it. */
const offset = (most: number) =>
  fc.oneof(
    { weight: 4, arbitrary: fc.constant(0) },
    { weight: 3, arbitrary: somewhere(-most / 4, most / 4) },
    { weight: 1, arbitrary: somewhere(-most, most) },
  );

const standAt = (length: number, width: number) =>
  fc.record({
    s: somewhere(0, length),
    t: offset(width / 2),
    angle: fc.oneof(
      { weight: 4, arbitrary: fc.constant(0) },
      { weight: 1, arbitrary: fc.constantFrom(90, 180, 30, -45) },
      { weight: 1, arbitrary: fc.double({ min: -180, max: 180, noNaN: true }) },
    ),
    topLength: fc.oneof(
      { weight: 6, arbitrary: somewhere(width / 2, 1.5 * width) },
      { weight: 1, arbitrary: decades(-4, -1) },
    ),
    stiffness: fc.option(decades(5, 10), { freq: 8 }),
    error: fc.oneof(
      { weight: 2, arbitrary: fc.constant(0) },
      { weight: 2, arbitrary: fc.double({ min: -0.004, max: 0.004, noNaN: true }) },
      { weight: 1, arbitrary: fc.double({ min: -0.05, max: 0.05, noNaN: true }) },
    ),
  });

const size = fc.record({ length: lattice(1, 30, 0.5), width: lattice(0.25, 4, 0.25) });

/** A plan of one step with up to seven stands; about half of them are stable. */
export const planArbitrary: fc.Arbitrary<Plan> = size.chain(({ length, width }) =>
  fc
    .record({
      stiffness: rigidOrElastic(length),
      masses: fc.array(massAt(length, width), { minLength: 1, maxLength: 6 }),
      stands: fc.array(standAt(length, width), { minLength: 2, maxLength: 7 }),
      spread: fc.oneof({ weight: 3, arbitrary: fc.constant(true) }, { weight: 1, arbitrary: fc.constant(false) }),
      joint: sometimes(lattice(length / 4, (3 * length) / 4, length / 4), 6),
      step: sometimes(fc.record({ at: somewhere(0, length), z: fc.double({ min: -0.02, max: 0.02, noNaN: true }) }), 4),
      keepOff: sometimes(fc.tuple(somewhere(0, length), decades(-1, 0)), 6),
      slope: fc.oneof(
        { weight: 4, arbitrary: fc.constant([0, 0] as const) },
        { weight: 1, arbitrary: fc.tuple(somewhere(-0.02, 0.02), somewhere(-0.02, 0.02)) },
      ),
      push: fc.option(fc.tuple(lattice(-500, 500, 50), lattice(-500, 500, 50), lattice(-2000, 2000, 50)), {
        nil: null,
      }),
    })
    .map((random): Plan => complete(documentOf(length, width, random))),
);

type Generated<Of> = Of extends fc.Arbitrary<infer Value> ? Value : never;

function documentOf(
  length: number,
  width: number,
  random: {
    readonly stiffness: Generated<ReturnType<typeof rigidOrElastic>>;
    readonly masses: readonly Generated<ReturnType<typeof massAt>>[];
    readonly stands: readonly Generated<ReturnType<typeof standAt>>[];
    /** Stands spread over the length, rather than where chance put them. */
    readonly spread: boolean;
    readonly joint: number | null;
    readonly step: { readonly at: number; readonly z: number } | null;
    readonly keepOff: readonly [number, number] | null;
    readonly slope: readonly [number, number];
    readonly push: readonly number[] | null;
  },
): PlanDocument {
  const { masses, stands, step, keepOff, push } = random;
  const half = width / 2;
  const count = stands.length;
  const document = {
    format: "trestleboard-plan",
    version: 1,
    title: "random",
    piece: {
      name: "random",
      pose: { x: 3, y: 4, heading: 30 },
      outline: [
        [0, -half],
        [length, -half],
        [length, half],
        [0, half],
      ],
      depth: 0.6,
      stiffness: random.stiffness,
      underside: step === null || step.at <= 0 ? [] : [{ from: 0, to: step.at, z: [0, step.z] }],
      masses: masses.map((mass, index) => ({ ...mass, id: `m${index}`, name: `mass ${index}`, z: 0.3 })),
      noRestZones:
        keepOff === null
          ? []
          : [
              {
                name: "pad",
                polygon: [
                  [keepOff[0] - keepOff[1], -half],
                  [keepOff[0] + keepOff[1], -half],
                  [keepOff[0], half / 2],
                ],
              },
            ],
    },
    standTypes: stands.map(({ topLength, stiffness }, index) => ({
      id: `type ${index}`,
      name: "random",
      legs: "vertical",
      height: { min: 0.5, max: 1, increment: 0 },
      top: { length: topLength, width: 0.2, material: "steel" },
      legSpacing: topLength,
      splay: { along: 0, across: 0 },
      foot: { length: 0.1, width: 0.1 },
      stiffness,
      selfMass: 100,
    })),
    stands: stands.map((_, index) => ({ id: `S${index}`, type: `type ${index}`, condition: "in-service" })),
    layouts: [
      {
        id: "A",
        name: "A",
        placements: stands.map(({ s, t, angle, error }, index) => ({
          stand: `S${index}`,
          s: random.spread && count > 1 ? (index * length) / (count - 1) : s,
          t,
          angle,
          height: 0.8 + error,
        })),
      },
    ],
    steps: [
      {
        id: "only",
        name: "only",
        layout: "A",
        parts: random.joint === null ? null : [[0, random.joint] as const, [random.joint, length] as const],
        loads: push === null ? [] : [{ name: "push", s: length / 2, t: 0, z: 1, force: push }],
      },
    ],
    bay: {
      floor: { slope: random.slope },
      outline: [
        [-50, -50],
        [50, -50],
        [50, 50],
        [-50, 50],
      ],
    },
  };
  return document as unknown as PlanDocument;
}
