/**
 * Shapes: what the values of a file have to look like, declared once and used three ways. Reading refuses what does
 * not fit, the compiler holds the document's types against them, and writing takes the order of keys from them.
 */

import { found, type Issue, issue } from "./refusal";

export type Scalar = null | boolean | number | string;

declare const phantom: unique symbol;

/** The shape of values of the type `Value`. */
export type Shape<Value> = AnyShape & { readonly [phantom]?: Value };
export type AnyShape = ScalarShape | ListShape | ObjectShape | Choice | Free;

interface Common {
  /** What would be right: the end of the sentence "right would be …". */
  readonly expected: string;
}

export interface ScalarShape extends Common {
  readonly kind: "scalar";
  accepts(value: Scalar): boolean;
}

/** What has to hold besides the shapes of the single values; asked when all of them fit. */
export type Rule<Value> = (value: Value) => Issue | null;

export interface ListShape extends Common {
  readonly kind: "list";
  readonly item: AnyShape;
  /** Least and greatest number of items. */
  readonly least: number;
  readonly most: number;
  readonly rule: Rule<never> | null;
}

export interface ObjectShape extends Common {
  readonly kind: "object";
  /** In the order in which they are written. */
  readonly fields: ReadonlyMap<string, Field>;
  readonly rule: Rule<never> | null;
}
export interface Field {
  readonly shape: AnyShape;
  readonly optional: boolean;
}

/** One of several shapes, told apart by whether a scalar, a list or an object stands there. */
export interface Choice extends Common {
  readonly kind: "choice";
  readonly of: readonly AnyShape[];
}

/** Whatever stands there. */
export interface Free extends Common {
  readonly kind: "free";
}

export const anything: Free = { kind: "free", expected: "anything" };

function scalar<Value extends Scalar>(expected: string, accepts: (value: Scalar) => boolean): Shape<Value> {
  return { kind: "scalar", expected, accepts };
}

export interface Range {
  readonly words: string;
  holds(value: number): boolean;
}
export const any: Range = { words: "", holds: () => true };
export const above0: Range = { words: " above 0", holds: (value) => value > 0 };
export const atLeast0: Range = { words: " of 0 or more", holds: (value) => value >= 0 };

/** A number in a range; `unit` is empty for a ratio. */
export function number(unit: string, range: Range): Shape<number> {
  const expected = `a number${range.words}${unit === "" ? "" : `, in ${unit}`}`;
  return scalar(expected, (value) => typeof value === "number" && range.holds(value));
}

export const text: Shape<string> = scalar("a text in quotation marks", (value) => typeof value === "string");
export const truth: Shape<boolean> = scalar("true or false", (value) => typeof value === "boolean");

export function textWhere<Text extends string>(expected: string, holds: (value: string) => boolean): Shape<Text> {
  return scalar(expected, (value) => typeof value === "string" && holds(value));
}

export function oneOf<const Value extends Scalar>(...values: readonly Value[]): Shape<Value> {
  const words = values.map((value) => JSON.stringify(value)).join(", ");
  const known: readonly Scalar[] = values;
  return scalar(values.length === 1 ? words : `one of ${words}`, (value) => known.includes(value));
}

/** Of two shapes the one that is of the kind of value (a scalar, a list, an object) that stands there. */
export function either<First, Second>(first: Shape<First>, second: Shape<Second>): Shape<First | Second> {
  return { kind: "choice", expected: `${first.expected}, or ${second.expected}`, of: [first, second] };
}

export function orNull<Value>(shape: Shape<Value>): Shape<Value | null> {
  return either(shape, oneOf(null));
}

interface ListLimits<Value> {
  readonly least?: number;
  readonly most?: number;
  readonly rule?: Rule<Value>;
}

/** A list, or a tuple where `least` and `most` are the same. */
export function list<Value extends readonly unknown[]>(
  expected: string,
  item: Shape<Value[number]>,
  { least = 0, most = Number.POSITIVE_INFINITY, rule }: ListLimits<Value> = {},
): Shape<Value> {
  return { kind: "list", expected, item, least, most, rule: rule ?? null };
}

/** A key that may be left out. */
export interface Optional<Value> {
  readonly leftOutOr: Shape<Value>;
}
export function optional<Value>(shape: Shape<Value>): Optional<Value> {
  return { leftOutOr: shape };
}

/** A field for every key of a type, in the order in which they are written. */
export type Fields<Whole> = {
  readonly [Key in keyof Whole]-?: Record<never, never> extends Pick<Whole, Key>
    ? Optional<Exclude<Whole[Key], undefined>>
    : Shape<Whole[Key]>;
};

export function object<Whole extends object>(
  expected: string,
  fields: Fields<Whole>,
  rule: Rule<Whole> | null = null,
): Shape<Whole> {
  const entries = Object.entries<AnyShape | Optional<unknown>>(fields);
  const map = new Map(
    entries.map(([key, field]): [string, Field] =>
      "leftOutOr" in field
        ? [key, { shape: field.leftOutOr, optional: true }]
        : [key, { shape: field, optional: false }],
    ),
  );
  return { kind: "object", expected, fields: map, rule };
}

/** The issue that a key is not there; null if all are that must be. */
export function missingKey(shape: ObjectShape, value: object): Issue | null {
  for (const [key, field] of shape.fields)
    if (!field.optional && !Object.hasOwn(value, key)) return issue(found("no such key", field.shape.expected), key);
  return null;
}

/** The shape that an object has where the given shape allows one. */
export function objectIn(shape: AnyShape): ObjectShape | Free | undefined {
  if (shape.kind === "choice") return shape.of.map(objectIn).find((one) => one !== undefined);
  return shape.kind === "object" || shape.kind === "free" ? shape : undefined;
}

/** The shape that a list has where the given shape allows one. */
export function listIn(shape: AnyShape): ListShape | Free | undefined {
  if (shape.kind === "choice") return shape.of.map(listIn).find((one) => one !== undefined);
  return shape.kind === "list" || shape.kind === "free" ? shape : undefined;
}
