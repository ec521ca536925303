/** A report for reading: verdict first, findings worst first, cautions once, what was not checked. */

import type { Finding, FindingLine, GoodUpTo, Report, StepReport, VerdictSoFar } from "../checks";
import { cautions, knownValue, linesOf, sayIn, unprovedSentences } from "../checks";
import type { Plan } from "../plan";
import { type Align, tableLines, wrapped } from "./table";

const width = 100;
type Say = ReturnType<typeof sayIn>;

/** Lines of text, without line ends. */
export function textOf(plan: Plan, report: Report, file: string): string[] {
  const say = sayIn(plan.display);
  return [
    `${file}: ${plan.title || plan.piece.name}`,
    verdictLine(report),
    ...report.steps.flatMap((step) => ["", ...stepLines(plan, step, say)]),
    "",
    ...findingLines(report.findings),
    ...notCheckedLines(report),
    "",
    ...cautions.flatMap((caution) => wrapped(caution, width)),
  ];
}

function verdictLine({ verdict, findings, notChecked }: Report): string {
  const count = (of: VerdictSoFar) => findings.filter((finding) => finding.verdict === of).length;
  const counts = (["fails", "unknown", "close", "holds"] as const)
    .map((of) => [count(of), of] as const)
    .filter(([number]) => number > 0)
    .map(
      ([number, of]) =>
        `${number} ${of === "fails" && number > 1 ? "fail" : of === "holds" && number > 1 ? "hold" : of}`,
    );
  const missed = notChecked.length > 0 ? [`${notChecked.length} not checked`] : [];
  return `${verdict.toUpperCase()}: ${[...counts, ...missed].join(", ")}`;
}

function stepLines(plan: Plan, step: StepReport, say: Say): string[] {
  const name = plan.steps.find((one) => one.id === step.step)?.name ?? "";
  const level = knownValue(step.level);
  const bounds = knownValue(step.bounds)?.stands ?? null;
  const weight = level === null ? "" : `, weight ${say.force(level.weight)}`;
  const heading = `Step ${step.step}${name === "" || name === step.step ? "" : ` (${name})`}, layout ${step.layout}${weight}: ${step.verdict}`;
  const force = (value: number | null | undefined) => (value === null || value === undefined ? "–" : say.force(value));
  const rows = step.placements.map((placement, index) => {
    const own = step.findings.find((one) => one.code === "stand-over-rating" && one.stand === placement.stand);
    const share = own?.value == null || own.limit === null ? "–" : say.percent(own.value / own.limit);
    const over = bounds?.[index]?.over;
    return [
      `  ${placement.stand}`,
      say.length(placement.s),
      force(level?.stands[index]?.reaction),
      force(over?.least),
      force(over?.most),
      share,
    ];
  });
  const heads = ["  stand", "at s", "as planned", "lightest", "heaviest", "of rating"];
  const align: Align[] = ["left", "right", "right", "right", "right", "right"];
  const certificates = knownValue(step.certificates);
  const unproved = certificates === null ? [] : unprovedSentences(certificates, say);
  const goodUpTo = knownValue(step.margins);
  return [
    heading,
    ...(rows.length === 0 ? ["  no stands"] : tableLines([heads, ...rows], align)),
    ...unproved.flatMap((sentence) => wrapped(sentence, width - 2).map((line) => `  ${line}`)),
    ...(goodUpTo === null ? [] : goodUpToLines(goodUpTo, say)),
  ];
}

function goodUpToLines(goodUpTo: GoodUpTo, say: Say): string[] {
  const { weight, level, along, across, push, without, turned } = goodUpTo;
  const lost = without.map(({ stand, verdict }) => `${stand} ${verdict}`).join(", ");
  return wrapped(
    `Good up to: ${say.ratio(weight)} × the weight, tops ± ${say.length(level)} off level, ${say.length(along)} off the marks along and ${say.length(across)} across, a push of ${say.percent(push)} of the weight. Without one stand: ${lost || "no stands"}. Turned end for end: ${turned.verdict}.`,
    width - 2,
  ).map((line) => `  ${line}`);
}

function findingLines(findings: readonly Finding[]): string[] {
  const lines = linesOf(findings);
  const open = lines.filter(({ worst }) => worst.verdict !== "holds");
  if (open.length === 0) return ["Every check that was made holds."];
  const rows = open.map((line) => [line.worst.verdict, line.worst.code, where(line)]);
  const heads = tableLines(rows, ["left", "left", "left"]);
  return open.flatMap((line, index) => [
    heads[index]!,
    ...wrapped(line.worst.message, width - 4).map((text) => `    ${text}`),
    `    (${line.worst.basis})`,
  ]);
}

function where({ worst, moreStands, moreSteps }: FindingLine): string {
  const place = worst.step === null ? `layout ${worst.layout}` : `step ${worst.step}`;
  const plural = (count: number, what: string) => `+${count} ${what}${count === 1 ? "" : "s"}`;
  const more = [
    ...(moreStands > 0 ? [plural(moreStands, "stand")] : []),
    ...(moreSteps > 0 ? [plural(moreSteps, "step")] : []),
  ];
  return more.length === 0 ? place : `${place} (${more.join(", ")})`;
}

function notCheckedLines({ notChecked }: Report): string[] {
  if (notChecked.length === 0) return [];
  return [
    "",
    "Not checked:",
    ...tableLines(
      notChecked.map(({ check, why }) => [`  ${check}`, why]),
      ["left", "left"],
    ),
  ];
}
