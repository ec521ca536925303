/**
 * A plan from the few questions that somebody in the shop can answer. Every question takes "don't know" (null): then
 * the plan says what was taken instead, in its notes, and the weight gets the ± that goes with it.
 */

import type {
  Display,
  ForceUnit,
  LayoutId,
  MassDocument,
  MassId,
  PlacementDocument,
  PlanDocument,
  Point,
  StandDocument,
  StandId,
  StandTypeDocument,
  StepId,
  WeightBasis,
} from "../plan";
import { type GenericStand, genericStands } from "./genericStands";

export type PieceKind = "member" | "die" | "plate";

export interface NewPlanAnswers {
  readonly kind: PieceKind | null;
  readonly name: string;
  /** m. */
  readonly length: number | null;
  readonly width: number | null;
  readonly depth: number | null;
  /** kg. */
  readonly mass: number | null;
  /** How the weight is known; null counts as a guess. */
  readonly basis: WeightBasis | null;
  /** Where the centre of gravity is: in the middle because both halves are alike, at a marked place, or not known. */
  readonly centre: { readonly kind: "middle" } | { readonly kind: "at"; readonly s: number; readonly t: number } | null;
  readonly standCount: number | null;
  /** Id of a generic stand. */
  readonly stand: string | null;
  /** What the plate on the stand says, N, and whether it speaks of one stand or of a pair. */
  readonly rating: { readonly load: number; readonly per: RatedPer | null } | null;
  /** How the tops are set. */
  readonly tops: keyof typeof levelToleranceOf | null;
  readonly display: Partial<Display>;
}

export type RatedPer = "stand" | "pair";

/** ± on a weight by how it is known: custom, no source. */
export const uncertaintyOf: Readonly<Record<WeightBasis, number>> = {
  scale: 0.01,
  hook: 0.02,
  maker: 0.05,
  model: 0.05,
  calculated: 0.1,
  guess: 0.25,
};

/** The centre of gravity of a guessed piece lies within this share of length and width, either way: custom, no source. */
export const centreShare = 0.1;

/** ± on the height of a top, m, by how it is set: common practice. */
export const levelToleranceOf = { touch: 0.0005, laser: 0.003, tape: 0.006 } as const;

/** Sizes to begin with where none is known, m, and how much of the enclosing block is steel. Custom, no source. */
const typical: Readonly<
  Record<PieceKind, { length: number; width: number; depth: number; solid: number; stand: string; name: string }>
> = {
  member: { length: 6, width: 0.3, depth: 0.6, solid: 0.15, stand: "horse", name: "Long member" },
  die: { length: 2.4, width: 1.5, depth: 0.8, solid: 0.7, stand: "die-stand", name: "Die" },
  plate: { length: 3, width: 1.5, depth: 0.05, solid: 1, stand: "low-horse", name: "Plate" },
};

/** kg/m³. */
const steel = 7850;

/** Distance of two stands from the ends, as a share of the length, where the ends of an even member stay parallel. */
const besselShare = 0.2203;

const ids = { mass: "piece" as MassId, layout: "A" as LayoutId, step: "set-down" as StepId };

/**
 * The plan that the answers make: rigid until a section is picked, on stands square to the piece, one step in which it
 * is set down, no bay. What was not known is listed in the notes.
 */
