/** What becomes of a good plan when it is changed here and there. */

import { expect } from "vitest";
import { read } from "../../../src/plan";
import { wholePlan } from "./wholePlan";

export type Change = readonly [path: string, value: unknown];

/** The plan with the values at paths such as `piece.masses[0].mass` replaced; `undefined` takes the key out. */
export function spoilt(...changes: readonly Change[]): string {
  const plan = JSON.parse(wholePlan);
  for (const [path, value] of changes) {
    const keys = path.replaceAll("[", ".").replaceAll("]", "").split(".");
    const last = keys.pop()!;
    const inner = keys.reduce((at, key) => at[key], plan);
    if (value === undefined) delete inner[last];
    else inner[last] = value;
  }
  return JSON.stringify(plan);
}

/** One sentence that says what is wrong and what would be right. */
const sentence = /^Found [^\n]+; right would be [^\n]+\.$/;

/** Expects the refusal of a file at a path. */
export function refused(file: string | Uint8Array, path: string): void {
  refusalOf(file, path);
}

/** The sentence that refuses a file at a path. */
export function refusalOf(file: string | Uint8Array, path: string): string {
  const answer = read(file);
  if (answer.ok) throw new Error(`read, but should have been refused at ${path}`);
  expect(`${answer.path} — ${answer.message}`).toBe(`${path} — ${answer.message}`);
  expect(answer.message).toMatch(sentence);
  expect(answer.message.length).toBeLessThan(600);
  return answer.message;
}

export function accepted(file: string | Uint8Array): void {
  expect(read(file)).toMatchObject({ ok: true });
}
