/** Numbers of the result file: finite or null, and minus zero is zero. */

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** Finite, or null. */
export function number(value: number | null | undefined): number | null {
  if (value === null || value === undefined || !Number.isFinite(value)) return null;
  return value === 0 ? 0 : value;
}

export function numbers(values: readonly number[] | null | undefined): Json {
  return values === null || values === undefined ? null : values.map(number);
}

/** A place on the piece, or null. */
export function place(at: { readonly s: number; readonly t: number } | null | undefined): Json {
  return at === null || at === undefined ? null : { s: number(at.s), t: number(at.t) };
}
