#!/usr/bin/env node
/** The command line: reads plans, prints what the checks say of them, and ends with their verdict as its status. */

import { version } from "../../package.json";
import { computed, lineOf, refusalOf, reportOf, resultOf, withoutMargins } from "../checks";
import { complete, read } from "../plan";
import { commandOf, usage } from "./arguments";
import { readFile } from "./files";
import { textOf } from "./text";

/** Exit statuses of plan-format: every verdict holds or is close; one fails or is unknown; a plan could not be read. */
const status = { holds: 0, fails: 1, refused: 2 } as const;
type Status = (typeof status)[keyof typeof status];

interface Refusal {
  readonly path: string;
  readonly message: string;
}

type Checked =
  | { readonly kind: "checked"; readonly text: string; readonly status: Status }
  | { readonly kind: "refused"; readonly refusal: Refusal };

function check(file: string, json: boolean, margins: boolean): Checked {
  const found = readFile(file);
  if (found.kind === "refused") return { kind: "refused", refusal: { path: "", message: found.why } };
  const document = read(found.bytes);
  if (!document.ok) return { kind: "refused", refusal: document };
  const plan = complete(document.document);
  const report = reportOf(plan, margins ? computed : withoutMargins);
  const good = report.verdict === "holds" || report.verdict === "close";
  const text = json ? lineOf(resultOf(plan, report, file)) : textOf(plan, report, file).join("\n");
  return { kind: "checked", text, status: good ? status.holds : status.fails };
}

function checkAll(files: readonly string[], json: boolean, margins: boolean): Status {
  let worst: Status = status.holds;
  for (const [index, file] of files.entries()) {
    const checked = checkedOrRefused(file, json, margins);
    if (index > 0 && !json) process.stdout.write("\n");
    if (checked.kind === "checked") {
      process.stdout.write(`${checked.text}\n`);
      worst = Math.max(worst, checked.status) as Status;
      continue;
    }
    const { path, message } = checked.refusal;
    process.stderr.write(`${file}: ${path === "" ? "" : `${path}: `}${message}\n`);
    if (files.length > 1) {
      process.stdout.write(json ? `${lineOf(refusalOf(file, checked.refusal))}\n` : `${file}: could not be read\n`);
    }
    worst = status.refused;
  }
  return worst;
}

/** A fault of the program itself is told in one sentence too, and counts as a plan that could not be read. */
function checkedOrRefused(file: string, json: boolean, margins: boolean): Checked {
  try {
    return check(file, json, margins);
  } catch (error) {
    const why = error instanceof Error ? error.message.split("\n")[0] : "no reason given";
    const message = `The plan could not be checked because of a fault in the program (${why}); please report it with the plan.`;
    return { kind: "refused", refusal: { path: "", message } };
  }
}

function main(words: readonly string[]): Status {
  const command = commandOf(words);
  switch (command.kind) {
    case "help":
      process.stdout.write(usage);
      return status.holds;
    case "version":
      process.stdout.write(`trestleboard ${version}\n`);
      return status.holds;
    case "refused":
      process.stderr.write(`${command.why}\n`);
      return status.refused;
    case "check":
      return checkAll(command.files, command.json, command.margins);
  }
}

// Whoever reads the output may have had enough of it; that is no fault.
process.stdout.on("error", () => process.exit());
process.exitCode = main(process.argv.slice(2));
