/** The smallest pieces of JSON text (RFC 8259): blanks, marks, strings, numbers and words, from left to right. */

import { cut, quoted } from "../quote";
import { found, type Issue, issue } from "./refusal";
import type { Scalar } from "./shape";

const code = {
  tab: 0x09,
  newline: 0x0a,
  return: 0x0d,
  space: 0x20,
  quote: 0x22,
  plus: 0x2b,
  minus: 0x2d,
  point: 0x2e,
  zero: 0x30,
  nine: 0x39,
  backslash: 0x5c,
  lowerE: 0x65,
} as const;

/** Any whole number of so many digits is exact in binary. */
const exactDigits = 15;
/** Turns a capital letter into a small one. */
const smallLetter = 0x20;

const words: readonly (readonly [string, Scalar])[] = [
  ["true", true],
  ["false", false],
  ["null", null],
];
const finite = "a finite number";
const notFinite = /^(?:NaN|[+-]?Infinity)/;

/** Reads on from `at`. A function that meets something else than it should leaves why in `fault`. */
export class Tokens {
  fault: Issue | null = null;
  private at = 0;
  private readonly text: string;
  private readonly end: number;

  constructor(text: string) {
    this.text = text;
    this.end = text.length;
  }

  /** Steps over blanks, and then over the mark if it comes next. */
  take(mark: number): boolean {
    if (this.next() !== mark) return false;
    this.at += 1;
    return true;
  }

  /** Whether nothing but blanks is left. */
  atEnd(): boolean {
    this.next();
    return this.at >= this.end;
  }

  /** A string; undefined if there is none. */
  string(): string | undefined {
    if (this.next() !== code.quote) return this.wrong("a key in quotation marks");
    return this.restOfString();
  }

  /** A string, a number or a word; undefined if there is none. `path` says where in the document. */
  scalar(path: () => (string | number)[]): Scalar | undefined {
    const character = this.next();
    if (character === code.quote) return this.restOfString();
    if (character >= code.zero && character <= code.nine) return this.number(path);
    for (const [spelling, value] of words) {
      if (!this.text.startsWith(spelling, this.at)) continue;
      this.at += spelling.length;
      return value;
    }
    const notNumber = notFinite.exec(this.text.slice(this.at, this.at + "-Infinity".length));
    if (notNumber !== null) return this.stop(issue(found(notNumber[0], finite), ...path()));
    return this.number(path);
  }

  /** Says that something else than `expected` comes next. */
  wrong(expected: string): undefined {
    if (this.at >= this.end) {
      const what = `the end of the file where ${expected} should come`;
      return this.stop(issue(found(what, "the whole file")));
    }
    let line = 1;
    let lineBegins = 0;
    for (let index = 0; index < this.at; index += 1) {
      if (this.text.charCodeAt(index) !== code.newline) continue;
      line += 1;
      lineBegins = index + 1;
    }
    const column = this.at - lineBegins + 1;
    const character = quoted(String.fromCodePoint(this.text.codePointAt(this.at)!));
    const what = `${character} at line ${line}, column ${column}, where it is not JSON`;
    return this.stop(issue(found(what, expected)));
  }

  stop(fault: Issue): undefined {
    this.fault = fault;
    return undefined;
  }

  /** The character that comes next, blanks left out; NaN at the end. */
  private next(): number {
    for (; ; this.at += 1) {
      const character = this.text.charCodeAt(this.at);
      if (character !== code.space && character !== code.newline && character !== code.return && character !== code.tab)
        return character;
    }
  }

  private restOfString(): string | undefined {
    const start = this.at;
    let escaped = false;
    for (this.at += 1; this.at < this.end; this.at += 1) {
      const character = this.text.charCodeAt(this.at);
      if (character === code.quote) {
        this.at += 1;
        return escaped ? this.unescaped(start) : this.text.slice(start + 1, this.at - 1);
      }
      if (character < code.space) return this.wrong("an escape such as \\n, or the end of the text");
      if (character === code.backslash) {
        escaped = true;
        this.at += 1;
      }
    }
    this.at = this.end;
    return this.wrong("the end of a text, a quotation mark,");
  }

  private unescaped(start: number): string | undefined {
    try {
      return JSON.parse(this.text.slice(start, this.at)) as string;
    } catch {
      this.at = start;
      return this.wrong("a text with no escapes but those of JSON");
    }
  }

  private number(path: () => (string | number)[]): number | undefined {
    const start = this.at;
    const negative = this.skip(code.minus);
    if (!this.skip(code.zero) && !this.skipDigits()) return this.wrong(negative ? "a digit" : "a value");
    if (!negative && this.at - start <= exactDigits && !this.continues()) return this.whole(start);
    if (this.skip(code.point) && !this.skipDigits()) return this.wrong("a digit");
    if ((this.text.charCodeAt(this.at) | smallLetter) === code.lowerE) {
      this.at += 1;
      if (!this.skip(code.minus)) this.skip(code.plus);
      if (!this.skipDigits()) return this.wrong("a digit");
    }
    const written = this.text.slice(start, this.at);
    const value = Number(written);
    if (Number.isFinite(value)) return value;
    return this.stop(issue(found(cut(written), finite), ...path()));
  }

  /** Whether a whole number goes on as a fraction or with an exponent. */
  private continues(): boolean {
    const character = this.text.charCodeAt(this.at);
    return character === code.point || (character | smallLetter) === code.lowerE;
  }

  /** The value of the digits read since `start`: exact, and quicker than by way of a text. */
  private whole(start: number): number {
    let value = 0;
    for (let index = start; index < this.at; index += 1) value = 10 * value + this.text.charCodeAt(index) - code.zero;
    return value;
  }

  private skip(character: number): boolean {
    if (this.text.charCodeAt(this.at) !== character) return false;
    this.at += 1;
    return true;
  }

  private skipDigits(): boolean {
    const start = this.at;
    while (this.text.charCodeAt(this.at) >= code.zero && this.text.charCodeAt(this.at) <= code.nine) this.at += 1;
    return this.at > start;
  }
}
