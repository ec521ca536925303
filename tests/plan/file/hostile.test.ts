/** Files that are no JSON, or JSON made to do harm: each is refused with one sentence. Times: bench/hostile.bench.ts. */

import { describe, expect, it } from "vitest";
import { mostBytes, read, tooLarge } from "../../../src/plan";
import { hostileFiles } from "./hostileFiles";
import { accepted, refusalOf, refused } from "./spoilt";
import { wholePlan } from "./wholePlan";

const bytes = (text: string) => new TextEncoder().encode(text);
const joined = (...parts: readonly (string | readonly number[])[]): Uint8Array =>
  Uint8Array.from(parts.flatMap((part) => (typeof part === "string" ? [...bytes(part)] : [...part])));
const replaced = (from: string, to: string) => {
  expect(wholePlan).toContain(from);
  return wholePlan.replace(from, () => to);
};

describe("the file as a whole", () => {
  it("is refused unread over 16 000 000 bytes, and read up to there", () => {
    const blanks = (count: number) => wholePlan + " ".repeat(count - wholePlan.length);
    expect(mostBytes).toBe(16_000_000);
    accepted(blanks(16_000_000));
    accepted(bytes(blanks(16_000_000)));
    refused(blanks(16_000_001), "");
    refused(bytes(blanks(16_000_001)), "");
    // Fewer characters than that, but more bytes.
    refused(replaced('"notes": ""', `"notes": "${"€".repeat(5_400_000)}"`), "");
    expect(tooLarge(16_000_000)).toBeNull();
    expect(tooLarge(16_000_001)).toMatchObject({ ok: false, path: "" });
  });

  it("is UTF-8", () => {
    accepted(bytes(replaced('"notes": ""', '"notes": "Ω € 𝄞"')));
    refused(joined(replaced('"notes": ""', '"notes": "#'), [0xff]), "");
    refused(joined('{"title": "', [0xc3], '"}'), "");
    refused(joined('{"title": "', [0xed, 0xa0, 0x80], '"}'), "");
    refused(joined('{"title": "', [0xc0, 0xaf], '"}'), "");
    refused(Uint8Array.from([...wholePlan].flatMap((one) => [one.charCodeAt(0), 0])), "");
    refused(replaced('"notes": ""', '"notes": "\ud800"'), "");
    accepted(replaced('"notes": ""', '"notes": "\\ud800"'));
  });

  it("has no byte order mark, at the start or anywhere else", () => {
    refused(`\uFEFF${wholePlan}`, "");
    refused(joined([0xef, 0xbb, 0xbf], wholePlan), "");
    refused(replaced('"notes": ""', '"notes": "\uFEFF"'), "");
    refused(`${wholePlan}\uFEFF`, "");
    accepted(replaced('"notes": ""', '"notes": "\\ufeff"'));
  });

  it("is whole: cut off anywhere, it is refused", () => {
    const text = JSON.stringify(JSON.parse(wholePlan));
    for (let length = 0; length < text.length; length += 1) {
      const answer = read(text.slice(0, length));
      expect(answer).toMatchObject({ ok: false, path: "" });
      if (!answer.ok) expect(answer.message).toMatch(/^Found [^\n]+; right would be [^\n]+\.$/);
    }
  });

  it.each([
    "[]",
    "null",
    "1",
    '"plan"',
    "plan",
    "{} {}",
    "{'format': 1}",
    '{"format": 1,}',
    "{format: 1}",
    '{"format" 1}',
    "// a plan\n{}",
    '{"format": 01}',
    '{"format": .5}',
    '{"format": 1.}',
    '{"format": +1}',
    '{"format": 0x1}',
    '{"format": "a\nb"}',
    '{"format": "\\x41"}',
    '{"format": "\\u00g0"}',
    '{"format": undefined}',
    '{"format": tru}',
    "<html></html>",
    "PK\u0003\u0004",
  ])("%j is no plan", (text) => refused(text, ""));

  it("a plan with something after it is none", () => {
    refused(`${wholePlan},`, "");
    refused(wholePlan + wholePlan, "");
  });

  it("says where the text stops being JSON", () => {
    expect(refusalOf('{\n  "format": 1,\n  "version" 2\n}', "")).toContain("line 3, column 13");
  });
});

describe("numbers that are none", () => {
  it.each(["NaN", "Infinity", "-Infinity", "+Infinity", "1e400", "-1e400", "1e99999999999"])("%s", (token) => {
    refused(replaced('"depth": 0.9', `"depth": ${token}`), "piece.depth");
    refused(replaced('"value": 0.0005', `"value": ${token}`), "steps[0].readings[0].value");
  });
  it("too small to tell from nothing is 0", () => {
    refused(replaced('"depth": 0.9', '"depth": 1e-400'), "piece.depth");
    accepted(replaced('"shim": 0,', '"shim": 1e-400,'));
  });
});

describe("a key written twice in one object", () => {
  it.each([
    ['"title"', '"title": "", "title"', "title"],
    ['"title"', '"title": "", "\\u0074itle"', "title"],
    ['"datum"', '"datum": "", "datum"', "piece.ends.datum"],
    ['"kind": "point"', '"kind": "point", "mass": 1', "piece.masses[1].mass"],
    ['"steel": 0.15', '"steel": 0.15, "steel": 0.15', "criteria.friction.steel"],
    ['"title"', '"__proto__": 1, "__proto__": 2, "title"', "__proto__"],
    ['"notes": ""', '"notes": [{"a": {"b": 1, "b": 1}}]', "notes[0].a.b"],
  ])("%s → %s", (from, to, path) => {
    expect(refusalOf(replaced(from, to), path)).toContain("twice");
  });
  it("before anything else is looked at: another version may mean another thing, but not this", () => {
    refused('{"version": 9, "format": "x", "version": 9}', "version");
  });
  it("the version too", () => {
    refused(replaced('"title"', '"version": 1, "title"'), "version");
    refused(replaced('"title"', '"version": 2, "title"'), "version");
  });
});

describe("made to be slow", () => {
  // Of a sixteenth of the greatest size: the bench takes the whole.
  const files = hostileFiles(1_000_000);
  it.each(files.map(({ name, path, content }) => [name, path, content] as const))("%s", (_, path, content) => {
    refused(content, path);
  });
});
