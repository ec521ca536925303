/**
 * The contact problem of one part, or of the parts that one stand bears on, condensed to its contacts and scaled
 * (docs/mechanics-bounds.md, B2 to B8):
 *
 *   w = A·r + N·q + B·x + b,   Nᵀ·r = P·x + p,   0 ≤ r ⊥ w ≥ 0,   x in the box.
 */

import { convexHull } from "../../geometry";
import type { Point } from "../../plan";
import type { ContactPoint, LoadItem, PartModel, StepModel } from "../model";
import { Dictionary } from "./dictionary";
import { type Action, actionsOf, type Flexibility, flexibilityOf } from "./flexibility";
import { Unknowns } from "./unknowns";
import type { BoxVariable } from "./variables";

export interface SystemContact extends ContactPoint {
  readonly part: number;
}

/** The contact problem, its unknowns numbered as `Unknowns` says. */
export interface ContactSystem {
  readonly contacts: readonly SystemContact[];
  readonly variables: readonly BoxVariable[];
  /** Half the range of each variable: x = (value − nominal)/half. */
  readonly half: readonly number[];
  /** N, what a scaled reaction of 1 stands for: the nominal resultant of the parts. */
  readonly force: number;
  /** The greatest force that the loads of the box come to, scaled. */
  readonly heaviest: number;
  readonly unknowns: Unknowns;
  /** Three contacts of each part carry it, the others keep clear by the parameter: where following a path begins. */
  readonly start: Dictionary;
}

interface Effect {
  /** Upward displacement at each contact, m. */
  readonly displacement: Float64Array;
  /** Downward force, its moments W·(s − middle) and W·t, of each part in turn. */
  readonly demand: Float64Array;
}

/** Condenses the parts (indices in the model); estimated stands are `stiffness` times as stiff. */
export function condense(
  model: StepModel,
  box: readonly BoxVariable[],
  parts: readonly number[],
  stiffness: number,
): ContactSystem {
  const contacts = parts.flatMap((part) =>
    model.parts[part]!.contacts.map((contact) => ({
      ...contact,
      part,
      stiffness: contact.stiffness * (model.stands[contact.stand]!.estimated ? stiffness : 1),
    })),
  );
  const flexibilities = new Map(parts.map((part) => [part, flexibilityOf(model.parts[part]!)]));
  const loads = loadEffects(model, parts, contacts, flexibilities);
  const columns = box.map((variable) => effectOf(variable, model, parts, contacts, flexibilities, loads));
  const kept = box.map((_, k) => k).filter((k) => !isNothing(columns[k]!));
  const variables = kept.map((k) => box[k]!);
  const half = variables.map((variable) => (variable.to - variable.from) / 2);

  const nominal = summed(loads.values(), contacts.length, parts.length);
  const force = parts.reduce((sum, _, index) => sum + nominal.demand[3 * index]!, 0);
  const length = Math.max(
    ...variables.map((variable, k) => (variable.kind === "height" || variable.kind === "bow" ? half[k]! : 0)),
    ...model.stands.map((stand) => force / stand.stiffness),
  );
  const meanHeight = contacts.reduce((sum, contact) => sum + contact.height, 0) / contacts.length;
  const unknowns = new Unknowns(contacts.length, variables.length);
  const start = startOf(
    {
      unknowns,
      // B2: the compliance between contacts, the stand's own on the diagonal
      compliance: (j, l) => {
        const [at, by] = [contacts[j]!, contacts[l]!];
        if (at.part !== by.part) return 0;
        const beam = flexibilities.get(at.part)!.displacement(at.s, at.t, unitForceAt(by));
        return ((beam + (j === l ? 1 / at.stiffness : 0)) * force) / length;
      },
      rigid: (j, a) => rigidMotion(contacts[j]!, parts, flexibilities, a),
      gap: (j) => (nominal.displacement[j]! - (contacts[j]!.height - meanHeight)) / length,
      gapBy: (j, k) => (columns[kept[k]!]!.displacement[j]! * half[k]!) / length,
      demand: (a) => nominal.demand[a]! / force,
      demandBy: (a, k) => (columns[kept[k]!]!.demand[a]! * half[k]!) / force,
      low: (k) => (variables[k]!.from - variables[k]!.nominal) / half[k]!,
      high: (k) => (variables[k]!.to - variables[k]!.nominal) / half[k]!,
    },
    parts.map((part, index) => tripodOf(contacts, part, nominal.demand, index, flexibilities.get(part)!.middle)),
  );
  const heaviest =
    1 +
    variables.reduce((sum, { from, to }, k) => {
      const each = parts.map((_, index) => Math.abs(columns[kept[k]!]!.demand[3 * index]!));
      return sum + ((to - from) * each.reduce((a, b) => a + b, 0)) / force;
    }, 0);
  return { contacts, variables, half, force, heaviest, unknowns, start };
}

