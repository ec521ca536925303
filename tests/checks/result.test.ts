/** The result file: its keys in order, its nulls, and numbers that are finite whatever the plan. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { computed, type Json, lineOf, refusalOf, reportOf, resultOf } from "../../src/checks";
import { complete, type Plan } from "../../src/plan";
import type { ResultJson } from "../cases/agreement/types";
import { arbitraryPlan } from "../helpers/plans";
import { type Draft, planWith, thirdStand } from "./base";

const resultFor = (plan: Plan) => JSON.parse(lineOf(resultOf(plan, reportOf(plan), "p.json"))) as ResultJson;
const keysOf = (json: unknown): readonly string[] => Object.keys(json as object);

describe("the result file", () => {
  it("has the keys of the format, in its order", () => {
    const result = resultFor(
      planWith((draft) => {
        draft.bay!.walkways = [{ name: "aisle", from: [1, 8], to: [17, 8] }];
      }),
    );
    expect(keysOf(result)).toEqual("format version file title verdict notChecked steps floor findings".split(" "));
    const [step] = result.steps;
    expect(keysOf(step)).toEqual(
      "id layout verdict weight cg stable estimated residual stands parts goodUpTo".split(" "),
    );
    const [stand] = step!.stands;
    expect(keysOf(stand)).toEqual(
      "stand s t reaction mostAt leastAt centre legFrames legFramesMost contact settlement bearingPressure utilisation feet".split(
        " ",
      ),
    );
    expect(keysOf(stand!.reaction)).toEqual("level least most staticsLeast staticsMost certified".split(" "));
    expect(keysOf(stand!.mostAt)).toEqual("heights tilts bows masses centres loads stiffness".split(" "));
    const [part] = step!.parts;
    expect(keysOf(part)).toEqual(
      "from to stable weight resultant moment shear torque deflection droop twist tipping".split(" "),
    );
    expect(keysOf(part!.tipping)).toEqual(["edges", "addedLoad"]);
    expect(keysOf(part!.tipping.edges[0])).toEqual(["from", "to", "distance", "reserve", "margin"]);
    const [layout] = result.floor;
    expect(keysOf(layout)).toEqual(["layout", "tripZones", "walkways"]);
    expect(keysOf(layout!.walkways[0])).toEqual("name clearWidth withoutLegs required narrowestAt".split(" "));
    expect(keysOf(result.findings[0])).toEqual(
      "code verdict step layout stand at message value limit unit basis".split(" "),
    );
  });

  it("gives goodUpTo its keys when asked for", () => {
    const plan = planWith((draft) => {
      draft.bay = null;
    });
    const result = JSON.parse(lineOf(resultOf(plan, reportOf(plan, computed), "p.json"))) as {
      steps: { goodUpTo: { addedLoad: unknown[] } }[];
    };
    const { goodUpTo } = result.steps[0]!;
    expect(keysOf(goodUpTo)).toEqual("weight level along across push addedLoad without turned".split(" "));
    expect(goodUpTo.addedLoad).toHaveLength(4);
  });

  it("is one line", () => {
    const plan = planWith((draft) => {
      draft.title = "two\nlines\u2028";
    });
    expect(lineOf(resultOf(plan, reportOf(plan), "p.json"))).not.toContain("\n");
  });

  it("has an empty floor without a bay", () => {
    expect(
      resultFor(
        planWith((draft) => {
          draft.bay = null;
        }),
      ).floor,
    ).toEqual([]);
  });

  it("an unstable step has the nulls of the format", () => {
    const { steps, verdict } = resultFor(
      planWith((draft) => {
        draft.layouts[0]!.placements[1]!.s = 4.9;
      }),
    );
    const [step] = steps;
    expect([verdict, step!.verdict, step!.stable, step!.residual]).toEqual(["fails", "fails", false, null]);
    for (const stand of step!.stands) {
      const { reaction, mostAt, leastAt, centre, legFrames, legFramesMost } = stand;
      const { bearingPressure, utilisation, settlement, feet, contact } = stand;
      const nulls = [reaction, mostAt, leastAt, centre, legFrames, legFramesMost, bearingPressure, utilisation];
      expect([...nulls, settlement]).toEqual(Array(9).fill(null));
      expect(feet.map(({ force }) => force)).toEqual([null, null, null, null]);
      expect(feet.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
      expect(contact).toEqual([[-0.5, 0.5]]);
    }
    const [part] = step!.parts;
    const { moment, shear, torque, deflection, droop, twist, tipping } = part!;
    expect([moment, shear, torque, deflection, droop, twist, tipping.addedLoad]).toEqual(Array(7).fill(null));
    // The load centre at 5 m is 0.1 m past the line at 4.9 m.
    expect(Math.min(...tipping.edges.map(({ distance }) => distance!))).toBeCloseTo(-0.1, 9);
    for (const { reserve, margin } of tipping.edges) expect([reserve, margin]).toEqual([null, null]);
  });

  it("a stand without contact has zeros and empty witnesses", () => {
    const { steps } = resultFor(planWith((draft) => thirdStand(draft, { t: 5 })));
    const stand = steps[0]!.stands[2]!;
    expect(stand.reaction).toEqual({
      level: 0,
      least: 0,
      most: 0,
      staticsLeast: 0,
      staticsMost: 0,
      certified: { least: 0, most: 0 },
    });
    const empty = { heights: {}, tilts: {}, bows: {}, masses: {}, centres: {}, loads: {}, stiffness: 1 };
    expect([stand.mostAt, stand.leastAt]).toEqual([empty, empty]);
    expect([stand.contact, stand.centre, stand.legFrames, stand.legFramesMost]).toEqual([[], null, [0, 0], [0, 0]]);
    expect([stand.settlement, stand.bearingPressure, stand.utilisation]).toEqual([0, 0, 0]);
    expect(stand.feet.map(({ force }) => force)).toEqual([0, 0, 0, 0]);
  });

  it("nothing that presses down", () => {
    const lifted = (draft: Draft) => {
      draft.piece.masses = [];
    };
    const [step] = resultFor(planWith(lifted)).steps;
    expect([step!.weight, step!.cg, step!.stable]).toEqual([0, null, false]);
    const { resultant, tipping } = step!.parts[0]!;
    expect([resultant.force, resultant.s, resultant.t]).toEqual([0, null, null]);
    for (const { distance } of tipping.edges) expect(distance).toBeNull();
  });

  it("a refusal has its five keys", () => {
    expect(refusalOf("f.json", { path: "piece.masses[2].mass", message: "No." })).toEqual({
      format: "trestleboard-refusal",
      version: 1,
      file: "f.json",
      path: "piece.masses[2].mass",
      message: "No.",
    });
  });
});

/** Every number of a result, with where it is. */
function* numbersOf(json: Json, path = ""): Generator<readonly [string, number]> {
  if (typeof json === "number") yield [path, json];
  else if (typeof json === "object" && json !== null)
    for (const [key, value] of Object.entries(json)) yield* numbersOf(value as Json, `${path}.${key}`);
}

