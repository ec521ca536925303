/** The strength checks' numbers and what they say of data that is not there. */

import { describe, expect, it } from "vitest";
import type { SectionSegment, SectionStrength, StandId } from "../../../src/plan";
import {
  bending,
  type Curves,
  greatestMoment,
  greatestShear,
  lateralBuckling,
  type PartLevel,
  type StepLevel,
  type StepModel,
  sag,
  sectionsAt,
  sectionsOf,
  shear,
  topPressure,
  type WebForce,
  webCrippling,
  webCripplingOver,
  webYielding,
  webYieldingOver,
} from "../../../src/statics";

const whole: Required<SectionStrength> = {
  depth: 0.5,
  flangeWidth: 0.2,
  flangeThickness: 0.016,
  webThickness: 0.01,
  fillet: 0.02,
  sectionModulus: 2e-3,
  shearArea: 5e-3,
  radiusOfGyrationY: 0.045,
  webs: 1,
  yield: 250e6,
  E: 200e9,
};
const segment = (from: number, to: number, changes: Partial<SectionStrength> = {}): SectionSegment => ({
  ...whole,
  ...changes,
  from,
  to,
});
const without = (key: keyof SectionStrength, from = 0, to = 10): SectionSegment => {
  const { [key]: _, ...rest } = segment(from, to);
  return rest as SectionSegment;
};

/** Simply supported at its ends with w along it and P in the middle, stations at quarter points. */
function simpleBeam(l: number, w: number, P: number): Curves {
  const R = (w * l + P) / 2;
  const stations = [0, l / 4, l / 2, l / 2, (3 * l) / 4, l];
  const moment = stations.map((s) => R * s - (w * s * s) / 2 - P * Math.max(0, s - l / 2));
  const shearForce = stations.map((s, i) => R - w * s - (i >= 3 ? P : 0));
  const zero = stations.map(() => 0);
  return { s: stations, moment, shear: shearForce, torque: zero, v: zero, theta: zero, deflection: zero };
}

const levelOf = (curves: Curves | null, rest: Partial<PartLevel> = {}): StepLevel =>
  ({
    parts: [{ from: 0, to: 10, stable: true, resultant: { force: 1000, s: 5, t: 0 }, curves, ...rest }],
    stands: [],
  }) as unknown as StepLevel;

describe("the greatest moment and shear of a stretch", () => {
  it("lies between stations where it does", () => {
    // w alone: wl²/8 in the middle, exact though only quarter points are given.
    const uneven = simpleBeam(8, 3, 0);
    const ends: Curves = {
      ...uneven,
      s: [0, 3, 8],
      moment: [0, 12 * 3 - 1.5 * 9, 0],
      shear: [12, 12 - 9, -12],
    };
    expect(greatestMoment(ends, 0, 8)).toMatchObject({ value: expect.closeTo(24, 12), s: expect.closeTo(4, 12) });
    expect(greatestShear(ends, 0, 8).value).toBeCloseTo(12, 12);
    expect(greatestMoment(ends, 0, 2).value).toBeCloseTo(12 * 2 - 1.5 * 4, 12);
    expect(greatestShear(ends, 1, 2).value).toBeCloseTo(12 - 3, 12);
  });

  it("is exact for a load that grows along the beam", () => {
    // q = q₀·s/l on simple supports: M_max = q₀·l²/(9√3) at l/√3 (AISC Manual Table 3-23 case 2).
    const [l, q] = [6, 4];
    const M = (s: number) => ((q * l) / 6) * s - (q * s ** 3) / (6 * l);
    const V = (s: number) => (q * l) / 6 - (q * s ** 2) / (2 * l);
    const s = [0, l];
    const curves = { ...simpleBeam(l, 0, 0), s, moment: s.map(M), shear: s.map(V) };
    const greatest = greatestMoment(curves, 0, l);
    expect(greatest.value).toBeCloseTo((q * l ** 2) / (9 * Math.sqrt(3)), 10);
    expect(greatest.s).toBeCloseTo(l / Math.sqrt(3), 10);
    expect(greatestShear(curves, 0, l).value).toBeCloseTo((q * l) / 3, 10);
    expect(greatestShear(curves, 2, 3).value).toBeCloseTo(Math.max(Math.abs(V(2)), Math.abs(V(3))), 10);
  });

  it("takes both sides of a jump", () => {
    const beam = simpleBeam(8, 0, 10);
    expect(greatestMoment(beam, 0, 8)).toEqual({ value: 20, s: 4 });
    expect(greatestShear({ ...beam, shear: [7, 7, 7, -3, -3, -3] }, 4, 8).value).toBeCloseTo(3, 12);
  });
});

