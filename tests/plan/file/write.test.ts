import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { complete, type PlanDocument, read, write } from "../../../src/plan";
import { arbitraryPlan } from "../../helpers/plans";

const cases = new URL("../../cases/reference/", import.meta.url);
const names = readdirSync(cases).filter((name) => name.endsWith(".json") && !name.endsWith(".expected.json"));
const textOf = (name: string) => readFileSync(new URL(name, cases), "utf8");

function documentOf(text: string): PlanDocument {
  const answer = read(text);
  if (!answer.ok) throw new Error(`${answer.path}: ${answer.message}`);
  return answer.document;
}

/** All keys of every object, by the path of the object, in the order in which they stand. */
function keysIn(value: unknown, path = ""): string[] {
  if (typeof value !== "object" || value === null) return [];
  const keys = Array.isArray(value) ? [] : [`${path}: ${Object.keys(value).join(" ")}`];
  return [...keys, ...Object.entries(value).flatMap(([key, inner]) => keysIn(inner, `${path}.${key}`))];
}

describe("a written plan", () => {
  it.each(names)("reads back the same, and writing that changes nothing: %s", (name) => {
    const document = documentOf(textOf(name));
    expect(document).toEqual(JSON.parse(textOf(name)));
    const written = write(document);
    expect(documentOf(written)).toEqual(document);
    expect(write(documentOf(written))).toBe(written);
  });

  it("so does any plan", () => {
    const seen = { plans: 0, rigid: 0, parts: 0, bays: 0, readings: 0 };
    fc.assert(
      fc.property(arbitraryPlan(), (plan) => {
        seen.plans += 1;
        seen.rigid += Number(plan.piece.stiffness === "rigid");
        seen.parts += Number(plan.steps.some(({ parts }) => (parts?.length ?? 0) > 1));
        seen.bays += Number((plan.bay ?? null) !== null);
        seen.readings += Number(plan.steps.some(({ readings }) => (readings?.length ?? 0) > 0));
        const written = write(plan);
        const back = documentOf(written);
        expect(back).toEqual(plan);
        expect(write(back)).toBe(written);
        expect(write(complete(plan))).not.toContain("undefined");
        expect(documentOf(write(complete(plan)))).toEqual(complete(plan));
      }),
      { seed: 20261125, numRuns: 400 },
    );
    // The generator makes enough of everything.
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(0.1 * seen.plans);
  });

  it("has the keys in the order of the format, two spaces a level and a line break at the end", () => {
    const text = readFileSync(new URL("../versions/1.json", import.meta.url), "utf8");
    const canonical = write(documentOf(text));
    expect(canonical).toBe(`${JSON.stringify(JSON.parse(text), null, 2)}\n`);

    const turned = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(turned);
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, inner]) => [key, turned(inner)]),
      );
    };
    const backwards = documentOf(JSON.stringify(turned(JSON.parse(text))));
    expect(keysIn(backwards)).not.toEqual(keysIn(JSON.parse(text)));
    expect(write(backwards)).toBe(canonical);
  });

  it("has a key if it was read, at its default too, and else not", () => {
    const bare = documentOf(textOf("94-all-optional-left-out.json"));
    expect(write(bare)).not.toMatch(/"revision"|"notes"|"display"|"shim"|"restZones"|"criteria"/);
    const said = write(documentOf(JSON.stringify({ ...bare, revision: 1, notes: "", display: {}, criteria: {} })));
    expect(JSON.parse(said)).toMatchObject({ revision: 1, notes: "", display: {}, criteria: {} });
    expect(said).not.toContain('"units"');
  });

  it("keeps every number to the last bit, zero's sign included, in the fewest digits", () => {
    const bare = documentOf(textOf("94-all-optional-left-out.json"));
    const withHeading = (heading: number): PlanDocument => ({
      ...bare,
      piece: { ...bare.piece, pose: { x: 0, y: 0, heading } },
    });
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (heading) => {
        const text = write(withHeading(heading));
        expect(Object.is(documentOf(text).piece.pose?.heading, heading)).toBe(true);
        const [, digits = ""] = /"heading": (\S+)/.exec(text) ?? [];
        if (!Object.is(heading, -0)) expect(digits).toBe(JSON.stringify(heading));
      }),
      { seed: 20261125, numRuns: 2000 },
    );
    expect(write(withHeading(-0))).toContain('"heading": -0\n');
    expect(write(withHeading(0.1 + 0.2))).toContain('"heading": 0.30000000000000004');
  });

  it("escapes a byte order mark within a text, which the reader would else refuse", () => {
    const bare = documentOf(textOf("94-all-optional-left-out.json"));
    const text = write({ ...bare, title: "\uFEFFa" });
    expect(text).toContain('"title": "\\ufeffa"');
    expect(documentOf(text).title).toBe("\uFEFFa");
  });

  it("cannot be made of numbers that are none", () => {
    const bare = documentOf(textOf("94-all-optional-left-out.json"));
    expect(() => write({ ...bare, piece: { ...bare.piece, depth: Number.NaN } })).toThrow("finite");
  });
});
