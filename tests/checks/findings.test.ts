/** What findings have in common: marks, order, lines, what was not checked, what is pending. */

import { describe, expect, it } from "vitest";
import {
  awaited,
  cautions,
  findingsOf,
  forFindings,
  linesOf,
  pending,
  rankOf,
  reportOf,
  type StepReport,
  worstOf,
} from "../../src/checks";
import { type FindingCode, findingCodes } from "../../src/plan";
import { referenceCases } from "../helpers/reference";
import { type Draft, planWith, thirdStand } from "./base";

const nothing = () => {};
const codesOf = (plan: ReturnType<typeof planWith>) => new Set(findingsOf(plan).map(({ code }) => code));
const finding = (code: FindingCode, change: (draft: Draft) => void) =>
  findingsOf(planWith(change)).find((one) => one.code === code)!;

describe("the basis of a limit", () => {
  it("is that of the criterion, and a changed one is marked", () => {
    const standard = finding("slides", nothing);
    expect([standard.basis, standard.changed]).toEqual(["reserve against sliding: temporary-works custom", false]);
    const changed = finding("slides", (draft) => {
      draft.criteria = { ...draft.criteria, slideReserve: 3 };
    });
    expect([changed.changed, changed.limit]).toEqual([true, 3]);
    expect(changed.basis).toContain("changed in this plan from 2");
  });

  it("is not marked when a criterion is given its own default", () => {
    const same = finding("slides", (draft) => {
      draft.criteria = { ...draft.criteria, slideReserve: 2 };
    });
    expect(same.changed).toBe(false);
  });

  it("marks one material alone", () => {
    const change = (draft: Draft) => {
      draft.criteria = { ...draft.criteria, bearingPressure: { rubber: 1e6 } };
    };
    expect(finding("bearing-pressure", change).changed).toBe(false);
  });

  it("is the stand's own rating where it is", () => {
    const { basis, stand } = finding("stand-over-rating", nothing);
    expect(basis).toContain(`rated load of stand ${stand}`);
  });
});

describe("require", () => {
  const required = (codes: FindingCode[]) => (draft: Draft) => {
    draft.criteria = { ...draft.criteria, require: codes };
  };

  it("turns what was left out into unknown", () => {
    const plan = planWith(required(["slab", "sag"]));
    const report = reportOf(plan);
    expect(report.verdict).toBe("unknown");
    for (const code of ["slab", "sag"] as const) {
      const found = report.findings.find((one) => one.code === code)!;
      expect([found.verdict, found.step]).toEqual(["unknown", "only"]);
      expect(found.message).toContain("could not be made");
      expect(report.notChecked.some(({ check }) => check === code)).toBe(false);
    }
  });

  it("changes nothing about checks that are made", () => {
    const plan = planWith(required(["slides"]));
    expect(findingsOf(plan).find(({ code }) => code === "slides")!.verdict).toBe("holds");
  });

  it("holds for the floor too", () => {
    const found = finding("outside-bay", (draft) => {
      required(["outside-bay"])(draft);
      draft.bay = null;
    });
    expect([found.verdict, found.step, found.layout]).toEqual(["unknown", null, "L"]);
  });
});

describe("what was not checked", () => {
  it("is one entry a code, in the order of the codes, over all steps", () => {
    const { notChecked } = reportOf(
      planWith((draft) => {
        draft.steps.push({ ...draft.steps[0]!, id: "second" as never, braced: true });
      }),
    );
    const codes = notChecked.map(({ check }) => check);
    expect(codes).toEqual([
      "rolls-over",
      "bending",
      "shear",
      "web-yielding",
      "web-crippling",
      "lateral-buckling",
      "sag",
      "slab",
    ]);
    for (const { why } of notChecked) expect(why.length).toBeGreaterThan(10);
  });

  it("names what holds a chocked piece", () => {
    const { notChecked } = reportOf(
      planWith((draft) => {
        draft.steps[0]!.chocked = true;
      }),
    );
    expect(notChecked.some(({ check }) => check === "slides")).toBe(true);
  });
});

describe("a step that tips", () => {
  it("has only the checks that need no reactions", () => {
    const codes = codesOf(
      planWith((draft) => {
        draft.layouts[0]!.placements[1]!.s = 4.9;
      }),
    );
    expect([...codes].sort()).toEqual(
      [
        "tips",
        "tip-reserve",
        "not-under-piece",
        "stand-not-in-service",
        "heights-mismatch",
        "stands-overlap",
        "outside-bay",
      ].sort(),
    );
  });
});

