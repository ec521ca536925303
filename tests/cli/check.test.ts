/** The command line as built: statuses, streams, lines, and what hostile files get. */

import { execFileSync } from "node:child_process";
import { accessSync, chmodSync, constants, mkdirSync, readFileSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtCommand, type Ran, run, workFolder } from "./run";

const reference = (name: string) => new URL(`../cases/reference/${name}.json`, import.meta.url).pathname;
const good = reference("01-two-rigid");
const failing = reference("41-unstable-overhang");

let command = "";
const { folder, write, remove } = workFolder();
beforeAll(async () => {
  command = await builtCommand();
}, 60_000);
afterAll(() => {
  remove();
  rmSync(dirname(command), { recursive: true });
});

const sentenceOnly = ({ err, out, status }: Ran) => {
  expect(status).toBe(2);
  expect(out).toBe("");
  expect(err.trimEnd().split("\n")).toHaveLength(1);
  expect(err).not.toMatch(/\n\s+at |node:internal|Error:/);
};

describe("the built file", () => {
  it("runs by itself", () => {
    accessSync(command, constants.X_OK);
    expect(readFileSync(command, "utf8").split("\n")[0]).toBe("#!/usr/bin/env node");
    expect(execFileSync(command, ["--version"], { encoding: "utf8" })).toMatch(/^trestleboard \d+\.\d+\.\d+\n$/);
  });

  it("helps", () => {
    const { status, out, err } = run(command, ["--help"]);
    expect([status, err]).toEqual([0, ""]);
    expect(out).toContain("trestleboard check PLAN.json [PLAN2.json ...] [--json] [--margins]");
  });

  it("refuses what it does not understand in one sentence", () => {
    sentenceOnly(run(command, []));
    sentenceOnly(run(command, ["check"]));
    sentenceOnly(run(command, ["check", good, "--fast"]));
  });
});

describe("check --json", () => {
  it("prints one object on one line, its file as given, and its status by the verdict", () => {
    const { status, out, err } = run(command, ["check", "plan.json", "--json"], placed("plan.json", good));
    expect(err).toBe("");
    expect(out.endsWith("\n")).toBe(true);
    expect(out.trimEnd().split("\n")).toHaveLength(1);
    const result = JSON.parse(out) as { format: string; version: number; file: string; verdict: string };
    expect([result.format, result.version, result.file]).toEqual(["trestleboard-result", 1, "plan.json"]);
    expect(status).toBe(result.verdict === "holds" || result.verdict === "close" ? 0 : 1);
  });

  it("ends with 1 when something fails", () => {
    const { status, out } = run(command, ["check", failing, "--json"]);
    expect(status).toBe(1);
    expect((JSON.parse(out) as { verdict: string }).verdict).toBe("fails");
  });

  it("ends with 0 when everything holds or is close", () => {
    const plan = JSON.parse(readFileSync(good, "utf8")) as { standTypes: { ratedLoadCentre: number }[] };
    for (const type of plan.standTypes) type.ratedLoadCentre = 90000;
    const { status, out } = run(command, ["check", write("rated.json", JSON.stringify(plan)), "--json"]);
    const result = JSON.parse(out) as { verdict: string; findings: { verdict: string; message: string }[] };
    expect(result.findings.filter(({ verdict }) => verdict === "fails" || verdict === "unknown")).toEqual([]);
    expect(status).toBe(0);
  });

  it("prints several in order, a refusal on its own line, and the reason on standard error", () => {
    const broken = write("broken.json", '{"format":"trestleboard-plan","version":1');
    const { status, out, err } = run(command, ["check", failing, broken, good, "--json"]);
    const lines = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as { format: string; file: string });
    expect(lines.map(({ format, file }) => [format, file])).toEqual([
      ["trestleboard-result", failing],
      ["trestleboard-refusal", broken],
      ["trestleboard-result", good],
    ]);
    expect(Object.keys(lines[1]!)).toEqual(["format", "version", "file", "path", "message"]);
    expect(err).toContain(broken);
    expect(status).toBe(2);
  });

  it("says the same every time", () => {
    const once = run(command, ["check", good, "--json"]).out;
    expect(run(command, ["check", good, "--json"]).out).toBe(once);
  });
});

describe("check for reading", () => {
  it("puts the verdict first and the cautions once", () => {
    const { out } = run(command, ["check", failing]);
    const lines = out.split("\n");
    expect(lines[0]).toContain("41-unstable-overhang");
    expect(lines[1]).toMatch(/^FAILS: /);
    expect(out.match(/qualified person, they do not replace one/g)).toHaveLength(1);
    expect(out).toContain("Not checked:");
    expect(out).not.toMatch(/\bsafe\b|NaN|undefined|\[object/);
    for (const line of lines) expect(line).toBe(line.trimEnd());
  });

  it("stops quietly when nobody reads on", () => {
    const words = [command, "check", ...Array<string>(40).fill(good), "--json"];
    const script = `"${process.execPath}" ${words.map((word) => `"${word}"`).join(" ")} 2>&1 | head -c 10`;
    expect(execFileSync("bash", ["-c", script], { encoding: "utf8" })).toBe('{"format":');
  });
});

/** A folder with a plan under another name. */
function placed(name: string, from: string): string {
  write(name, readFileSync(from));
  return folder;
}

describe("a file that is no plan", () => {
  const text = () => readFileSync(good, "utf8");
  const hostile: readonly (readonly [string, () => string | Uint8Array])[] = [
    ["empty", () => ""],
    ["cut off in the middle", () => text().slice(0, 700)],
    ["not JSON", () => "girder on four horses"],
    ["of another format", () => '{"format":"other","version":1}'],
    ["of a newer version", () => text().replace('"version": 1', '"version": 99')],
    ["with __proto__", () => text().replace('"title"', '"__proto__": {"a": 1}, "title"')],
    ["with a key twice", () => text().replace('"title"', '"version": 1, "title"')],
    ["with NaN", () => text().replace(/"depth": [\d.]+/, '"depth": NaN')],
    ["with 1e400", () => text().replace(/"depth": [\d.]+/, '"depth": 1e400')],
    ["nested 10 000 deep", () => "[".repeat(10_000)],
    ["nested 7 million deep", () => "[".repeat(7_000_000)],
    ["of invalid UTF-8", () => new Uint8Array([0x7b, 0x22, 0xff, 0xfe, 0x22, 0x7d])],
    ["with a byte order mark", () => `\uFEFF${text()}`],
    ["of 100 MB", () => new Uint8Array(100_000_000).fill(0x20)],
    ["of just under 16 MB of one text", () => `{"format":"${"x".repeat(15_900_000)}"}`],
    ["of a million equal keys", () => `{${'"a":1,'.repeat(1_000_000)}"b":1}`],
  ];

  it.each(hostile)("%s is refused in one sentence", (name, content) => {
    sentenceOnly(run(command, ["check", write(`${name.replace(/\W/g, "-")}.json`, content()), "--json"]));
  });

  it("is refused when it is missing, a folder, or not to be read", () => {
    sentenceOnly(run(command, ["check", join(folder, "missing.json")]));
    mkdirSync(join(folder, "sub"), { recursive: true });
    sentenceOnly(run(command, ["check", join(folder, "sub")]));
    sentenceOnly(run(command, ["check", join(folder, "sub", "a".repeat(5000))]));
    sentenceOnly(run(command, ["check", "/dev/zero"]));
    const closed = write("closed.json", "{}");
    chmodSync(closed, 0o000);
    sentenceOnly(run(command, ["check", closed]));
  });
});
