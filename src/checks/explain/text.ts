/** Arithmetic as text: what is put in can be evaluated again, by a person with a calculator or by a program. */

/** Writes a number into a formula. */
export type Put = (value: number) => string;

/** Figures of a result that is shown. */
const figuresShown = 5;
/** Terms of a sum that are written out; the rest is one number. */
const mostTerms = 12;

/** Writes numbers with so many figures, a negative one in brackets. */
export function putting(figures: number): Put {
  return (value) => {
    const text = plain(Number(value.toPrecision(figures)));
    return value < 0 ? `(${text})` : text;
  };
}

/** A result as it is shown beside its formula. */
export function shown(value: number): string {
  return plain(Number(value.toPrecision(figuresShown)));
}

/** Without an exponent where that stays readable. */
function plain(value: number): string {
  const text = String(value);
  const size = Math.abs(value);
  if (!text.includes("e") || size < 1e-12 || size >= 1e15) return text;
  const decimals = Math.min(100, Math.max(0, 17 - Math.floor(Math.log10(size))));
  return Number(value.toFixed(decimals)) === value ? value.toFixed(decimals).replace(/\.?0+$/, "") : text;
}

/** a + b + c; beyond a dozen terms the rest added up. */
export function sum(terms: readonly { readonly text: string; readonly value: number }[], put: Put): string {
  if (terms.length === 0) return "0";
  const written = terms.length > mostTerms ? terms.slice(0, mostTerms - 1) : terms;
  const rest = terms.slice(written.length).reduce((total, { value }) => total + value, 0);
  const texts = written.map(({ text }) => text);
  return [...texts, ...(written.length < terms.length ? [put(rest)] : [])].join(" + ");
}
