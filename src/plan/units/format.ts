/** Quantities as they are shown: US customary in feet, inches and sixteenths, lb or kip; metric in mm, kg, kN or t. */

import type { Display } from "../types";
import { inch, type QuantityKind, shownIn, type Unit } from "./units";

/** A length below this, in inches, is too small for sixteenths and shown in thousandths. */
const leastInSixteenths = 1 / 4;
/** A length that lies within this of a sixteenth of an inch, in sixteenths, was one when it was typed. */
const onSixteenth = 1e-5;
/** A number that a shorter one equals to within this fraction is shown as that one. */
const equal = 1e-9;

/** A quantity to look at, in the display units: rounded, thousands apart. SI in, with the unit out. */
export function formatQuantity(value: number, kind: QuantityKind, display: Display): string {
  const unit = shownIn(kind, display);
  const size = Math.abs(value);
  const text = inInches(unit) ? roundedInches(size / inch, unit) : rounded(size / unit.factor, unit);
  return value < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}

/** A quantity to be typed over: in the display units, to a sixteenth of an inch or six decimals. SI in, unit out. */
export function editQuantity(value: number, kind: QuantityKind, display: Display): string {
  const unit = shownIn(kind, display);
  const size = Math.abs(value);
  const text = inInches(unit) ? exactInches(size / inch, unit) : withUnit(sixDecimals(size / unit.factor), unit);
  return value < 0 && /[1-9]/.test(text) ? `-${text}` : text;
}

type Inches = "ft-in" | "in";

function inInches(unit: Unit | Inches): unit is Inches {
  return typeof unit === "string";
}

/** At most six decimals, and no more than the figures that a stored number can be trusted to keep. */
function sixDecimals(size: number): string {
  return String(Number(Number(size.toPrecision(14)).toFixed(6)));
}

function roundedInches(inches: number, unit: Inches): string {
  const sixteenths = Math.round(16 * inches);
  const small = inches < leastInSixteenths && Math.abs(16 * inches - sixteenths) > onSixteenth;
  return small ? `${inches.toFixed(3)}"` : inSixteenths(sixteenths, unit);
}

function exactInches(inches: number, unit: Inches): string {
  const sixteenths = Math.round(16 * inches);
  if (Math.abs(16 * inches - sixteenths) <= onSixteenth) return inSixteenths(sixteenths, unit);
  const feet = unit === "in" ? 0 : Math.floor(inches / 12);
  const rest = `${sixDecimals(inches - 12 * feet)}"`;
  return feet === 0 ? rest : `${feet}' ${rest}`;
}

/** `12' 6-1/2"`, or in inches alone `150-1/2"` */
function inSixteenths(sixteenths: number, unit: Inches): string {
  const feet = unit === "in" ? 0 : Math.floor(sixteenths / 192);
  const inches = Math.floor(sixteenths / 16) - 12 * feet;
  const [numerator, denominator] = lowest(sixteenths % 16, 16);
  const fraction = numerator === 0 ? [] : [`${numerator}/${denominator}`];
  const whole = inches === 0 && fraction.length > 0 ? [] : [inches];
  const text = `${[...whole, ...fraction].join("-")}"`;
  if (feet === 0) return text;
  return text === '0"' ? `${feet}'` : `${feet}' ${text}`;
}

function lowest(numerator: number, denominator: number): readonly [number, number] {
  return numerator % 2 === 0 && denominator > 1 ? lowest(numerator / 2, denominator / 2) : [numerator, denominator];
}

function rounded(size: number, unit: Unit): string {
  const leading = size === 0 ? 0 : Math.floor(Math.log10(size));
  const most = Math.min(unit.decimals, Math.max(0, unit.figures - 1 - leading));
  let decimals = 0;
  while (decimals < most && Math.abs(Number(size.toFixed(decimals)) - size) > equal * size) decimals += 1;
  return withUnit(grouped(size.toFixed(decimals), unit.customary), unit);
}

/** Thousands apart: by commas in customary units, by narrow blanks from five digits on in metric ones. */
function grouped(digits: string, customary: boolean): string {
  const [whole, decimals] = digits.split(".") as [string, string?];
  const apart = customary || whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, customary ? "," : "\u202f") : whole;
  return decimals === undefined ? apart : `${apart}.${decimals}`;
}

function withUnit(digits: string, { name }: Unit): string {
  if (name === "") return digits;
  return name === "°" ? digits + name : `${digits} ${name}`;
}
