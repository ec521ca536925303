/** Arithmetic as text: what is put in can be evaluated again, by a person with a calculator or by a program. */

/** Figures of the numbers that are put in: enough that the result comes out to every figure shown. */
const figuresIn = 10;
/** Figures of a result that is shown. */
const figuresShown = 5;
/** Terms of a sum that are written out; the rest is one number. */
const mostTerms = 12;

/** A number in a formula; a negative one in brackets. */
export function put(value: number): string {
  const text = plain(Number(value.toPrecision(figuresIn)));
  return value < 0 ? `(${text})` : text;
}

/** A result as it is shown beside its formula. */
export function shown(value: number): string {
  return plain(Number(value.toPrecision(figuresShown)));
}

/** Without an exponent where that stays readable. */
function plain(value: number): string {
  const text = String(value);
  return text.includes("e") && Math.abs(value) >= 1e-9 && Math.abs(value) < 1e15
    ? value.toFixed(Math.max(0, figuresIn - 1 - Math.floor(Math.log10(Math.abs(value))))).replace(/\.?0+$/, "")
    : text;
}

/** a + b + c; beyond a dozen terms the rest added up. */
export function sum(terms: readonly { readonly text: string; readonly value: number }[]): string {
  if (terms.length === 0) return "0";
  const written = terms.length > mostTerms ? terms.slice(0, mostTerms - 1) : terms;
  const rest = terms.slice(written.length).reduce((total, { value }) => total + value, 0);
  const texts = written.map(({ text }) => text);
  return [...texts, ...(written.length < terms.length ? [put(rest)] : [])].join(" + ");
}