export function newPlan(answers: NewPlanAnswers): PlanDocument {
  const kind = answers.kind ?? "member";
  const start = typical[kind];
  const length = answers.length ?? start.length;
  const width = answers.width ?? start.width;
  const depth = answers.depth ?? start.depth;
  const mass = answers.mass ?? Math.round(length * width * depth * start.solid * steel);
  const item = massOf(answers, { length, width, depth, mass });
  const generic = genericStands.find(({ type }) => type.id === (answers.stand ?? start.stand)) ?? genericStands[0]!;
  const count = answers.standCount ?? 2;
  const stands = Array.from({ length: count }, (_, index): StandDocument => {
    return {
      id: `${generic.mark}-${index + 1}` as StandId,
      type: generic.type.id,
      condition: "in-service",
      lastInspected: null,
    };
  });
  const centre: Point = answers.centre?.kind === "at" ? [answers.centre.s, answers.centre.t] : [length / 2, 0];
  const places = standPlaces(kind, [length, width], count, centre, generic.type.top);
  const name = answers.name.trim() === "" ? start.name : answers.name.trim();
  return {
    format: "trestleboard-plan",
    version: 1,
    title: name,
    notes: notKnown(answers).join("\n"),
    display: answers.display,
    piece: {
      name,
      ends: { datum: "end A", far: "end B" },
      pose: { x: 0, y: 0, heading: 0 },
      outline: [
        [0, -width / 2],
        [length, -width / 2],
        [length, width / 2],
        [0, width / 2],
      ],
      depth,
      stiffness: "rigid",
      masses: [item],
    },
    standTypes: [ratedType(generic, answers)],
    stands,
    layouts: [
      {
        id: ids.layout,
        name: "Layout A",
        placements: stands.map(
          (stand, index): PlacementDocument => ({
            stand: stand.id,
            s: places[index]?.[0] ?? 0,
            t: places[index]?.[1] ?? 0,
            angle: 0,
            height: generic.height,
            shim: 0,
          }),
        ),
      },
    ],
    steps: [{ id: ids.step, name: "Set down", layout: ids.layout, setDown: true }],
    criteria: criteriaFrom(answers),
  };
}

interface Sizes {
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly mass: number;
}

/**
 * The weight as one mass. Along an even piece it is a line mass; with its centre at σ·length, ⅓ ≤ σ ≤ ⅔, the line
 * grows evenly from m/l·(4 − 6σ) to m/l·(6σ − 2); else, and where the centre is not known, it is a point mass.
 */
function massOf(answers: NewPlanAnswers, { length, width, depth, mass }: Sizes): MassDocument {
  const basis = answers.mass === null ? "guess" : (answers.basis ?? "guess");
  const common = {
    id: ids.mass,
    name: answers.name.trim() === "" ? "Piece" : answers.name.trim(),
    z: depth / 2,
    uncertainty: uncertaintyOf[basis],
    basis,
  };
  const marked = answers.centre?.kind === "at" ? answers.centre : null;
  if (marked === null && (answers.centre === null || basis === "guess"))
    return {
      ...common,
      kind: "point",
      s: length / 2,
      t: 0,
      mass,
      centreWithin: { s: toMillimetre(centreShare * length), t: toMillimetre(centreShare * width) },
    };
  const s = marked?.s ?? length / 2;
  const t = marked?.t ?? 0;
  const sigma = s / length;
  if (sigma < 1 / 3 || sigma > 2 / 3) return { ...common, kind: "point", s, t, mass };
  const mean = mass / length;
  return {
    ...common,
    kind: "line",
    from: 0,
    to: length,
    massPerLength: [Math.max(0, mean * (4 - 6 * sigma)), Math.max(0, mean * (6 * sigma - 2))],
    t,
  };
}

/**
 * Where stands begin, m: two at the Bessel points, more in the middles of equal lengths; moved together so that they
 * stand about the centre of gravity, as far as the ends of the piece allow. To the nearest 10 mm.
 */
export function standPositions(length: number, count: number, centre: number, topWidth: number): readonly number[] {
  const even =
    count === 2
      ? [besselShare * length, (1 - besselShare) * length]
      : Array.from({ length: count }, (_, index) => ((index + 0.5) / count) * length);
  const inset = Math.min(topWidth / 2, length / 4);
  const room = Math.min(...even) - inset;
  const shift = clampTo(centre - length / 2, Math.max(0, room));
  return even.map((s) => Math.round((s + shift) * 100) / 100);
}

/**
 * The same as places (s, t) on the piece. Three under a die or plate wide enough do not stand in a line: two side by side
 * at a third of the length and one at five sixths, so that each carries a third of an even piece.
 */
export function standPlaces(
  kind: PieceKind,
  [length, width]: readonly [number, number],
  count: number,
  centre: Point,
  top: { readonly length: number; readonly width: number },
): readonly Point[] {
  const [first = 0, second = 0, third = 0, ...more] = standPositions(length, count, centre[0], top.width);
  // Side by side the tops are clear of each other, and both middles are under the piece.
  const aside = Math.ceil(100 * Math.max(width / 4, top.length / 2 + topsApart / 2)) / 100;
  if (kind !== "member" && count === 3 && aside <= width / 2) {
    const pair = Math.round(50 * (first + second)) / 100;
    return [
      [pair, -aside],
      [pair, aside],
      [third, clampTo(centre[1], width / 2)],
    ];
  }
  const all = [first, second, third, ...more].slice(0, count);
  return all.map((s): Point => [s, clampTo(centre[1], width / 2)]);
}

