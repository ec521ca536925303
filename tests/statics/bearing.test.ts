import { describe, expect, it } from "vitest";
import type { Placement, Plan, StandType } from "../../src/plan";
import { complete } from "../../src/plan";
import { assembleStep } from "../../src/statics";
import { planOf } from "../helpers/beam";

/** A plate 6 m × 2 m on one stand with a top of 1.6 m; what is changed of the piece, the placement, the parts. */
function intervals(change: {
  readonly piece?: Partial<Plan["piece"]>;
  readonly placement?: Partial<Placement>;
  readonly parts?: readonly (readonly [number, number])[];
}) {
  const plan = complete(
    planOf({ length: 6, width: 2, EI: 1e8, lines: [{ w: 1000 }], supports: [{ s: 3, k: 1e8, top: 1.6 }] }),
  );
  const layout = plan.layouts[0]!;
  const changed: Plan = {
    ...plan,
    piece: { ...plan.piece, ...change.piece },
    layouts: [{ ...layout, placements: [{ ...layout.placements[0]!, ...change.placement }] }],
    steps: [{ ...plan.steps[0]!, parts: change.parts ?? null }],
  };
  const model = assembleStep(changed, changed.steps[0]!);
  const contacts = model.parts.map((part) => part.contacts);
  return {
    stand: model.stands[0]!,
    spans: model.stands[0]!.intervals.map(({ from, to }) => [from + 0, to + 0]),
    contacts,
  };
}

const rectangle = (from: number, to: number, low: number, high: number) =>
  [
    [from, low],
    [to, low],
    [to, high],
    [from, high],
  ] as const;