describe("whatever the plan", () => {
  it("numbers are finite, verdicts are of the four, and the worst is told", () => {
    fc.assert(
      fc.property(arbitraryPlan(), (document) => {
        const plan = complete(document);
        const report = reportOf(plan);
        const json = resultOf(plan, report, "p.json");
        for (const [path, value] of numbersOf(json)) expect(Number.isFinite(value), path).toBe(true);
        const result = JSON.parse(lineOf(json)) as ResultJson;
        const order = ["fails", "unknown", "close", "holds"];
        const worst = Math.min(3, ...result.findings.map(({ verdict }) => order.indexOf(verdict)));
        expect(worst).toBeGreaterThanOrEqual(0);
        expect(result.verdict).toBe(order[worst]);
        for (const step of result.steps) {
          expect(step.stable || step.verdict === "fails").toBe(true);
          for (const { reaction } of step.stands) expect(reaction === null).toBe(!step.stable);
        }
      }),
      { numRuns: 40, seed: 20261125 },
    );
  });

  it.each([1e-6, 1e6, 1e12])("weights × %d", (scale) => {
    const plan = planWith((draft) => {
      for (const mass of draft.piece.masses) if (mass.kind === "line") mass.massPerLength = [200 * scale, 200 * scale];
    });
    for (const [path, value] of numbersOf(resultOf(plan, reportOf(plan), "p.json")))
      expect(Number.isFinite(value), path).toBe(true);
  });

  it("a weight beyond all numbers is not taken to hold", () => {
    const plan = planWith((draft) => {
      for (const mass of draft.piece.masses) if (mass.kind === "line") mass.massPerLength = [1e308, 1e308];
    });
    const result = resultFor(plan);
    expect(["fails", "unknown"]).toContain(result.verdict);
  });
});