describe("order and lines", () => {
  const change = (draft: Draft) => {
    thirdStand(draft, { height: 0.799 });
    draft.standTypes[0]!.ratedLoad = 9000;
    draft.standTypes[0]!.ratedLoadCentre = 9000;
    draft.steps.push({ ...draft.steps[0]!, id: "second" as never });
  };

  it("puts the worst first, what drops a stand before what goes light", () => {
    const findings = findingsOf(planWith(change));
    const ranks = findings.map(({ verdict }) => rankOf(verdict));
    expect(ranks).toEqual([...ranks].sort((one, two) => one - two));
    const failing = [...new Set(findings.filter(({ verdict }) => verdict === "fails").map(({ code }) => code))];
    expect(failing).toEqual(["stand-over-rating", "rating-centre", "stand-lifts-off", "stand-never-bears"]);
  });

  it("tells the same matter once, with how many more", () => {
    const lines = linesOf(findingsOf(planWith(change)));
    const over = lines.filter(({ worst }) => worst.code === "stand-over-rating");
    expect(over).toHaveLength(1);
    expect([over[0]!.moreStands, over[0]!.moreSteps]).toEqual([1, 1]);
    expect(over[0]!.all).toHaveLength(6);
  });
});

describe("while the bounds are pending", () => {
  const answers = { ...forFindings, bounds: () => pending<never>(), strength: () => pending<never>() };

  it("nothing that rests on them holds, and what fails as planned fails", () => {
    const plan = planWith((draft) => {
      draft.standTypes[0]!.ratedLoad = 9000;
    });
    const found = findingsOf(plan, answers).find(({ code }) => code === "stand-over-rating")!;
    expect(found.verdict).toBe("fails");
    expect(found.message).toContain("as planned");
    const waiting = findingsOf(planWith(nothing), answers).find(({ code }) => code === "stand-over-rating")!;
    expect(waiting.verdict).toBe("pending");
    expect(waiting.message).toContain("as planned");
    expect(waiting.message).toContain("still being computed");
    expect(reportOf(planWith(nothing), answers).verdict).toBe("pending");
  });

  it("verdicts only get worse, never better, when they come", () => {
    for (const { plan } of referenceCases.slice(0, 12)) {
      const later = new Map(findingsOf(plan).map((one) => [`${one.step} ${one.code} ${one.stand}`, one.verdict]));
      for (const one of findingsOf(plan, answers)) {
        const key = `${one.step} ${one.code} ${one.stand}`;
        if (one.verdict === "fails" && later.has(key)) expect(later.get(key), key).toBe("fails");
      }
    }
  });

  it("without any answer the verdict is pending or fails", () => {
    for (const { plan } of referenceCases) expect(["pending", "fails"]).toContain(reportOf(plan, awaited).verdict);
  });
});

describe("sentences", () => {
  const asksFor = new Set<FindingCode>([
    "tips",
    "tilts",
    "tip-reserve",
    "rolls-over",
    "stand-tips-over",
    "single-stand-loss",
    "stand-lifts-off",
    "casters-still-down",
    "stand-not-rated-under",
    "crane-holds",
  ]);

  it("are whole, in every case, and send to the qualified person where they must", () => {
    const seen = new Set<FindingCode>();
    for (const { plan } of referenceCases) {
      for (const { code, verdict, message, basis } of findingsOf(plan)) {
        seen.add(code);
        expect(message).toMatch(/^[A-Z0-9].*\.$/);
        expect(message).not.toMatch(/undefined|null|NaN|Infinity|\bsafe\b|!|\[object/);
        expect(basis.length).toBeGreaterThan(3);
        if (asksFor.has(code)) expect(message.includes("qualified person")).toBe(verdict !== "holds");
      }
    }
    expect(seen.size).toBeGreaterThan(15);
    expect(findingCodes.length).toBeGreaterThan(seen.size);
  });

  it("use the plan's display units", () => {
    const metric = finding("stand-over-rating", nothing).message;
    const customary = finding("stand-over-rating", (draft) => {
      draft.display = { units: "us" };
    }).message;
    expect(metric).toContain("kN");
    // 9806.65 N = 1000 kgf = 2204.62 lbf
    expect(customary).toContain("2,205 lb");
  });

  it("say cautions once, apart from the findings", () => {
    expect(cautions.length).toBeGreaterThan(0);
    for (const { message } of findingsOf(planWith(nothing))) for (const one of cautions) expect(message).not.toBe(one);
  });
});

describe("verdicts", () => {
  it("are as bad as the worst", () => {
    expect(worstOf([])).toBe("holds");
    expect(worstOf(["holds", "close", "unknown"])).toBe("unknown");
    expect(worstOf(["holds", "pending", "unknown"])).toBe("pending");
    expect(worstOf(["pending", "fails"])).toBe("fails");
  });

  it("of a step count its layout's floor", () => {
    const plan = planWith((draft) => {
      draft.piece.pose!.x = 9;
    });
    const [step] = reportOf(plan).steps as readonly [StepReport];
    expect(step.findings.every(({ verdict }) => verdict === "holds")).toBe(true);
    expect(step.verdict).toBe("fails");
  });
});
