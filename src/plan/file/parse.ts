/**
 * JSON text (RFC 8259) read against a shape, in one pass and without recursion. From the first thing that does not fit,
 * the rest is only gone through to see that it is whole: nothing is made of it, so that a hostile file costs no more than
 * its length. Stricter than the platform's parser: no key twice in one object, no number beyond the finite ones, no
 * endless nesting.
 */

import { quoted } from "../quote";
import { found, type Issue, issue, shown } from "./refusal";
import {
  type AnyShape,
  anything,
  type Free,
  type ListShape,
  listIn,
  missingKey,
  type ObjectShape,
  objectIn,
  type Scalar,
  type Shape,
} from "./shape";
import { Tokens } from "./tokens";

/** How many objects and lists may lie in one another. A plan has no more than 8. */
const deepest = 64;

/** An object of more keys is no part of a plan of any version: what does not fit is then said at once. */
const mostKeys = 1000;

/** An array that has grown from empty keeps room for so many items, to no use in some hundred thousand points. */
const roomOfGrown = 17;

const comma = 0x2c;
const colon = 0x3a;
const opening = { object: 0x7b, list: 0x5b } as const;
const closing = { object: 0x7d, list: 0x5d } as const;

interface OpenObject {
  readonly kind: "object";
  readonly shape: ObjectShape | Free;
  readonly value: Record<string, unknown>;
  /** How many keys there are so far. */
  count: number;
  /** Where the next value goes, and what it must look like. */
  key: string;
  next: AnyShape;
}
interface OpenList {
  readonly kind: "list";
  readonly shape: ListShape | Free;
  readonly value: unknown[];
  key: number;
  readonly next: AnyShape;
}

export type Parsed<Value> =
  | { readonly kind: "fits"; readonly value: Value }
  /** JSON, but not of the shape. `outermost` holds what the outermost object says in single values; null if there is none. */
  | { readonly kind: "misfit"; readonly issue: Issue; readonly outermost: Readonly<Record<string, unknown>> | null }
  /** Not JSON, or not such as any plan is. */
  | { readonly kind: "fault"; readonly issue: Issue };

