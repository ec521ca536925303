/** Bounds against the independent answers of the reference cases, as their README says when an answer agrees. */

import { describe, expect, test } from "vitest";
import { assembleStep, boundsOf, certifiedBoundsOf, levelAt, perturb } from "../../../src/statics";
import { referenceCases } from "../../helpers/reference";
import { witnessOutside } from "./box";

/** What the test reads of a stand in the answers. */
interface WantedStand {
  readonly W: number;
  readonly reaction: { least: number; most: number; staticsLeast: number; staticsMost: number };
  readonly proved: { least: number; most: number; legFramesMost: [number, number] } | null;
  readonly legFramesMost: [number, number];
  readonly contact: readonly unknown[];
}
interface WantedStep {
  readonly stable: boolean;
  readonly boxTips: readonly { names: string[]; must: string[] }[] | null;
  readonly stands: readonly WantedStand[];
}

describe.each(referenceCases)("$name", ({ plan, expected }) => {
  test.each(plan.steps.map((step, index) => ({ step, wanted: expected.steps[index] as WantedStep })))(
    "step $step.id",
    ({ step, wanted }) => {
      const bounds = certifiedBoundsOf(plan, step);
      if (!wanted.stable) {
        expect(bounds.status).toBe("unstable");
        return;
      }
      if (wanted.boxTips !== null) {
        if (bounds.status !== "box tips") throw new Error(`expected a box that tips, not ${bounds.status}`);
        const idOf = (cause: (typeof bounds.edges)[0]["names"][0]) =>
          cause.kind === "load" ? step.loads[cause.load]!.name : plan.piece.masses[cause.mass]!.id;
        const named = bounds.edges.map(({ names, must }) => ({
          names: names.map(idOf).sort(),
          must: must.map(idOf).sort(),
        }));
        expect(named).toEqual(
          wanted.boxTips.map(({ names, must }) => ({ names: names.toSorted(), must: must.toSorted() })),
        );
        bounds.stands.forEach((stand, i) => {
          const { W, reaction } = wanted.stands[i]!;
          expect(Math.abs(stand.staticsLeast - reaction.staticsLeast) / W).toBeLessThan(1e-8);
          expect(Math.abs(stand.staticsMost - reaction.staticsMost) / W).toBeLessThan(1e-8);
        });
        return;
      }
      if (bounds.status !== "bounded") throw new Error(`expected bounds, not ${bounds.status}`);
      const model = assembleStep(plan, step);
      const { masses } = plan.piece;
      const first = boundsOf(plan, step);
      const nominal = levelAt(model, masses);
      bounds.stands.forEach((stand, i) => {
        const { W, reaction, proved, legFramesMost, contact } = wanted.stands[i]!;
        const { least, most, staticsLeast, staticsMost } = reaction;
        const level = nominal.stands[i]!.reaction!;
        const off = (a: number, b: number) => Math.abs(a - b) / (W || 1);
        expect(off(stand.staticsLeast, staticsLeast)).toBeLessThan(1e-8);
        expect(off(stand.staticsMost, staticsMost)).toBeLessThan(1e-8);
        const ascending = [stand.staticsLeast, stand.least, level, stand.most, stand.staticsMost];
        ascending.slice(1).forEach((value, k) => {
          expect(value).toBeGreaterThanOrEqual(ascending[k]! - 1e-6 * W);
        });
        // As far out as the reference's, and no farther than it proved
        expect(stand.least).toBeLessThanOrEqual(least + 5e-4 * W);
        expect(stand.most).toBeGreaterThanOrEqual(most - 5e-4 * W);
        if (proved !== null) {
          expect(stand.least).toBeGreaterThanOrEqual(proved.least - 1e-6 * W);
          expect(stand.most).toBeLessThanOrEqual(proved.most + 1e-6 * W);
          stand.legFramesMost.forEach((share, frame) => {
            expect(share).toBeGreaterThanOrEqual(legFramesMost[frame]! - 5e-4 * W);
            expect(share).toBeLessThanOrEqual(proved.legFramesMost[frame]! + 1e-6 * W);
          });
        }
        if (stand.certified === null) throw new Error(`${stand.stand} is not certified`);
        expect(stand.certified.least).toBeLessThanOrEqual(least + 2e-5 * W);
        expect(stand.certified.most).toBeGreaterThanOrEqual(most - 2e-5 * W);
        expect(stand.gap).toBeLessThanOrEqual(1e-3 * W);
        // The witness, solved by the level statics, gives the value back
        if (contact.length === 0) return;
        for (const [value, at] of [
          [stand.least, stand.leastAt],
          [stand.most, stand.mostAt],
        ] as const) {
          expect(witnessOutside(plan, step, at)).toEqual([]);
          const solved = levelAt(perturb(model, plan, at), masses);
          expect(off(solved.stands[i]!.reaction!, value)).toBeLessThan(1e-6);
          const { force, momentS, momentT } = solved.residual!;
          expect(Math.max(force, momentS, momentT)).toBeLessThan(1e-9);
        }
        // Without the proof nearly as far
        if (first.status !== "bounded") throw new Error("expected bounds");
        expect(first.stands[i]!.most).toBeGreaterThanOrEqual(most - 1e-3 * W);
        expect(first.stands[i]!.least).toBeLessThanOrEqual(least + 1e-3 * W);
      });
    },
  );
});
