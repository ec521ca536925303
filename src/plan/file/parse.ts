/**
 * JSON text (RFC 8259) read against a shape, in one pass and without recursion. What does not fit is refused where it
 * begins, before anything is made of it, so that a hostile file costs no more than its length. Stricter than the
 * platform's parser: no key twice in one object, no number beyond the finite ones, no endless nesting.
 */

import { quoted } from "../quote";
import { found, type Issue, issue, shown } from "./refusal";
import {
  type AnyShape,
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
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly issue: Issue };

/** The value that the text stands for, if it fits the shape. */
export function parse<Value>(text: string, shape: Shape<Value>): Parsed<Value> {
  const tokens = new Tokens(text);
  const open: (OpenObject | OpenList)[] = [];

  /** Where the value that is being read goes, or what it lies in, so many levels further out. */
  const path = (outwards = 0) => open.slice(0, open.length - outwards).map(({ key }) => key);
  const refuse = (message: string, outwards = 0) => tokens.stop(issue(message, ...path(outwards)));

  // Each of the following answers a value that is complete, or undefined where one is only begun or there is a fault.

  function readScalar(right: AnyShape): unknown {
    const value = tokens.scalar(path);
    if (value === undefined || fits(right, value)) return value;
    return refuse(found(shown(value), right.expected));
  }

  function beginObject(right: AnyShape): unknown {
    const own = objectIn(right);
    if (own === undefined) return refuse(found("an object", right.expected));
    const object: OpenObject = { kind: "object", shape: own, value: {}, key: "", next: own };
    if (!push(object)) return undefined;
    if (tokens.take(closing.object)) return end(object);
    return beginKey(object);
  }

  function beginList(right: AnyShape): unknown {
    const own = listIn(right);
    if (own === undefined) return refuse(found("a list", right.expected));
    const list: OpenList = { kind: "list", shape: own, value: [], key: 0, next: own.kind === "list" ? own.item : own };
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
    if (Object.hasOwn(object.value, key)) return refuse(found(`the key ${quoted(key)} twice in one object`, "once"));
    if (!tokens.take(colon)) return tokens.wrong("a colon");
    if (object.shape.kind === "free") return undefined;
    const next = object.shape.fields.get(key)?.shape ?? object.shape.others;
    if (next !== null) object.next = next;
    else refuse(found(`the unknown key ${quoted(key)}`, `only ${[...object.shape.fields.keys()].join(", ")}`));
    return undefined;
  }

  function beginItem(list: OpenList): undefined {
    list.key += 1;
    if (list.shape.kind === "list" && list.key === list.shape.most)
      refuse(found(`a list of more than ${list.shape.most}`, list.shape.expected), 1);
    return undefined;
  }

  /** Puts a complete value where it belongs. */
  function settle(inside: OpenObject | OpenList, value: unknown): unknown {
    const kept = inside.next.kind !== "free" || inside.next.kept;
    if (inside.kind === "object") put(inside, kept ? value : true);
    else if (kept) inside.value.push(value);

    if (tokens.take(comma)) return inside.kind === "object" ? beginKey(inside) : beginItem(inside);
    if (tokens.take(closing[inside.kind])) return end(inside);
    return tokens.wrong(inside.kind === "object" ? "a comma or a closing brace" : "a comma or a closing bracket");
  }

  function end(container: OpenObject | OpenList): unknown {
    const wrong = container.kind === "object" ? wrongInObject(container) : wrongInList(container);
    if (wrong !== null) return tokens.stop(issue(wrong.message, ...path(1), ...wrong.path));
    open.pop();
    return container.kind === "list" && container.value.length < roomOfGrown
      ? container.value.slice()
      : container.value;
  }

  for (;;) {
    const right = open.at(-1)?.next ?? shape;
    let value: unknown;
    if (tokens.take(opening.object)) value = beginObject(right);
    else if (tokens.take(opening.list)) value = beginList(right);
    else value = readScalar(right);

    while (value !== undefined) {
      const inside = open.at(-1);
      if (inside !== undefined) value = settle(inside, value);
      else if (tokens.atEnd()) return { ok: true, value: value as Value };
      else value = tokens.wrong("the end of the file");
    }
    if (tokens.fault !== null) return { ok: false, issue: tokens.fault };
  }
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
