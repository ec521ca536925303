import { describe, expect, it } from "vitest";
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
    // A box of two flanges and two webs: I = b·h³/12 − (b − 2t_w)·(h − 2t_f)³/12, and I_y likewise.
    const { depth: h, flangeWidth: b, flangeThickness: tf, webThickness: tw } = section as Required<typeof section>;
    const inertia = (b * h ** 3 - (b - 2 * tw) * (h - 2 * tf) ** 3) / 12;
    const weak = (h * b ** 3 - (h - 2 * tf) * (b - 2 * tw) ** 3) / 12;
    const area = b * h - (b - 2 * tw) * (h - 2 * tf);
    expect((section.E! * inertia) / 1.2e8).toBeCloseTo(1, 2);
    expect(inertia / (h / 2) / section.sectionModulus!).toBeCloseTo(1, 2);
    expect(Math.sqrt(weak / area) / section.radiusOfGyrationY!).toBeCloseTo(1, 2);
    expect((area * 7850) / 330).toBeCloseTo(1, 2);
    // Bredt: J = 4A²/∮ds/t along the middle of the walls.
    const [middleB, middleH] = [b - tw, h - tf];
    const bredt = (4 * (middleB * middleH) ** 2) / (2 * (middleB / tf + middleH / tw));
    // G = E/(2(1 + ν)), ν = 0.3
    const G = section.E! / 2.6;
    const stiffness = demoBeam.piece.stiffness;
    if (stiffness === "rigid") throw new Error("expected a beam");
    expect((G * bredt) / stiffness[0]!.GJ!).toBeCloseTo(1, 2);
  });
});