describe("where a top bears", () => {
  it("is its length, cut to the outline", () => {
    expect(intervals({}).spans).toEqual([[-0.8, 0.8]]);
    expect(intervals({ placement: { t: 0.7 } }).spans[0]![1]).toBeCloseTo(0.3, 14);
    expect(intervals({ placement: { t: 1.8 } }).spans).toEqual([]);
    expect(intervals({ placement: { s: 6 } }).spans).toEqual([[-0.8, 0.8]]);
    expect(intervals({ placement: { s: 6.01 } }).spans).toEqual([]);
  });

  it("is cut by rest and no-rest zones, all closed", () => {
    const restZones = [rectangle(2, 4, -0.5, 0), rectangle(2, 4, 0, 0.25), rectangle(2, 4, 0.5, 1)];
    expect(intervals({ piece: { restZones } }).spans).toEqual([
      [-0.5, 0.25],
      [0.5, 0.8],
    ]);
    const pad = { name: "pad", polygon: rectangle(3, 4, -0.2, 0.1) };
    // The top lies along the pad's edge, and so on it.
    expect(intervals({ piece: { noRestZones: [pad] } }).spans).toEqual([
      [-0.8, -0.2],
      [0.1, 0.8],
    ]);
    // A pad that the top only touches with a corner takes nothing.
    const wedge = {
      name: "wedge",
      polygon: [
        [3, 0.3],
        [4, 0],
        [4, 0.6],
      ] as const,
    };
    expect(intervals({ piece: { noRestZones: [wedge] } }).spans).toEqual([[-0.8, 0.8]]);
  });

  it("leaves out what is under a nanometre", () => {
    const restZones = [rectangle(2, 4, 0, 5e-10), rectangle(2, 4, 0.5, 1)];
    expect(intervals({ piece: { restZones } }).spans).toEqual([[0.5, 0.8]]);
  });

  it("is split where the underside steps, each part with the surface of its own side", () => {
    const underside = [{ from: 0, to: 3, z: [0.02, 0.02] as const }];
    const { spans, contacts } = intervals({ piece: { underside }, placement: { angle: 90 } });
    expect(spans).toEqual([
      [-0.8, 0],
      [0, 0.8],
    ]);
    // angle 90: along (−1, 0), so c < 0 lies at greater s.
    const heights = contacts[0]!.map(({ s, height }) => [s < 3 || s === 3, Number((0.001 - height).toFixed(12))]);
    expect(heights.filter(([, z]) => z === 0)).toHaveLength(5);
    expect(heights.filter(([, z]) => z === 0.02)).toHaveLength(5);
    expect(
      contacts[0]!
        .filter(({ s }) => s === 3)
        .map(({ height }) => Number((0.001 - height).toFixed(12)))
        .sort(),
    ).toEqual([0, 0.02]);
  });

  it("takes the lower surface where it lies along a step", () => {
    const lower = (z: readonly [number, number]) =>
      intervals({ piece: { underside: [{ from: 0, to: 3, z }] } }).contacts[0]!.map(({ height }) => 0.001 - height);
    for (const height of lower([0.02, 0.02])) expect(height).toBeCloseTo(0, 12);
    for (const height of lower([-0.02, -0.02])) expect(height).toBeCloseTo(-0.02, 12);
  });

  it("does not split where only the slope of the underside changes", () => {
    const underside = [
      { from: 0, to: 3, z: [0, 0.03] as const },
      { from: 3, to: 6, z: [0.03, 0.01] as const },
    ];
    expect(intervals({ piece: { underside }, placement: { angle: 90 } }).spans).toEqual([[-0.8, 0.8]]);
  });

  it("is split where one part ends and the next begins; along their common end it bears both", () => {
    const parts = [
      [0, 3],
      [3, 6],
    ] as const;
    const across = intervals({ parts });
    expect(across.stand.intervals.map(({ from, to, part }) => [from, to, part])).toEqual([
      [-0.8, 0.8, 0],
      [-0.8, 0.8, 1],
    ]);
    const total = across.contacts.flat().reduce((sum, { stiffness }) => sum + stiffness, 0);
    expect(total).toBeCloseTo(1e8, 3);
    const oblique = intervals({ parts, placement: { angle: 30 } });
    expect(oblique.stand.intervals.map(({ from, to, part }) => [from + 0, to + 0, part])).toEqual([
      [-0.8, 0, 1],
      [0, 0.8, 0],
    ]);
    const gap = intervals({
      parts: [
        [0, 2.9],
        [3.1, 6],
      ],
    });
    expect(gap.spans).toEqual([]);
  });

  it("at the end of a part has one side only", () => {
    const underside = [{ from: 0, to: 3, z: [0.02, 0.02] as const }];
    const parts = [
      [0, 3],
      [3, 6],
    ] as const;
    const { contacts } = intervals({ piece: { underside }, parts });
    for (const { height } of contacts[0]!) expect(0.001 - height).toBeCloseTo(0.02, 12);
    for (const { height } of contacts[1]!) expect(0.001 - height).toBeCloseTo(0, 12);
  });

  it("carries its stiffness on five Gauss–Lobatto points with the strip's own second moment", () => {
    const { contacts } = intervals({});
    const points = contacts[0]!;
    expect(points.map(({ c }) => c)).toEqual([-0.8, -0.8 * Math.sqrt(3 / 7), 0, 0.8 * Math.sqrt(3 / 7), 0.8]);
    const sum = (power: number) => points.reduce((total, { c, stiffness }) => total + stiffness * c ** power, 0);
    expect(sum(0)).toBeCloseTo(1e8, 3);
    expect(sum(1)).toBeCloseTo(0, 3);
    // k·L²/12, and the fourth moment k·L⁴/80 besides
    expect(sum(2)).toBeCloseTo((1e8 * 1.6 ** 2) / 12, 3);
    expect(sum(4)).toBeCloseTo((1e8 * 1.6 ** 4) / 80, 3);
  });
});

it.each([
  [{ stiffness: 3e7, ratedLoad: 5e4 }, "steel", 3e7, false],
  [{ stiffness: null, ratedLoad: 5e4 }, "steel", 5e7, true],
  [{ stiffness: null, ratedLoad: 5e4 }, "rubber", 1e7, true],
  [{ stiffness: null, ratedLoad: null }, "steel", 1e8, true],
] as const)("stiffness of %o with a top of %s is %d", (known, material, stiffness, estimated) => {
  const plan = planOf({ length: 6, EI: 1e8, lines: [{ w: 1000 }], supports: [{ s: 3, k: 1e8 }] });
  const standTypes = plan.standTypes.map((type): StandType => ({ ...type, ...known, top: { ...type.top, material } }));
  const model = assembleStep({ ...plan, standTypes }, plan.steps[0]!);
  expect(model.stands[0]).toMatchObject({ stiffness, estimated });
});