function unitForceAt(contact: { s: number; t: number }): Action {
  return { s: contact.s, force: 1, onBending: 0, onTwist: contact.t };
}

/** Height at a contact when its part moves as a rigid body: up by 1, or turned by 1 about its middle or its axis. */
function rigidMotion(
  contact: SystemContact,
  parts: readonly number[],
  flexibilities: ReadonlyMap<number, Flexibility>,
  motion: number,
): number {
  if (parts[Math.floor(motion / 3)] !== contact.part) return 0;
  return [1, contact.s - flexibilities.get(contact.part)!.middle, contact.t][motion % 3]!;
}

/** What each mass and load (its key) does at nominal size. */
function loadEffects(
  model: StepModel,
  parts: readonly number[],
  contacts: readonly SystemContact[],
  flexibilities: ReadonlyMap<number, Flexibility>,
): Map<string, Effect> {
  const effects = new Map<string, Effect>();
  parts.forEach((part, index) => {
    const { loads } = model.parts[part]!;
    const breaks = breaksOf(model.parts[part]!);
    for (const load of loads) {
      const key = `${load.source.kind} ${load.source.index}`;
      const effect = effects.get(key) ?? nothing(contacts.length, parts.length);
      effects.set(key, effect);
      add(effect, actionsOf(load, breaks), index, part, contacts, flexibilities.get(part)!);
    }
  });
  return effects;
}

function breaksOf(part: PartModel): number[] {
  const breaks = [
    (part.from + part.to) / 2,
    ...part.contacts.map((contact) => contact.s),
    ...part.segments.map((segment) => segment.to),
  ];
  return [...new Set(breaks)].sort((a, b) => a - b);
}

function add(
  effect: Effect,
  actions: readonly Action[],
  index: number,
  part: number,
  contacts: readonly SystemContact[],
  flexibility: Flexibility,
): void {
  for (const action of actions) {
    // Equilibrium: Σr = W, Σr·(s − middle) = Σ down·(s − middle) + F_s·z, Σr·t = Σ down·t + F_t·z
    effect.demand[3 * index]! -= action.force;
    effect.demand[3 * index + 1]! -= action.force * (action.s - flexibility.middle) + action.onBending;
    effect.demand[3 * index + 2]! -= action.onTwist;
    contacts.forEach((contact, j) => {
      if (contact.part === part) effect.displacement[j]! += flexibility.displacement(contact.s, contact.t, action);
    });
  }
}

/** What a unit of a variable (m, m/m or a factor) does; for heights, what it does to w = u − h. */
function effectOf(
  variable: BoxVariable,
  model: StepModel,
  parts: readonly number[],
  contacts: readonly SystemContact[],
  flexibilities: ReadonlyMap<number, Flexibility>,
  loads: ReadonlyMap<string, Effect>,
): Effect {
  const effect = nothing(contacts.length, parts.length);
  switch (variable.kind) {
    case "height":
    case "tilt":
      contacts.forEach((contact, j) => {
        if (contact.stand === variable.stand) effect.displacement[j] = variable.kind === "height" ? -1 : -contact.c;
      });
      return effect;
    case "bow":
      contacts.forEach((contact, j) => {
        if (contact.part === variable.part) effect.displacement[j] = contact.bow;
      });
      return effect;
    case "mass":
      return loads.get(`mass ${variable.mass}`) ?? effect;
    case "load":
      return loads.get(`load ${variable.load}`) ?? effect;
    case "centre":
      parts.forEach((part, index) => {
        const mass = model.parts[part]!.loads.find((load) => isPointOf(load, variable.mass));
        if (mass?.kind !== "point") return;
        const couple = { s: mass.s, force: 0, onBending: 0, onTwist: 0 };
        const action =
          variable.axis === "s" ? { ...couple, onBending: -variable.force } : { ...couple, onTwist: -variable.force };
        add(effect, [action], index, part, contacts, flexibilities.get(part)!);
      });
      return effect;
  }
}

const isPointOf = (load: LoadItem, mass: number) =>
  load.kind === "point" && load.source.kind === "mass" && load.source.index === mass;

function nothing(contacts: number, parts: number): Effect {
  return { displacement: new Float64Array(contacts), demand: new Float64Array(3 * parts) };
}

function isNothing(effect: Effect): boolean {
  return effect.displacement.every((value) => value === 0) && effect.demand.every((value) => value === 0);
}

function summed(effects: Iterable<Effect>, contacts: number, parts: number): Effect {
  const sum = nothing(contacts, parts);
  for (const effect of effects) {
    effect.displacement.forEach((value, j) => {
      sum.displacement[j]! += value;
    });
    effect.demand.forEach((value, a) => {
      sum.demand[a]! += value;
    });
  }
  return sum;
}

