/** What of a plan is drawn by hand: the piece's outline and zones, the bay and what is in it. One list of them all. */

import type { Bay, Piece, Plan, Point } from "../../plan";

export type ShapeKind =
  | "outline"
  | "restZone"
  | "noRestZone"
  | "workWindow"
  | "bay"
  | "obstacle"
  | "noFootZone"
  | "walkway"
  | "lane";

/** One shape of a plan: `index` in the list of its kind, of a lane that of its walkway, 0 for the piece and the bay. */
export interface ShapeRef {
  readonly kind: ShapeKind;
  readonly index: number;
}

export interface Shape extends ShapeRef {
  readonly name: string;
  /** In the frame of its kind, m; a walkway's two ends. */
  readonly points: readonly Point[];
}

export interface ShapeNature {
  /** What one of them is called. */
  readonly word: string;
  /** The same with its article. */
  readonly one: string;
  readonly frame: "piece" | "bay";
  /** What its two coordinates are called. */
  readonly axes: readonly [string, string];
  /** Whether the points enclose an area. */
  readonly closed: boolean;
  /** What a new one is called, with a number behind it; null where it has no name of its own. */
  readonly newName: string | null;
}

const onPiece = { frame: "piece", axes: ["Along", "Across"], closed: true } as const;
const inBay = { frame: "bay", axes: ["x", "y"], closed: true } as const;

export const shapeNatures: Readonly<Record<ShapeKind, ShapeNature>> = {
  outline: { ...onPiece, word: "outline of the piece", one: "the outline of the piece", newName: null },
  restZone: { ...onPiece, word: "bearing area", one: "a bearing area", newName: null },
  noRestZone: { ...onPiece, word: "keep-off zone", one: "a keep-off zone", newName: "keep off" },
  workWindow: {
    ...onPiece,
    word: "zone to keep clear for work",
    one: "a zone to keep clear for work",
    newName: "work",
  },
  bay: { ...inBay, word: "outline of the bay", one: "the outline of the bay", newName: null },
  obstacle: { ...inBay, word: "obstacle", one: "an obstacle", newName: "column" },
  noFootZone: { ...inBay, word: "no-foot zone", one: "a no-foot zone", newName: "no feet" },
  walkway: { ...inBay, word: "walkway", one: "a walkway", closed: false, newName: "walkway" },
  lane: { ...inBay, word: "painted lane", one: "a painted lane", newName: null },
};

type Drawn = Pick<Plan, "piece" | "bay">;

/** Every shape of a plan, those drawn over the others last. */
export function shapesOf({ piece, bay }: Drawn): readonly Shape[] {
  return [...(bay === null ? [] : bayShapes(bay)), ...pieceShapes(piece)];
}

function bayShapes(bay: Bay): readonly Shape[] {
  return [
    { kind: "bay", index: 0, name: "bay", points: bay.outline },
    ...bay.walkways.flatMap(({ name, lane }, index): Shape[] =>
      lane === null ? [] : [{ kind: "lane", index, name: `lane of ${name}`, points: lane }],
    ),
    ...bay.walkways.map(({ name, from, to }, index): Shape => ({ kind: "walkway", index, name, points: [from, to] })),
    ...named("noFootZone", bay.noFootZones),
    ...named("obstacle", bay.obstacles),
  ];
}

function pieceShapes(piece: Piece): readonly Shape[] {
  return [
    { kind: "outline", index: 0, name: piece.name, points: piece.outline },
    ...(piece.restZones ?? []).map(
      (points, index): Shape => ({ kind: "restZone", index, name: `bearing area ${index + 1}`, points }),
    ),
    ...named("noRestZone", piece.noRestZones),
    ...named("workWindow", piece.workWindows),
  ];
}

function named(
  kind: ShapeKind,
  zones: readonly { readonly name: string; readonly polygon: readonly Point[] }[],
): readonly Shape[] {
  return zones.map(({ name, polygon }, index) => ({ kind, index, name, points: polygon }));
}

/** The shape of a plan; null where it has none there. */
export function shapeOf(plan: Drawn, { kind, index }: ShapeRef): Shape | null {
  return shapesOf(plan).find((shape) => shape.kind === kind && shape.index === index) ?? null;
}

/** What a further one of a kind is called: its word and the first number that is free. */
export function newShapeName(plan: Drawn, kind: ShapeKind): string {
  const base = shapeNatures[kind].newName ?? shapeNatures[kind].word;
  const taken = new Set(shapesOf(plan).map(({ name }) => name));
  for (let number = 1; ; number += 1) if (!taken.has(`${base} ${number}`)) return `${base} ${number}`;
}

/** Where a point mass or a load would lie beyond an outline that begins at `least` and is `length` long, as a sentence. */
export function leftBeyond(plan: Pick<Plan, "piece" | "steps">, least: number, length: number): string | null {
  const off = (s: number): boolean => s < least || s > least + length;
  const mass = plan.piece.masses.find((one) => one.kind === "point" && off(one.s));
  if (mass !== undefined) return `The weight ${mass.name} would lie beyond the outline; move it first.`;
  for (const step of plan.steps) {
    const load = step.loads.find(({ s }) => off(s));
    if (load !== undefined)
      return `The load ${load.name} of the step ${step.name} would lie beyond the outline; move it first.`;
  }
  const line = plan.piece.masses.find((one) => one.kind === "line" && (one.from >= least + length || one.to <= least));
  return line === undefined ? null : `The weight ${line.name} would lie beyond the outline; move it first.`;
}
