import { describe, expect, it } from "vitest";
import { reportOf } from "../../src/checks";
import { demoBeam, demoDie } from "../../src/library";
import { complete, type PlanDocument, pieceLength, read, write } from "../../src/plan";
import { onSprings } from "../helpers/beamOnSprings";

const poundForce = 4.4482216152605;

function withoutShim(plan: PlanDocument): PlanDocument {
  const layout = plan.layouts[0]!;
  return { ...plan, layouts: [{ ...layout, placements: layout.placements.map((one) => ({ ...one, shim: 0 })) }] };
}

describe.each([
  ["the beam", demoBeam],
  ["the die", demoDie],
])("%s", (_, demo) => {
  it("is a plan that reads back the same", () => {
    expect(read(write(demo))).toEqual({ ok: true, document: demo });
  });
});

/** Every finding that does not hold, as "verdict code stand". */
function said(plan: PlanDocument): readonly string[] {
  const { findings } = reportOf(complete(plan));
  const not = findings.filter(({ verdict }) => verdict !== "holds");
  return [...new Set(not.map(({ verdict, code, stand }) => `${verdict} ${code} ${stand}`))].sort();
}

describe("the beam of the first thirty seconds", () => {
  const inPounds = (plan: PlanDocument) => onSprings(plan).map((newtons) => Math.round(newtons / poundForce));

  it("weighs 12,700 lb", () => {
    const plan = complete(demoBeam);
    const whole = plan.piece.masses.reduce(
      (sum, mass) => sum + (mass.kind === "point" ? mass.mass : mass.massPerLength[0] * pieceLength(plan.piece)),
      0,
    );
    expect(Math.round(whole / 0.45359237 / 100) * 100).toBe(12700);
  });

  it("lies wrong as it is shimmed: the third horse carries 9,422 lb, the second and the fourth nothing", () => {
    expect(inPounds(demoBeam)).toEqual([3277, 0, 9422, 0]);
  });

  it("and right with the shim out: 3,345, 3,005, 3,005 and 3,345 lb", () => {
    expect(inPounds(withoutShim(demoBeam))).toEqual([3345, 3005, 3005, 3345]);
  });

  it("has the section that its stiffness says", () => {
    const section = demoBeam.piece.section;
    if (section === null || section === undefined || "length" in section) throw new Error("expected one section");
    // Two flanges and a web: I = b·h³/12 − (b − t_w)·(h − 2t_f)³/12, I_y = 2·t_f·b³/12 + (h − 2t_f)·t_w³/12.
    const { depth: h, flangeWidth: b, flangeThickness: tf, webThickness: tw } = section as Required<typeof section>;
    const inner = h - 2 * tf;
    const inertia = (b * h ** 3 - (b - tw) * inner ** 3) / 12;
    const weak = (2 * tf * b ** 3 + inner * tw ** 3) / 12;
    const area = 2 * b * tf + inner * tw;
    expect((section.E! * inertia) / 1.2e8).toBeCloseTo(1, 2);
    expect(inertia / (h / 2) / section.sectionModulus!).toBeCloseTo(1, 2);
    expect(Math.sqrt(weak / area) / section.radiusOfGyrationY!).toBeCloseTo(1, 2);
    expect((h * tw) / section.shearArea!).toBeCloseTo(1, 2);
    expect(Math.abs((area * 7850) / 330 - 1)).toBeLessThan(0.01);
    // J = Σ b·t³/3, G = E/(2(1 + ν)) with ν = 0.3.
    const torsion = (2 * b * tf ** 3 + inner * tw ** 3) / 3;
    const stiffness = demoBeam.piece.stiffness;
    if (stiffness === "rigid") throw new Error("expected a beam");
    expect(((section.E! / 2.6) * torsion) / stiffness[0]!.GJ!).toBeCloseTo(1, 2);
  });

  it("fails as it is shimmed, first of all by the third horse", () => {
    const report = reportOf(complete(demoBeam));
    expect(report.verdict).toBe("fails");
    expect(report.findings[0]).toMatchObject({ code: "stand-over-rating", stand: "H-03", verdict: "fails" });
    expect(report.findings[0]?.message).toContain("as planned 9,422 lb");
    expect(report.findings[0]?.message).toContain("shim");
    expect(said(demoBeam)).toEqual([
      "fails rating-centre H-03",
      "fails stand-lifts-off H-02",
      "fails stand-lifts-off H-04",
      "fails stand-over-rating H-03",
    ]);
  });

  it("is close with the shim out, as two horses may go light", () => {
    expect(reportOf(complete(withoutShim(demoBeam))).verdict).toBe("close");
    expect(said(withoutShim(demoBeam))).toEqual(["close stand-lifts-off H-02", "close stand-lifts-off H-03"]);
  });

  it.each([demoBeam, withoutShim(demoBeam)])("carries in the engine what it carries by the force method", (plan) => {
    const level = reportOf(complete(plan)).steps[0]!.level;
    if (level.status !== "known") throw new Error("expected the level reactions");
    for (const [index, reaction] of onSprings(plan).entries())
      expect(Math.abs(level.value.stands[index]!.reaction! - reaction)).toBeLessThan(0.01);
  });
});

describe("the die", () => {
  it("holds, closed and open", () => {
    expect(said(demoDie)).toEqual([]);
    expect(reportOf(complete(demoDie)).verdict).toBe("holds");
  });

  it("loads its stands as statics alone says", () => {
    // Rigid on three supports: the far one carries W·(s_R − s₁)/(s₃ − s₁), wherever the others are across.
    const { level } = reportOf(complete(demoDie)).steps[0]!;
    if (level.status !== "known") throw new Error("expected the level reactions");
    const weight = (11_200 + 8_800) * 9.80665;
    const middle = (11_200 * 1.48 + 8_800 * 1.55) / 20_000;
    const far = (weight * (middle - 0.65)) / (2.65 - 0.65);
    expect(Math.abs(level.value.stands[2]!.reaction! - far)).toBeLessThan(1e-6 * weight);
    expect(Math.abs(level.value.stands.reduce((sum, { reaction }) => sum + reaction!, 0) - weight)).toBeLessThan(1e-6);
  });
});
