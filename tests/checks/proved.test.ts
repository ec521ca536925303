import { describe, expect, it } from "vitest";
import { certificatesPart, knownValue, type StepCertificates, sayIn, unprovedSentences } from "../../src/checks";
import { demoBeam } from "../../src/library";
import { complete } from "../../src/plan";

const plan = complete(demoBeam);
const step = plan.steps[0]!;
const proof = knownValue(certificatesPart(plan, step))!;
const say = sayIn({ ...plan.display, units: "metric", force: "kN" });

/** The proof of the demo with one stand's outer bounds farther out, as where the work allowed ran out. */
const short = (stand: number, further: { least: number; most: number }): StepCertificates => ({
  ...proof,
  stands: proof.stands!.map((one, index) =>
    index === stand
      ? {
          ...one,
          certified: null,
          outer: { least: one.outer.least - further.least, most: one.outer.most + further.most },
          gap: Math.max(further.least, further.most),
        }
      : one,
  ),
});

describe("what is not proved is told", () => {
  it("nothing where everything is certified", () => {
    expect(proof.stands!.every(({ certified }) => certified !== null)).toBe(true);
    expect(unprovedSentences(proof, say)).toEqual([]);
  });

  it("that stand alone, with what was found and what is proved", () => {
    const sentences = unprovedSentences(short(2, { least: 0, most: 1000 }), say);
    expect(sentences.every((sentence) => sentence.startsWith("H-03: "))).toBe(true);
    const found = proof.bounds.stands![2]!.over!.most;
    const proved = proof.stands![2]!.outer.most + 1000;
    expect(sentences).toContain(
      `H-03: nothing heavier than ${say.force(found)} was found; that it carries not more than ${say.force(proved)} is proved.`,
    );
  });

  it("both sides, where neither is", () => {
    const stands = short(2, { least: 2000, most: 1000 });
    expect(unprovedSentences(stands, say)).toHaveLength(2);
    expect(unprovedSentences(stands, say)[0]).toMatch(/^H-03: nothing lighter than .* not less than /);
  });
});