describe("bending and shear", () => {
  const criteria = { allowableStressFactor: 0.6 };
  const beam = simpleBeam(10, 2000, 30_000);

  it("compare the greatest stress with what is allowed", () => {
    // M = 2000·100/8 + 30 000·10/4 = 100 kN·m; V = 25 kN
    expect(bending([segment(0, 10)], [levelOf(beam)], 1.25, criteria)).toEqual({
      status: "known",
      worst: { value: expect.closeTo((1.25 * 100_000) / 2e-3, 3), limit: 150e6, s: 5 },
    });
    expect(shear([segment(0, 10)], [levelOf(beam)], 1)).toMatchObject({
      status: "known",
      worst: { value: expect.closeTo(25_000 / 5e-3, 3), limit: 100e6 },
    });
  });

  it("take the section that is worst used, not the greatest moment", () => {
    const sections = [segment(0, 3, { sectionModulus: 5e-4 }), segment(3, 10)];
    // At s = 3: 25 000·3 − 1000·9 = 66 kN·m on 5e-4 m³ is worse than 100 kN·m on 2e-3.
    expect(bending(sections, [levelOf(beam)], 1, criteria)).toMatchObject({
      status: "known",
      worst: { value: expect.closeTo(66_000 / 5e-4, 2), s: 3 },
    });
  });

  it("take the worst of all levels", () => {
    const half = { ...beam, moment: beam.moment.map((m) => -2 * m), shear: beam.shear.map((v) => -2 * v) };
    const answer = bending([segment(0, 10)], [levelOf(beam), levelOf(half)], 1, criteria);
    expect(answer).toMatchObject({ status: "known", worst: { value: expect.closeTo(200_000 / 2e-3, 3) } });
  });

  it("are unknown where a section lacks a key, and keep what is known elsewhere", () => {
    expect(bending([without("sectionModulus")], [levelOf(beam)], 1, criteria)).toEqual({
      status: "unknown",
      missing: ["sectionModulus"],
      worst: null,
    });
    const mixed = bending([segment(0, 5), without("yield", 5, 10)], [levelOf(beam)], 1, criteria);
    expect(mixed).toMatchObject({ status: "unknown", missing: ["yield"], worst: { limit: 150e6 } });
    expect(shear([without("shearArea")], [levelOf(beam)], 1)).toMatchObject({ missing: ["shearArea"] });
  });

  it("are not checked where there is no section", () => {
    expect(bending([], [levelOf(beam)], 1, criteria)).toEqual({ status: "not-checked" });
    expect(shear([segment(0, 10)], [levelOf(null)], 1)).toEqual({ status: "not-checked" });
    // Where a stretch has none, only the others are looked at.
    expect(bending([segment(8, 10)], [levelOf(beam)], 1, criteria)).toMatchObject({
      status: "known",
      worst: { value: expect.closeTo((25_000 * 2 - 1000 * 4) / 2e-3, 3), s: 8 },
    });
  });
});

describe("the web over a stand", () => {
  const parts = [{ from: 0, to: 10 }];
  const stand = (s: number, rest: Partial<WebForce> = {}): WebForce => ({
    s,
    parts,
    topWidth: 0.2,
    force: 300_000,
    ...rest,
  });
  const limit = (s: number, rest: Partial<WebForce> = {}) => {
    const answer = webYieldingOver([segment(0, 10)], stand(s, rest));
    return answer.status === "known" ? answer.worst.limit : null;
  };
  const crippling = (s: number, rest: Partial<WebForce> = {}) => {
    const answer = webCripplingOver([segment(0, 10)], stand(s, rest));
    return answer.status === "known" ? answer.worst.limit : null;
  };

  it("takes the end form up to the depth for yielding, under half of it for crippling", () => {
    const [within, end] = [webYielding(whole, 0.2, false) / 1.5, webYielding(whole, 0.2, true) / 1.5];
    expect(limit(5)).toBeCloseTo(within, 6);
    expect(limit(0.5)).toBeCloseTo(end, 6);
    expect(limit(0.5 + 1e-9)).toBeCloseTo(within, 6);
    expect(limit(9.6)).toBeCloseTo(end, 6);
    const [far, near] = [webCrippling(whole, 0.2, false) / 2, webCrippling(whole, 0.2, true) / 2];
    expect(crippling(0.25)).toBeCloseTo(far, 6);
    expect(crippling(0.25 - 1e-9)).toBeCloseTo(near, 6);
    expect(crippling(9.9)).toBeCloseTo(near, 6);
  });

  it("is at an end where parts meet over it", () => {
    const joint = {
      parts: [
        { from: 0, to: 5 },
        { from: 5, to: 10 },
      ],
    };
    expect(limit(5, joint)).toBeCloseTo(webYielding(whole, 0.2, true) / 1.5, 6);
  });

  it("takes the weaker section at a border, and only the part's own at its end", () => {
    const sections = [segment(0, 5, { webThickness: 0.006 }), segment(5, 10)];
    const weak = { ...whole, webThickness: 0.006 };
    expect(webYieldingOver(sections, stand(5))).toMatchObject({
      worst: { limit: expect.closeTo(webYielding(weak, 0.2, false) / 1.5, 6) },
    });
    expect(webYieldingOver(sections, stand(5, { parts: [{ from: 5, to: 10 }] }))).toMatchObject({
      worst: { limit: expect.closeTo(webYielding(whole, 0.2, true) / 1.5, 6) },
    });
  });

  it("is unknown with two webs or a key missing, not checked off every section", () => {
    expect(webYieldingOver([segment(0, 10, { webs: 2 })], stand(5))).toEqual({
      status: "unknown",
      missing: ["webs"],
      worst: null,
    });
    expect(webYieldingOver([without("fillet")], stand(5))).toMatchObject({ missing: ["fillet"] });
    expect(webCripplingOver([without("fillet")], stand(5))).toMatchObject({ status: "known" });
    expect(webCripplingOver([without("E")], stand(5))).toMatchObject({ missing: ["E"] });
    expect(webCripplingOver([segment(0, 4)], stand(5))).toEqual({ status: "not-checked" });
    expect(webYieldingOver([without("webs")], stand(5))).toMatchObject({ status: "known" });
  });

  it("is continuous where the end form of crippling changes at l_b/d = 0.2, as J10-5a and J10-5b are", () => {
    const [below, above] = [webCrippling(whole, 0.1, true), webCrippling(whole, 0.1 + 1e-9, true)];
    expect(above / below).toBeCloseTo(1, 6);
  });
});

