/** Reading a plan file: strictly, from any version up to the current one. */

import type { PlanDocument } from "../document";
import { migrated } from "./migrations";
import { type Parsed, parse } from "./parse";
import { found, type Issue, issue, type Refusal, refusal, shown } from "./refusal";
import { wrongRelation } from "./relations";
import { currentVersion, formatName, planShape } from "./schema";
import { anything } from "./shape";
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
  const parsed = parse(text, planShape);
  if (parsed.kind === "fault") return refusal(parsed.issue);
  if (parsed.kind === "misfit") return misfit(text, parsed);
  const relation = wrongRelation(parsed.value);
  return relation === null ? { ok: true, document: parsed.value } : refusal(relation);
}

/** What is no plan of the current version: one of another version, which says so, or none at all. */
function misfit(text: string, { issue, outermost }: Extract<Parsed<PlanDocument>, { kind: "misfit" }>): ReadAnswer {
  if (outermost === null) return refusal(issue);
  const { format, version } = outermost;
  const wrong = wrongFormat(format) ?? wrongVersion(version);
  if (wrong !== null) return refusal(wrong);
  return version === currentVersion ? refusal(issue) : readText(inCurrentVersion(text, version as number));
}

function wrongFormat(format: unknown): Issue | null {
  if (format === formatName) return null;
  return issue(found(said(format, "string"), `"${formatName}"`), "format");
}

function wrongVersion(version: unknown): Issue | null {
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1)
    return issue(found(said(version, "number"), `a whole number from 1 to ${currentVersion}`), "version");
  if (version <= currentVersion) return null;
  const newer = `version ${version} of the plan format, which is newer than this program`;
  return issue(found(newer, `version ${currentVersion}, or a newer program`), "version");
}

/** What stands under a key of the outermost object, of which lists and objects are not kept. */
function said(value: unknown, type: "string" | "number"): string {
  if (value === undefined) return "no such key";
  return typeof value === type ? shown(value) : `what is no ${type === "string" ? "text" : type}`;
}

function inCurrentVersion(text: string, version: number): string {
  const file = parse<Record<string, unknown>>(text, anything);
  if (file.kind !== "fits") throw new Error("a text that was gone through to its end is not JSON");
  return stringify(migrated(file.value, version), anything, "");
}
