/** Quantities as people write them, read as SI. */

import { cut, quoted } from "../quote";
import type { Display } from "../types";
import { kinds, type QuantityKind, shownIn, type Unit, unitCalled, unitNames } from "./units";

export type QuantityError = "empty" | "no-number" | "unknown-unit" | "which-unit" | "which-number";

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  /** `message` is one sentence: what is wrong and what would be right. */
  | { readonly ok: false; readonly error: QuantityError; readonly message: string };

/** `6-1/2`, `6 1/2`, `1/2` */
const fraction = String.raw`(?:\d+(?: |-))?\d+\/\d+`;
/** `12`, `.5`, `2,500`, `2 500`, `3,2`, `1.5e3` */
const decimal = String.raw`(?:\d[\d.,]*(?: \d{3}(?![\d\/]))*(?:[.,]\d+)?|[.,]\d+)(?:e[+-]?\d+)?`;
const number = `(?:${fraction}|${decimal})`;

const quantity = new RegExp(`^(-?)(${number}) ?-?(.*)$`, "i");
const feetAndInches = new RegExp(
  `^(-?)(${number}) ?(?:'|ft\\.?|foot|feet) ?-? ?(${number}) ?(?:"|''|in\\.?|inch|inches)?$`,
  "i",
);

/** `2,500`: to some two and a half, to others two and a half thousand. */
const oneComma = /^[1-9]\d{0,2},\d{3}$/;
const grouped = { ",": /^\d{1,3}(?:,\d{3})+$/, ".": /^\d{1,3}(?:\.\d{3})+$/ } as const;

/**
 * The SI value of a text such as `12' 6-1/2"`, `3.2 m`, `3,2 m`, `4 t`, `12 kip`, `2,500 lb`, `1.5e3 N`. A bare number
 * is in the display units. What could mean two things is refused by name, and so asked.
 */
export function parseQuantity(text: string, kind: QuantityKind, display: Display): ParsedQuantity {
  const plain = plainly(text);
  if (plain === "") return refused("empty", `Nothing is written here; right would be a ${kinds[kind].name}.`);

  const both = kind === "length" ? feetAndInches.exec(plain) : null;
  if (both !== null) {
    const feet = readNumber(both[2]!);
    const inches = readNumber(both[3]!);
    if (feet === null || inches === null) return notANumber(text);
    return { ok: true, value: signed(both[1]!, 12 * feet + inches, unitCalled("in", kind)!) };
  }

  const parts = quantity.exec(plain);
  if (parts === null) return notANumber(text);
  const [, sign, digits, unitText] = parts as unknown as readonly [string, string, string, string];
  const value = readNumber(digits);
  if (value === null) return notANumber(text);

  const shown = shownIn(kind, display);
  const unit = unitText !== "" ? named(unitText, kind, display) : shown === "in" ? unitCalled(shown, kind) : shown;
  if (unit === "ft-in") {
    if (value === 0) return { ok: true, value: 0 };
    return refused(
      "which-unit",
      `${quoted(digits)} could be feet or inches; right would be ${cut(digits)}' or ${cut(digits)}".`,
    );
  }
  if (unit === "ton") {
    const words = "short tons (2,000 lb), long tons (2,240 lb) or tonnes (1000 kg)";
    return refused("which-unit", `${quoted(plain)} could be ${words}; right would be short ton, long ton or t.`);
  }
  if (unit === undefined) {
    const known = unitNames(kind).join(", ");
    const right = known === "" ? "a number alone" : known;
    return refused("unknown-unit", `${quoted(unitText)} is no unit of ${kinds[kind].name}; right would be ${right}.`);
  }
  if (oneComma.test(digits) && !unit.customary && display.units !== "us") {
    const [thousands, point] = [digits.replace(",", ""), digits.replace(",", ".")];
    return refused("which-number", `"${digits}" could be ${thousands} or ${point}; right would be one of these.`);
  }
  return { ok: true, value: signed(sign, value, unit) };
}

function refused(error: QuantityError, message: string): ParsedQuantity {
  return { ok: false, error, message };
}

function notANumber(text: string): ParsedQuantity {
  return refused(
    "no-number",
    `${quoted(text.trim())} is no number with a unit; right would be 12' 6-1/2", 3.2 m or 2,500 lb.`,
  );
}

/** The text with one kind of blank, minus, prime and fraction. */
function plainly(text: string): string {
  return text
    .replace(/[¼-¾⅐-⅞]/g, (one) => ` ${one.normalize("NFKC")}`)
    .replace(/⁄/g, "/")
    .replace(/[‐-―−]/g, "-")
    .replace(/[‘’′]/g, "'")
    .replace(/[“”″]/g, '"')
    .replace(/\s+/g, " ")
    .replace(/ ?\/ ?(?=\d)/g, "/")
    .replace(/(\d) ?- ?(?=\d+\/)/g, "$1-")
    .trim()
    .replace(/^\+ ?/, "")
    .replace(/^- /, "-");
}

function named(text: string, kind: QuantityKind, display: Display): Unit | "ton" | undefined {
  const weight = kind === "mass" || kind === "force";
  if (weight && /^(tons?|tn)\.?$/i.test(text)) return "ton";
  if (weight && text === "T" && display.units === "us") return "ton";
  // A thousand pounds where pounds are at home; elsewhere a thousand of anything.
  if (weight && /^k$/i.test(text) && display.units === "metric") return undefined;
  return unitCalled(text, kind);
}

/** The number that digits or a fraction stand for; null if it is none, or none that is finite. */
function readNumber(text: string): number | null {
  if (text.includes("/")) {
    const [, whole, numerator, denominator] = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text) as unknown as readonly string[];
    return finite(Number(whole ?? 0) + Number(numerator) / Number(denominator));
  }
  const [, digits, exponent] = /^(.*?)(e[+-]?\d+)?$/i.exec(text) as unknown as readonly [string, string, string?];
  const decimal = withPoint(digits.replaceAll(" ", ""));
  return decimal === null ? null : finite(Number(decimal + (exponent ?? "")));
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

/** Digits with a point before the decimals, and nothing between the thousands; null where the marks make no sense. */
function withPoint(digits: string): string | null {
  const comma = digits.lastIndexOf(",");
  const point = digits.lastIndexOf(".");
  if (comma < 0 && point < 0) return digits;
  if (comma < 0 || point < 0) {
    const mark = comma < 0 ? "." : ",";
    const several = digits.indexOf(mark) !== digits.lastIndexOf(mark);
    if (several) return grouped[mark].test(digits) ? digits.replaceAll(mark, "") : null;
    return oneComma.test(digits) ? digits.replace(",", "") : digits.replace(",", ".");
  }
  // Of both marks the last one stands before the decimals.
  const last = Math.max(comma, point);
  const mark = comma < point ? "," : ".";
  const whole = digits.slice(0, last);
  return grouped[mark].test(whole) ? `${whole.replaceAll(mark, "")}.${digits.slice(last + 1)}` : null;
}

/** To fifteen figures: what was typed, without the last bits of binary fractions. */
function signed(sign: string, value: number, unit: Unit): number {
  const size = Number((value * unit.factor).toPrecision(15));
  return sign === "-" && size !== 0 ? -size : size;
}
