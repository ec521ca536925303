/** Feet, trip zones and walkways of the reference cases, to the accuracy that their README states. */

import { describe, expect, it } from "vitest";
import { feetForces, floorOf } from "../../src/floor";
import { clearanceAt, pieceFrame, polygonToOuter } from "../../src/geometry";
import { typeOf } from "../../src/plan";
import { referenceCases } from "../helpers/reference";

describe.each(referenceCases.filter(({ plan }) => plan.bay !== null))("$name", ({ plan, expected }) => {
  const reports = new Map(plan.layouts.map((layout) => [layout.id as string, floorOf(plan, layout)]));

  it("trip zones", () => {
    for (const [layout, { tripZones }] of Object.entries<{
      tripZones: Record<string, { area: number; reach: number }>;
    }>(expected.floor)) {
      const { stands } = reports.get(layout)!;
      expect(stands.map(({ stand }) => stand).sort()).toEqual(Object.keys(tripZones).sort());
      for (const { stand, tripZone } of stands) {
        const right = tripZones[stand]!;
        expect(Math.abs(tripZone.area - right.area), stand).toBeLessThanOrEqual(0.005 * right.area + 1e-4);
        expect(Math.abs(tripZone.reach - right.reach), stand).toBeLessThanOrEqual(0.002);
      }
    }
  });

  it("walkways", () => {
    type Expected = { clearWidth: number; withoutLegs: number; required: number };
    for (const [layout, { walkways }] of Object.entries<{ walkways: Record<string, Expected> }>(expected.floor)) {
      const report = reports.get(layout)!;
      expect(report.walkways.map(({ name }) => name).sort()).toEqual(Object.keys(walkways).sort());
      for (const walkway of report.walkways) {
        const right = walkways[walkway.name]!;
        expect(Math.abs(walkway.clearWidth - right.clearWidth)).toBeLessThanOrEqual(0.0022);
        expect(Math.abs(walkway.withoutLegs - right.withoutLegs)).toBeLessThanOrEqual(0.0022);
        expect(walkway.required).toBe(right.required);
        expect(walkway.narrowestAt === null).toBe(right.clearWidth === 0);
        if (walkway.narrowestAt === null) continue;
        // Bay, obstacles and piece alone leave at least that much room there.
        const solid = [
          ...plan.bay!.obstacles.map(({ polygon }) => polygon),
          polygonToOuter(pieceFrame(plan.piece.pose), plan.piece.outline),
        ];
        const around = clearanceAt(
          [
            { ring: plan.bay!.outline, solid: "outside", radius: 0 },
            ...solid.map((ring) => ({ ring, solid: "inside" as const, radius: 0 })),
          ],
          walkway.narrowestAt,
        );
        expect(2 * around).toBeGreaterThanOrEqual(walkway.clearWidth - 1e-9);
      }
    }
  });

  it("feet: places and, from the reference's own reactions, forces", () => {
    for (const step of expected.steps) {
      const { stands } = reports.get(step.layout)!;
      const { placements } = plan.layouts.find(({ id }) => id === step.layout)!;
      for (const right of step.stands) {
        const index = placements.findIndex(({ stand }) => stand === right.stand);
        const placement = placements[index]!;
        const { feet } = stands[index]!.footprint;
        for (const [k, foot] of right.feet.entries()) {
          expect(Math.abs(foot.x - feet[k]![0])).toBeLessThanOrEqual(1e-6);
          expect(Math.abs(foot.y - feet[k]![1])).toBeLessThanOrEqual(1e-6);
        }
        if (right.centre === null) continue;
        const angle = (placement.angle * Math.PI) / 180;
        const along =
          -Math.sin(angle) * (right.centre.s - placement.s) + Math.cos(angle) * (right.centre.t - placement.t);
        const forces = feetForces(typeOf(plan, placement.stand), placement.height, right.reaction.level, along);
        for (const [k, foot] of right.feet.entries()) {
          expect(Math.abs(foot.force - forces[k]!)).toBeLessThanOrEqual(3e-5 * right.W);
        }
      }
    }
  });
});
