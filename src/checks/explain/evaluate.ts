/** Evaluates the text of a formula: numbers, + − * / ( ) and a few functions. */

const functions: Readonly<Record<string, (...values: number[]) => number>> = {
  min: Math.min,
  max: Math.max,
  sqrt: Math.sqrt,
  hypot: Math.hypot,
  log10: Math.log10,
  abs: Math.abs,
};

/** The value of a formula's text. Throws where it is not one: only our own texts are evaluated. */
export function evaluate(text: string): number {
  const tokens = text.match(/\d+(?:\.\d+)?(?:e[+-]?\d+)?|[a-z]+(?:10)?|[-+*/(),]/g) ?? [];
  let next = 0;
  const take = (token: string) => {
    if (tokens[next] !== token) throw new Error(`${token} is missing in ${text}`);
    next += 1;
  };

  function sum(): number {
    let value = product();
    while (tokens[next] === "+" || tokens[next] === "-") value += tokens[next++] === "+" ? product() : -product();
    return value;
  }
  function product(): number {
    let value = factor();
    while (tokens[next] === "*" || tokens[next] === "/") {
      if (tokens[next++] === "*") value *= factor();
      else value /= factor();
    }
    return value;
  }
  function factor(): number {
    const token = tokens[next++] ?? "";
    if (token === "-") return -factor();
    if (token === "(") {
      const value = sum();
      take(")");
      return value;
    }
    const call = functions[token];
    if (call === undefined) return Number(token);
    take("(");
    const values = [sum()];
    while (tokens[next] === ",") {
      next += 1;
      values.push(sum());
    }
    take(")");
    return call(...values);
  }

  const value = sum();
  if (next !== tokens.length || Number.isNaN(value)) throw new Error(`${text} is no formula`);
  return value;
}
