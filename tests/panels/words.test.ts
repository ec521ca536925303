import { describe, expect, it } from "vitest";
import type { Finding, Mend, Report } from "../../src/checks";
import { demoBeam } from "../../src/library";
import { moreText } from "../../src/panels/findings/lines";
import { mendWords } from "../../src/panels/findings/mends";
import { verdictSummary } from "../../src/panels/findings/summary";
import { keyWords, matching } from "../../src/panels/help/keyWords";
import { complete, type Display, type LayoutId, type StandId } from "../../src/plan";

const plan = complete(demoBeam);
const layout = plan.layouts[0]!;
const third = layout.placements[2]!;
const us: Display = { units: "us", length: null, force: null };

describe("a mend in words", () => {
  const of = (mend: Mend) => mendWords(mend, plan, us);
  const on = { layout: layout.id as LayoutId, stand: third.stand };

  it("says what is done to which stand, by how much and which way", () => {
    expect(third.shim).toBeCloseTo(0.003175, 9);
    expect(of({ kind: "shim", ...on, shim: 0 })).toBe(`Take the 1/8" shim out of ${third.stand}`);
    expect(of({ kind: "shim", ...on, shim: 0.0254 / 16 })).toBe(`Change the shim of ${third.stand} from 1/8" to 1/16"`);
    const { ends } = plan.piece;
    expect(of({ kind: "shift", ...on, s: third.s + 0.0508, t: third.t })).toBe(
      `Move ${third.stand} 2" toward ${ends.far}`,
    );
    expect(of({ kind: "shift", ...on, s: third.s - 0.0508, t: third.t })).toBe(
      `Move ${third.stand} 2" toward ${ends.datum}`,
    );
    expect(of({ kind: "shift", ...on, s: third.s, t: third.t - 0.0508 })).toBe(`Move ${third.stand} 2" to the right`);
    expect(of({ kind: "swap", ...on, by: "S-9" as StandId, height: 0.762 })).toBe(`Put S-9 in place of ${third.stand}`);
  });

  it("a shim on a stand without one is put in", () => {
    const first = layout.placements[0]!;
    expect(of({ kind: "shim", layout: layout.id, stand: first.stand, shim: 0.0254 / 8 })).toBe(
      `Put a shim of 1/8" on ${first.stand}`,
    );
  });
});

describe("the verdict in a few words", () => {
  const finding = (code: Finding["code"], verdict: Finding["verdict"]) =>
    ({ code, verdict, step: null, layout: layout.id, stand: null, use: 0 }) as Finding;
  const report = (
    verdict: Report["verdict"],
    findings: readonly Finding[],
    notChecked: Report["notChecked"] = [],
  ): Pick<Report, "verdict" | "findings" | "notChecked"> => ({ verdict, findings, notChecked });

  it("holds, with what was not checked", () => {
    const said = verdictSummary(
      report(
        "holds",
        [finding("tips", "holds")],
        [
          { check: "slab", why: "no slab" },
          { check: "sag", why: "no limit" },
        ],
      ),
    );
    expect(said).toEqual({ face: "holds", words: "holds, 2 not checked", counts: "" });
  });

  it("counts matters, not findings", () => {
    const said = verdictSummary(
      report("fails", [
        finding("tips", "fails"),
        finding("tips", "fails"),
        finding("slides", "unknown"),
        finding("sag", "close"),
        finding("slab", "close"),
      ]),
    );
    expect(said.counts).toBe("1 fails, 1 unknown, 2 close");
    expect(verdictSummary(report("fails", [finding("tips", "fails"), finding("slides", "fails")])).counts).toBe(
      "2 fail",
    );
  });

  it("pending is never told as holds", () => {
    expect(verdictSummary(report("pending", [])).words).toBe("computing");
  });
});

it("the same matter elsewhere is told behind the line", () => {
  expect(moreText({ moreStands: 4, moreSteps: 3 })).toBe("+4 stands, 3 steps");
  expect(moreText({ moreStands: 1, moreSteps: 0 })).toBe("+1 stand");
  expect(moreText({ moreStands: 0, moreSteps: 0 })).toBe("");
});

describe("the list of what can be done", () => {
  it("finds by every word typed, in any order", () => {
    const items = [{ label: "Space the stands evenly" }, { label: "Select all stands" }, { label: "Undo" }];
    expect(matching(items, "stands EVEN")).toEqual([items[0]]);
    expect(matching(items, "")).toEqual(items);
    expect(matching(items, "stands undo")).toEqual([]);
  });

  it("names keys as they are printed", () => {
    expect(keyWords("Mod+Shift+Z", false)).toBe("Ctrl + Shift + Z");
    expect(keyWords("Mod+Z", true)).toBe("⌘ + Z");
    expect(keyWords("ArrowLeft", false)).toBe("←");
    expect(keyWords("+", false)).toBe("+");
  });
});
