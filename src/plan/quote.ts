/** What somebody wrote, repeated in a sentence that refuses it. */

/** Longest stretch that is repeated, in characters. */
export const longestQuote = 60;

/** The text, cut where it is long. */
export function cut(text: string): string {
  return text.length > longestQuote ? `${text.slice(0, longestQuote)}…` : text;
}

/** The text in quotation marks, on one line, cut where it is long. */
export function quoted(text: string): string {
  return JSON.stringify(cut(text));
}
