/** Why a plan file is refused: where, and one sentence that says what is wrong and what would be right. */

import { longestQuote, quoted } from "../quote";

export interface Refusal {
  readonly ok: false;
  /** The key at fault, such as `piece.masses[2].mass`; empty for the file as a whole. */
  readonly path: string;
  readonly message: string;
}

export interface Issue {
  readonly path: readonly (string | number)[];
  readonly message: string;
}

export function issue(message: string, ...path: readonly (string | number)[]): Issue {
  return { path, message };
}

/** An issue seen from further out. */
export function within(outer: readonly (string | number)[], inner: Issue | null): Issue | null {
  return inner === null ? null : { path: [...outer, ...inner.path], message: inner.message };
}

export function refusal({ path, message }: Issue): Refusal {
  return { ok: false, path: pathText(path), message };
}

const plainKey = /^[\w$-]+$/;

function pathText(path: readonly (string | number)[]): string {
  let text = "";
  for (const key of path) {
    if (typeof key === "number") text += `[${key}]`;
    else if (!plainKey.test(key) || key.length > longestQuote) text += `[${quoted(key)}]`;
    else text += text === "" ? key : `.${key}`;
  }
  return text;
}

/** A value in a few words. */
export function shown(value: unknown): string {
  if (typeof value === "string") return `the text ${quoted(value)}`;
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object";
  return Object.is(value, -0) ? "-0" : String(value);
}

/** The form of the sentence that refuses what stands in a file. */
export function found(what: string, right: string): string {
  return `Found ${what}; right would be ${right}.`;
}
