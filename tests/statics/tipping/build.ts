/** A step of one part put together by hand: tops across the piece, masses and loads, the resultant by sums. */

import type { LineMass, Load, Mass, MassId, Point, PointMass, StandId } from "../../../src/plan";
import type { ContactPoint, LoadItem, PartLevel, StepLevel, StepModel } from "../../../src/statics";

export const g = 9.80665;

export interface Top {
  readonly s: number;
  readonly t?: number;
  readonly length: number;
  /** Degrees. */
  readonly angle?: number;
}

export interface Built {
  readonly model: StepModel;
  readonly level: StepLevel;
  readonly piece: { readonly outline: readonly Point[]; readonly masses: readonly Mass[] };
}

export function line(
  id: string,
  from: number,
  to: number,
  massPerLength: readonly [number, number],
  rest: Partial<LineMass> = {},
): LineMass {
  return {
    id: id as MassId,
    name: id,
    kind: "line",
    from,
    to,
    massPerLength,
    t: 0,
    z: 0,
    uncertainty: 0,
    basis: null,
    ...rest,
  };
}

export function point(id: string, s: number, t: number, mass: number, rest: Partial<PointMass> = {}): PointMass {
  const centreWithin = { s: 0, t: 0 };
  return {
    id: id as MassId,
    name: id,
    kind: "point",
    s,
    t,
    z: 0,
    mass,
    uncertainty: 0,
    basis: null,
    centreWithin,
    ...rest,
  };
}

export function rectangle(length: number, halfWidth: number): Point[] {
  return [
    [0, -halfWidth],
    [length, -halfWidth],
    [length, halfWidth],
    [0, halfWidth],
  ];
}

export function build(
  outline: readonly Point[],
  tops: readonly Top[],
  masses: readonly Mass[],
  loads: readonly Load[] = [],
): Built {
  const to = Math.max(...outline.map(([s]) => s));
  const contacts = tops.flatMap(({ s, t = 0, length, angle = 0 }, stand): ContactPoint[] => {
    const a = (angle * Math.PI) / 180;
    return [-0.5, -0.2, 0, 0.2, 0.5].map((share) => {
      const c = share * length;
      const place = { s: s - c * Math.sin(a), t: t + c * Math.cos(a) };
      return { stand, interval: 0, ...place, c, stiffness: 1, height: 0, bow: 0 };
    });
  });
  const items = [...masses.map(massItem), ...loads.map(loadItem)];
  const [force, momentS, momentT] = items.reduce(
    ([sum, s, t], item) => {
      const [down, atS, atT] = item.kind === "point" ? [item.down, item.s, item.momentT] : lineSums(item);
      const extra = item.kind === "point" ? item.momentS : 0;
      return [sum + down, s + down * atS + extra, t + atT];
    },
    [0, 0, 0],
  );
  const part = {
    from: 0,
    to,
    stable: true,
    weight: force,
    resultant: { force, s: momentS / force, t: momentT / force },
  } as unknown as PartLevel;
  const stands = tops.map(({ s, t = 0, length }, index) => ({
    stand: `S${index + 1}` as StandId,
    s,
    t,
    along: [0, 1] as const,
    stiffness: 1,
    estimated: false,
    topWidth: 0.2,
    legSpacing: length,
    intervals: [{ from: -length / 2, to: length / 2, part: 0 }],
  }));
  return {
    model: { parts: [{ from: 0, to, segments: [], contacts, loads: items }], stands },
    level: { stable: true, parts: [part] } as unknown as StepLevel,
    piece: { outline, masses },
  };
}

function massItem(mass: Mass, index: number): LoadItem {
  const source = { kind: "mass", index } as const;
  if (mass.kind === "point") {
    const down = mass.mass * g;
    return { kind: "point", source, s: mass.s, down, momentS: 0, momentT: down * mass.t };
  }
  const [q0, q1] = mass.massPerLength;
  return { kind: "line", source, from: mass.from, to: mass.to, intensity: [q0 * g, q1 * g], t: mass.t };
}

function loadItem({ s, t, z, force: [fs, ft, fz] }: Load, index: number): LoadItem {
  return {
    kind: "point",
    source: { kind: "load", index },
    s,
    down: -fz,
    momentS: fs * z,
    momentT: -fz * t + ft * z,
  };
}

/** Force, its place along the piece and its moment about the axis, of a trapezium of load. */
function lineSums({ from, to, intensity: [a, b], t }: Extract<LoadItem, { kind: "line" }>): [number, number, number] {
  const down = ((a + b) / 2) * (to - from);
  return [down, from + ((to - from) * (a + 2 * b)) / (3 * (a + b)), down * t];
}