describe("lateral buckling", () => {
  const model = {
    parts: [{}],
    stands: [1, 4, 9].map((s, i) => ({ stand: `S${i}`, s, intervals: [{ from: -1, to: 1, part: 0 }] })),
  } as unknown as StepModel;
  const level = (reactions: number[]): StepLevel =>
    ({ ...levelOf(null), stands: reactions.map((reaction) => ({ reaction })) }) as unknown as StepLevel;
  // L_p = 1.76·0.045·√(200e9/250e6)
  const full = 1.76 * 0.045 * Math.sqrt(800);

  it("looks at the greatest distance between neighbours that bear", () => {
    expect(lateralBuckling([segment(0, 10)], model, [level([1, 1, 1])])).toEqual({
      status: "known",
      worst: { value: 5, limit: expect.closeTo(full, 12), s: 6.5 },
    });
    expect(lateralBuckling([segment(0, 10)], model, [level([1, 0, 1])])).toMatchObject({ worst: { value: 8 } });
    expect(lateralBuckling([segment(0, 10)], model, [level([1, 1, 1]), level([1, 1e-7, 1])])).toMatchObject({
      worst: { value: 8 },
    });
  });

  it("takes the section with the least length of those on the span", () => {
    const sections = [segment(0, 5), segment(5, 10, { radiusOfGyrationY: 0.02 })];
    expect(lateralBuckling(sections, model, [level([1, 1, 1])])).toMatchObject({
      worst: { value: 5, limit: expect.closeTo((full * 20) / 45, 12) },
    });
  });

  it("has nothing to look at on one stand, and is unknown without r_y", () => {
    expect(lateralBuckling([segment(0, 10)], model, [level([0, 1, 0])])).toEqual({ status: "not-checked" });
    expect(lateralBuckling([without("radiusOfGyrationY")], model, [level([1, 1, 1])])).toMatchObject({
      missing: ["radiusOfGyrationY"],
    });
  });
});

describe("sag and the pressure on the tops", () => {
  const deflection = (most: number, least: number) => ({
    deflection: { most: { value: most, s: 2 }, least: { value: least, s: 5 } },
  });

  it("takes the greatest deflection either way, of all levels", () => {
    expect(sag([levelOf(null, deflection(0.001, -0.004))], 1.25, 0.006)).toEqual({ value: 0.005, limit: 0.006, s: 5 });
    const raised = [levelOf(null, deflection(0.001, -0.004)), levelOf(null, deflection(0.005, 0))];
    expect(sag(raised, 1, 0.006)).toEqual({ value: 0.005, limit: 0.006, s: 2 });
    expect(sag([levelOf(null, { deflection: null })], 1, 0.006)).toBeNull();
  });

  it("reads the pressure of the stand asked for", () => {
    const id = "H-07" as StandId;
    const level = { stands: [{ stand: id, bearingPressure: 2e6 }] } as unknown as StepLevel;
    expect(topPressure(level, id, 1.25)).toBe(2.5e6);
    expect(topPressure({ ...level, stands: [] }, id, 1.25)).toBeNull();
  });
});

describe("where the sections are", () => {
  const outline = [
    [0, -1],
    [12, -1],
    [12, 1],
    [0, 1],
  ] as const;
  it("one object covers the whole length", () => {
    expect(sectionsOf({ section: { depth: 0.5 }, outline })).toEqual([{ depth: 0.5, from: 0, to: 12 }]);
    expect(sectionsOf({ section: null, outline })).toEqual([]);
    const list = [segment(0, 4), segment(6, 12)];
    expect(sectionsOf({ section: list, outline })).toBe(list);
  });
  it("two at a border, none on a stretch left out", () => {
    const list = [segment(0, 4), segment(4, 6), segment(8, 12)];
    expect(sectionsAt(list, 4)).toHaveLength(2);
    expect(sectionsAt(list, 7)).toHaveLength(0);
    expect(sectionsAt(list, 12)).toHaveLength(1);
  });
});