/** Clear between two tops side by side, m. */
const topsApart = 0.01;

const toMillimetre = (value: number) => Math.round(value * 1000) / 1000;

function clampTo(value: number, limit: number): number {
  return Math.min(limit, Math.max(-limit, value));
}

/** The generic stand with what its plate says. A rating whose "per stand or per pair" was not told is not taken. */
function ratedType(generic: GenericStand, { rating, display }: NewPlanAnswers): StandTypeDocument {
  const type = generic.typeIn(display.units ?? "metric");
  if (rating === null) return type;
  const marking = markingOf(rating.load, rating.per, display);
  switch (rating.per) {
    case "stand":
      return { ...type, ratedLoad: rating.load, marking };
    case "pair":
      return { ...type, ratedLoad: rating.load / 2, marking };
    case null:
      return { ...type, ratedLoad: null, marking };
  }
}

const perForce: Readonly<Record<ForceUnit, { readonly newtons: number; readonly word: string }>> = {
  lb: { newtons: 4.4482216152605, word: "LB" },
  kip: { newtons: 4448.2216152605, word: "KIP" },
  kg: { newtons: 9.80665, word: "KG" },
  t: { newtons: 9806.65, word: "T" },
  N: { newtons: 1, word: "N" },
  kN: { newtons: 1000, word: "kN" },
};

/** What plates speak in: whichever of these gives the round number was read off it. */
const plateUnits: Readonly<Record<Display["units"], readonly ForceUnit[]>> = { us: ["lb", "kN"], metric: ["kN", "kg"] };

function markingOf(load: number, per: RatedPer | null, { units = "metric" }: Partial<Display>): string {
  const numbers = plateUnits[units].map((unit) => ({
    digits: Number((load / perForce[unit].newtons).toPrecision(6)),
    word: perForce[unit].word,
  }));
  const { digits, word } = numbers.find(({ digits }) => digits === Number(digits.toPrecision(3))) ?? numbers[0]!;
  return `${digits} ${word}${per === null ? "" : ` PER ${per.toUpperCase()}`}`;
}

/** Only what differs from the default: laser is the default of levelTolerance, and "don't know" is the coarsest. */
function criteriaFrom({ tops }: NewPlanAnswers): PlanDocument["criteria"] & object {
  return tops === "laser" ? {} : { levelTolerance: levelToleranceOf[tops ?? "tape"] };
}

/** One sentence for each thing that nobody knew: what was taken, and what would settle it. */
export function notKnown(answers: NewPlanAnswers): readonly string[] {
  const kind = answers.kind ?? "member";
  const said: string[] = [];
  if (answers.kind === null) said.push("What the piece is was not said: taken as a long member.");
  const sizes = (["length", "width", "depth"] as const).filter((key) => answers[key] === null);
  if (sizes.length > 0) said.push(`Not measured: ${sizes.join(", ")}. Usual sizes were taken; measure the piece.`);
  if (answers.mass === null)
    said.push(
      `Weight not known: guessed from the size as ${Math.round(typical[kind].solid * 100)} % of solid steel, ±25 %. Weigh it.`,
    );
  else if (answers.basis === null) said.push("How the weight is known was not said: taken as a guess, ±25 %.");
  if (answers.centre === null)
    said.push("Centre of gravity not known: taken in the middle, within ±10 % of length and width.");
  if (answers.standCount === null) said.push("How many stands was not said: two, which both always carry.");
  if (answers.stand === null) said.push("Which stands was not said: a usual one was taken; measure the stands.");
  if (answers.rating === null) said.push("Rating of the stands not known: read their plates.");
  else if (answers.rating.per === null)
    said.push("The plate was read, but not whether it speaks of one stand or of a pair: the rating is left open.");
  if (answers.tops === null) said.push("How the tops are set was not said: taken as set by tape, ±6 mm.");
  return said;
}