/** The value that the text stands for, if it fits the shape. */
export function parse<Value>(text: string, shape: Shape<Value>): Parsed<Value> {
  const tokens = new Tokens(text);
  const open: (OpenObject | OpenList)[] = [];
  let misfit: Issue | null = null;

  /** Where the value that is being read goes, or what it lies in, so many levels further out. */
  const path = (outwards = 0) => open.slice(0, open.length - outwards).map(({ key }) => key);
  const stop = (message: string) => tokens.stop(issue(message, ...path()));
  function refuse(message: string, where = path()): void {
    misfit ??= issue(message, ...where);
  }

  // Each of the following answers a value that is complete, or undefined where one is only begun or there is a fault.

  function readScalar(right: AnyShape): unknown {
    const value = tokens.scalar(path);
    if (value !== undefined && misfit === null && !fits(right, value)) refuse(found(shown(value), right.expected));
    return value;
  }

  function beginObject(right: AnyShape): unknown {
    const own = misfit === null ? objectIn(right) : anything;
    if (own === undefined) refuse(found("an object", right.expected));
    const object: OpenObject = { kind: "object", shape: own ?? anything, value: {}, count: 0, key: "", next: anything };
    if (!push(object)) return undefined;
    return tokens.take(closing.object) ? end(object) : beginKey(object);
  }

  function beginList(right: AnyShape): unknown {
    const own = misfit === null ? listIn(right) : anything;
    if (own === undefined) refuse(found("a list", right.expected));
    const next = own?.kind === "list" ? own.item : anything;
    const list: OpenList = { kind: "list", shape: own ?? anything, value: [], key: 0, next };
    if (!push(list)) return undefined;
    return tokens.take(closing.list) ? end(list) : undefined;
  }

  function push(container: OpenObject | OpenList): boolean {
    if (open.length < deepest) return open.push(container) > 0;
    tokens.stop(issue(found(`more than ${deepest} objects and lists in one another`, "a plan, which has at most 8")));
    return false;
  }

  function beginKey(object: OpenObject): undefined {
    const key = tokens.string();
    if (key === undefined) return undefined;
    object.key = key;
    if (Object.hasOwn(object.value, key)) return stop(found(`the key ${quoted(key)} twice in one object`, "once"));
    if (!tokens.take(colon)) return tokens.wrong("a colon");
    object.count += 1;
    if (misfit !== null && object.count > mostKeys) return tokens.stop(misfit);
    if (object.shape.kind === "free" || misfit !== null) return undefined;
    const { fields } = object.shape;
    const field = fields.get(key);
    object.next = field?.shape ?? anything;
    if (field === undefined) refuse(found(`the unknown key ${quoted(key)}`, `only ${[...fields.keys()].join(", ")}`));
    return undefined;
  }

  function beginItem(list: OpenList): undefined {
    list.key += 1;
    if (list.shape.kind === "list" && list.key === list.shape.most)
      refuse(found(`a list of more than ${list.shape.most}`, list.shape.expected), path(1));
    return undefined;
  }

  /** Puts a complete value where it belongs. */
  function settle(inside: OpenObject | OpenList, value: unknown): unknown {
    const kept = misfit === null || (open.length === 1 && typeof value !== "object");
    if (inside.kind === "object") put(inside, kept ? value : true);
    else if (kept) inside.value.push(value);

    if (tokens.take(comma)) return inside.kind === "object" ? beginKey(inside) : beginItem(inside);
    if (tokens.take(closing[inside.kind])) return end(inside);
    return tokens.wrong(inside.kind === "object" ? "a comma or a closing brace" : "a comma or a closing bracket");
  }

  function end(container: OpenObject | OpenList): unknown {
    if (misfit === null) {
      const wrong = container.kind === "object" ? wrongInObject(container) : wrongInList(container);
      if (wrong !== null) refuse(wrong.message, [...path(1), ...wrong.path]);
    }
    open.pop();
    return container.kind === "list" && container.value.length < roomOfGrown
      ? container.value.slice()
      : container.value;
  }

  for (;;) {
    const right = misfit === null ? (open.at(-1)?.next ?? shape) : anything;
    let value: unknown;
    if (tokens.take(opening.object)) value = beginObject(right);
    else if (tokens.take(opening.list)) value = beginList(right);
    else value = readScalar(right);

    while (value !== undefined) {
      const inside = open.at(-1);
      if (inside !== undefined) value = settle(inside, value);
      else if (!tokens.atEnd()) value = tokens.wrong("the end of the file");
      else if (misfit === null) return { kind: "fits", value: value as Value };
      else return { kind: "misfit", issue: misfit, outermost: isObject(value) ? value : null };
    }
    if (tokens.fault !== null) return { kind: "fault", issue: tokens.fault };
  }
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function put(object: OpenObject, value: unknown): void {
  // Set plainly, this one key would change the object's prototype.
  if (object.key === "__proto__") Object.defineProperty(object.value, object.key, { value, enumerable: true });
  else object.value[object.key] = value;
}

function fits(shape: AnyShape, value: Scalar): boolean {
  switch (shape.kind) {
    case "scalar":
      return shape.accepts(value);
    case "choice":
      return shape.of.some((one) => fits(one, value));
    case "free":
      return true;
    case "list":
    case "object":
      return false;
  }
}

function wrongInObject({ shape, value }: OpenObject): Issue | null {
  if (shape.kind === "free") return null;
  return missingKey(shape, value) ?? shape.rule?.(value as never) ?? null;
}

function wrongInList({ shape, value }: OpenList): Issue | null {
  if (shape.kind === "free") return null;
  if (value.length < shape.least) return issue(found(shown(value), shape.expected));
  return shape.rule?.(value as never) ?? null;
}
