import { describe, expect, it } from "vitest";
import { commandOf } from "../../src/cli/arguments";

describe("the words of the command line", () => {
  it("takes options before, between and after the files", () => {
    const expected = { kind: "check", files: ["a.json", "b.json"], json: true, margins: false };
    expect(commandOf(["check", "a.json", "b.json", "--json"])).toEqual(expected);
    expect(commandOf(["check", "--json", "a.json", "b.json"])).toEqual(expected);
    expect(commandOf(["--json", "check", "a.json", "b.json"])).toEqual(expected);
  });

  it("takes a file whose name begins with a dash after --", () => {
    expect(commandOf(["check", "--margins", "--", "--json"])).toEqual({
      kind: "check",
      files: ["--json"],
      json: false,
      margins: true,
    });
  });

  it("helps and tells its version", () => {
    expect(commandOf(["--help"]).kind).toBe("help");
    expect(commandOf(["check", "a.json", "--help"]).kind).toBe("help");
    expect(commandOf(["--version"]).kind).toBe("version");
  });

  it.each([
    [[], "check PLAN.json"],
    [["draw", "a.json"], "draw"],
    [["check"], "at least one plan"],
    [["check", "a.json", "--jsn"], "--jsn"],
  ] as const)("refuses %j in one sentence", (words, says) => {
    const command = commandOf(words);
    expect(command.kind).toBe("refused");
    if (command.kind === "refused") expect(command.why).toContain(says);
  });
});