/** Three contacts of a part whose triangle holds its nominal resultant: of those with a corner on the hull, the largest. */
function tripodOf(
  contacts: readonly SystemContact[],
  part: number,
  demand: Float64Array,
  index: number,
  middle: number,
): readonly number[] {
  const own = contacts.flatMap((contact, j) => (contact.part === part ? [j] : []));
  const points = own.map((j): Point => [contacts[j]!.s - middle, contacts[j]!.t]);
  const W = demand[3 * index]!;
  const resultant: Point = [demand[3 * index + 1]! / W, demand[3 * index + 2]! / W];
  const hull = convexHull(points);
  const fans = hull.flatMap((apex, i) =>
    hull.flatMap((_, k) => {
      const b = hull[(i + k + 1) % hull.length]!;
      const c = hull[(i + k + 2) % hull.length]!;
      return k + 2 < hull.length ? [[apex, b, c] as const] : [];
    }),
  );
  // The least share of the resultant that falls on a corner, then the area
  const [best] = fans
    .map((corners) => ({ corners, share: leastShare(corners, resultant), area: areaOf(corners) }))
    .sort((a, b) => Math.min(b.share, 0) - Math.min(a.share, 0) || b.area - a.area);
  return best!.corners.map(([s, t]) => own[points.findIndex((point) => point[0] === s && point[1] === t)]!);
}

type Triangle = readonly [Point, Point, Point];

function areaOf([a, b, c]: Triangle): number {
  return ((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) / 2;
}

function leastShare([a, b, c]: Triangle, point: Point): number {
  const whole = areaOf([a, b, c]);
  return Math.min(areaOf([point, b, c]), areaOf([a, point, c]), areaOf([a, b, point])) / whole;
}

interface Coefficients {
  readonly unknowns: Unknowns;
  readonly compliance: (j: number, l: number) => number;
  readonly rigid: (j: number, motion: number) => number;
  readonly gap: (j: number) => number;
  readonly gapBy: (j: number, k: number) => number;
  readonly demand: (a: number) => number;
  readonly demandBy: (a: number, k: number) => number;
  readonly low: (k: number) => number;
  readonly high: (k: number) => number;
}

/**
 * The dictionary of the system with the tripods' reactions and all other gaps basic. The rigid motions q are free: their
 * rows say nothing about what is allowed and are left out (B8).
 */
function startOf(of: Coefficients, tripods: readonly (readonly number[])[]): Dictionary {
  const { unknowns } = of;
  const { contacts: m, variables: n } = unknowns;
  const motions = 3 * tripods.length;
  const motion = (a: number) => unknowns.count + a;
  const balance = (a: number) => unknowns.count + motions + a;

  const whole = new Dictionary(m + motions, 2 + m + motions + n, unknowns.count + 2 * motions);
  const nonbasic = [
    unknowns.one,
    ...range(m).map((j) => unknowns.reaction(j)),
    ...range(motions).map(motion),
    ...range(n).map((k) => unknowns.variable(k)),
    unknowns.parameter,
  ];
  const basic = [...range(m).map((j) => unknowns.gap(j)), ...range(motions).map(balance)];
  whole.assign(basic, nonbasic, (row, unknown) => {
    if (row < m) {
      if (unknown === unknowns.one) return of.gap(row);
      if (unknown < m) return of.compliance(row, unknown);
      if (unknown >= motion(0)) return of.rigid(row, unknown - motion(0));
      if (unknown === unknowns.parameter) return tripods.some((tripod) => tripod.includes(row)) ? 0 : 1;
      return of.gapBy(row, unknown - unknowns.variable(0));
    }
    const a = row - m;
    if (unknown === unknowns.one) return -of.demand(a);
    if (unknown < m) return of.rigid(unknown, a);
    if (unknown >= motion(0) || unknown === unknowns.parameter) return 0;
    return -of.demandBy(a, unknown - unknowns.variable(0));
  });
  tripods.forEach((tripod, part) => {
    const three = [3 * part, 3 * part + 1, 3 * part + 2];
    whole.exchangeAll(
      three.map(balance),
      tripod.map((j) => unknowns.reaction(j)),
    );
    whole.exchangeAll(
      tripod.map((j) => unknowns.gap(j)),
      three.map(motion),
    );
  });
  const start = whole.without(range(2 * motions).map((a) => unknowns.count + a));
  start.high.fill(Number.POSITIVE_INFINITY, 0, 2 * m);
  for (let k = 0; k < n; k++) {
    start.low[unknowns.variable(k)] = of.low(k);
    start.high[unknowns.variable(k)] = of.high(k);
  }
  start.low[unknowns.one] = 1;
  start.high[unknowns.one] = 1;
  start.set(unknowns.one, 1);
  return start;
}

function range(count: number): number[] {
  return Array.from({ length: count }, (_, index) => index);
}
