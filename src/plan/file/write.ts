/**
 * A plan as text, in the one canonical form: keys in the order of the format, two spaces a level, the shortest numbers
 * that read back the same, a line break at the end. What a document leaves out stays out.
 */

import type { PlanDocument } from "../document";
import { planShape } from "./schema";
import { type AnyShape, anything, listIn, objectIn } from "./shape";

/** The text of a plan file; `read` gives the same document back. Throws where a number is not finite. */
export function write(document: PlanDocument): string {
  return `${stringify(document, planShape, "\n")}\n`;
}

/** Any JSON value as text; the keys of objects in the order of the shape, where it has one. */
export function stringify(value: unknown, shape: AnyShape, lineBreak: string): string {
  if (typeof value === "number") return digits(value);
  if (typeof value === "string") return quote(value);
  if (typeof value !== "object" || value === null) return String(value);

  const deeper = `${lineBreak}  `;
  if (Array.isArray(value)) {
    const own = listIn(shape);
    const item = own?.kind === "list" ? own.item : anything;
    return enclose(
      "[",
      value.map((one) => stringify(one, item, deeper)),
      "]",
      lineBreak,
    );
  }
  const own = objectIn(shape);
  const keys = own?.kind === "object" ? [...own.fields.keys()] : Object.keys(value);
  const fields = own?.kind === "object" ? own.fields : null;
  const entries = keys
    .map((key) => [key, (value as Record<string, unknown>)[key]] as const)
    .filter(([, one]) => one !== undefined)
    .map(([key, one]) => `${quote(key)}: ${stringify(one, fields?.get(key)?.shape ?? anything, deeper)}`);
  return enclose("{", entries, "}", lineBreak);
}

function enclose(opening: string, items: readonly string[], closing: string, lineBreak: string): string {
  if (items.length === 0) return opening + closing;
  return `${opening}${lineBreak}  ${items.join(`,${lineBreak}  `)}${lineBreak}${closing}`;
}

/** The shortest digits that read back as the same number; a zero keeps its sign. */
function digits(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a plan holds finite numbers only, not ${value}`);
  return Object.is(value, -0) ? "-0" : String(value);
}

/** A byte order mark is escaped, as the reader refuses a raw one anywhere. */
function quote(text: string): string {
  return JSON.stringify(text).replaceAll("\uFEFF", "\\ufeff");
}
