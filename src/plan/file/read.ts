/** Reading a plan file: strictly, from any version up to the current one. */

import type { PlanDocument } from "../document";
import { migrated } from "./migrations";
import { parse } from "./parse";
import { found, type Issue, issue, type Refusal, refusal, shown } from "./refusal";
import { wrongRelation } from "./relations";
import { currentVersion, formatName, planShape } from "./schema";
import { anything, excerpt, optional, type Shape } from "./shape";
import { stringify } from "./write";

export type ReadAnswer = { readonly ok: true; readonly document: PlanDocument } | Refusal;

/** A larger file is refused unread, bytes. */
export const mostBytes = 16_000_000;

/** The refusal of a file of so many bytes; null if it is not too large. For who knows the size before the content. */
export function tooLarge(bytes: number): Refusal | null {
  if (bytes <= mostBytes) return null;
  return refusal(issue(found(`a file of ${bytes} bytes`, `at most ${mostBytes} bytes`)));
}

/**
 * The document that a plan file holds, or where and why it is refused. Nothing is repaired, and what is left out stays
 * left out (`complete` fills it in).
 */
export function read(input: string | Uint8Array): ReadAnswer {
  const text = typeof input === "string" ? checked(input) : decoded(input);
  return typeof text === "string" ? readText(text) : text;
}

function checked(text: string): string | Refusal {
  // No character takes less than a byte: a text too long need not be measured.
  if (text.length > mostBytes) return tooLarge(text.length) ?? text;
  if (/\p{Surrogate}/u.test(text)) return refusal(issue(found("half a character", "a text in UTF-8")));
  return tooLarge(new TextEncoder().encode(text).byteLength) ?? text;
}

function decoded(bytes: Uint8Array): string | Refusal {
  const refused = tooLarge(bytes.byteLength);
  if (refused !== null) return refused;
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return refusal(issue(found("bytes that are not UTF-8", "a text in UTF-8")));
  }
}

function readText(text: string): ReadAnswer {
  if (text.includes("\uFEFF")) return refusal(issue(found("a byte order mark", "none, or \\ufeff within a text")));
  const envelope = parse(text, envelopeShape);
  if (!envelope.ok) return refusal(envelope.issue);
  const { format, version } = envelope.value;
  const wrong = wrongFormat(format) ?? wrongVersion(version);
  if (wrong !== null) return refusal(wrong);

  const current = parse(version === currentVersion ? text : inCurrentVersion(text, version as number), planShape);
  if (!current.ok) return refusal(current.issue);
  const relation = wrongRelation(current.value);
  return relation === null ? { ok: true, document: current.value } : refusal(relation);
}

/** What says how the rest is to be read. */
const envelopeShape = excerpt<{ readonly format?: unknown; readonly version?: unknown }>("a plan, an object", {
  format: optional(anything),
  version: optional(anything),
});

function wrongFormat(format: unknown): Issue | null {
  if (format === formatName) return null;
  return issue(found(format === undefined ? "no such key" : shown(format), `"${formatName}"`), "format");
}

function wrongVersion(version: unknown): Issue | null {
  const right = `a whole number from 1 to ${currentVersion}`;
  if (version === undefined) return issue(found("no such key", right), "version");
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1)
    return issue(found(shown(version), right), "version");
  if (version <= currentVersion) return null;
  const newer = `version ${version} of the plan format, which is newer than this program`;
  return issue(found(newer, `version ${currentVersion}, or a newer program`), "version");
}

function inCurrentVersion(text: string, version: number): string {
  const older = parse(text, anything as Shape<Record<string, unknown>>);
  return older.ok ? stringify(migrated(older.value, version), anything, "") : text;
}
