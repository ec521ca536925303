/** The same job seen otherwise: in other units, in a mirror, turned in the bay. Its reactions must follow. */

import type { Placement, Plan, Point, Polygon, StiffnessSegment } from "../../src/plan";
import { pieceLength } from "../../src/plan";

/** What is done to each kind of quantity of a plan. */
interface Change {
  readonly point: (point: Point) => Point;
  readonly placement: (placement: Placement) => Placement;
  /** Lengths and forces are this many times as large. */
  readonly length: number;
  readonly force: number;
  /** True where s runs the other way. */
  readonly reversed: boolean;
  /** Horizontal force (F_s, F_t). */
  readonly push: (force: Point) => Point;
}

/** Lengths and forces in other units; slopes, and stiffness × length ÷ force, stay as they are. */
export function rescaled(plan: Plan, length: number, force: number): Plan {
  return changed(plan, {
    length,
    force,
    reversed: false,
    point: ([s, t]) => [s * length, t * length],
    placement: (placement) => placement,
    push: (horizontal) => horizontal,
  });
}

/** Left and right exchanged. */
export function mirroredAcross(plan: Plan): Plan {
  return changed(
    levelledBay(plan, ([along, across]) => [along, -across]),
    {
      length: 1,
      force: 1,
      reversed: false,
      point: ([s, t]) => [s, -t],
      placement: (placement) => ({ ...placement, angle: -placement.angle }),
      push: ([fs, ft]) => [fs, -ft],
    },
  );
}

/** The far end made the datum end, in a mirror. */
export function mirroredAlong(plan: Plan): Plan {
  const end = pieceLength(plan.piece);
  return changed(
    levelledBay(plan, ([along, across]) => [-along, across]),
    {
      length: 1,
      force: 1,
      reversed: true,
      point: ([s, t]) => [end - s, t],
      placement: (placement) => ({ ...placement, angle: -placement.angle }),
      push: ([fs, ft]) => [-fs, ft],
    },
  );
}

/** Turned and moved in the bay, the slope of the floor with it. */
export function turned(plan: Plan, degrees: number): Plan {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const { bay, piece } = plan;
  const pose = { x: piece.pose.x + 7, y: piece.pose.y - 3, heading: piece.pose.heading + degrees };
  const slope = bay?.floor.slope ?? [0, 0];
  const floor = { slope: [c * slope[0] - s * slope[1], s * slope[0] + c * slope[1]] as const };
  return { ...plan, piece: { ...piece, pose }, bay: bay && { ...bay, floor } };
}

/** The bay turned to the piece's own directions, and its slope there changed. */
function levelledBay(plan: Plan, change: (slope: Point) => Point): Plan {
  const { bay, piece } = plan;
  const heading = (piece.pose.heading * Math.PI) / 180;
  const [x, y] = bay?.floor.slope ?? [0, 0];
  const along = Math.cos(heading) * x + Math.sin(heading) * y;
  const across = Math.cos(heading) * y - Math.sin(heading) * x;
  const pose = { x: 0, y: 0, heading: 0 };
  return { ...plan, piece: { ...piece, pose }, bay: bay && { ...bay, floor: { slope: change([along, across]) } } };
}

function changed(plan: Plan, change: Change): Plan {
  const { length, force, reversed } = change;
  const { piece } = plan;
  const place = (s: number, t = 0): Point => change.point([s, t]);
  const polygon = (points: Polygon): Polygon => points.map(change.point);
  /** A stretch with a value at either end. */
  const stretch = (from: number, to: number, values: readonly [number, number]) => {
    const [a, b] = [place(from)[0], place(to)[0]];
    return reversed ? { from: b, to: a, values: [values[1], values[0]] as const } : { from: a, to: b, values };
  };
  const segment = ({ from, to, EI, kGA, GJ }: StiffnessSegment): StiffnessSegment => {
    const ends = stretch(from, to, [0, 0]);
    return {
      from: ends.from,
      to: ends.to,
      EI: EI * force * length ** 2,
      kGA: kGA && kGA * force,
      GJ: GJ && GJ * force * length ** 2,
    };
  };
  const inOrder = <Item>(items: readonly Item[]): Item[] => (reversed ? [...items].reverse() : [...items]);
  return {
    ...plan,
    piece: {
      ...piece,
      pose: { ...piece.pose, x: piece.pose.x * length, y: piece.pose.y * length },
      outline: polygon(piece.outline),
      stiffness: piece.stiffness === "rigid" ? "rigid" : inOrder(piece.stiffness.map(segment)),
      underside: inOrder(
        piece.underside.map(({ from, to, z }) => {
          const ends = stretch(from, to, z);
          return { from: ends.from, to: ends.to, z: [ends.values[0] * length, ends.values[1] * length] as const };
        }),
      ),
      masses: piece.masses.map((mass) => {
        const z = mass.z * length;
        if (mass.kind === "point") {
          const [s, t] = place(mass.s, mass.t);
          return { ...mass, s, t, z, mass: mass.mass * force };
        }
        const ends = stretch(mass.from, mass.to, mass.massPerLength);
        const perLength = force / length;
        return {
          ...mass,
          from: ends.from,
          to: ends.to,
          t: place(0, mass.t)[1],
          z,
          massPerLength: [ends.values[0] * perLength, ends.values[1] * perLength] as const,
        };
      }),
      restZones: piece.restZones?.map(polygon) ?? null,
      noRestZones: piece.noRestZones.map((zone) => ({ ...zone, polygon: polygon(zone.polygon) })),
    },
    standTypes: plan.standTypes.map((type) => ({
      ...type,
      top: { ...type.top, length: type.top.length * length, width: type.top.width * length },
      legSpacing: type.legSpacing * length,
      // Of a stand without rating, engine.md section 1.
      stiffness: ((type.stiffness ?? 1e8) * force) / length,
    })),
    stands: plan.stands.map((stand) => ({ ...stand, heightOffset: stand.heightOffset * length })),
    layouts: plan.layouts.map((layout) => ({
      ...layout,
      placements: layout.placements.map((placement) => {
        const [s, t] = place(placement.s, placement.t);
        const { height, shim } = placement;
        return change.placement({ ...placement, s, t, height: height * length, shim: shim * length });
      }),
    })),
    steps: plan.steps.map((step) => ({
      ...step,
      parts:
        step.parts &&
        inOrder(
          step.parts.map(([from, to]) => {
            const ends = stretch(from, to, [0, 0]);
            return [ends.from, ends.to] as const;
          }),
        ),
      loads: step.loads.map((load) => {
        const [s, t] = place(load.s, load.t);
        const [fs, ft] = change.push([load.force[0], load.force[1]]);
        return { ...load, s, t, z: load.z * length, force: [fs * force, ft * force, load.force[2] * force] as const };
      }),
    })),
  };
}
