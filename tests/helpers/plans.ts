/**
 * Random plans for tests of the plan file: every one is valid, as the format has it, and most are jobs that a shop could
 * have. Optional keys are left out at random. They shrink towards round numbers and few things.
 */

import fc from "fast-check";
import {
  type FindingCode,
  findingCodes,
  type LayoutDocument,
  type LayoutId,
  type MassDocument,
  type MassId,
  type PieceDocument,
  type PlanDocument,
  type Point,
  type Polygon,
  type StandDocument,
  type StandId,
  type StandTypeDocument,
  type StandTypeId,
  type StepId,
} from "../../src/plan";

/** What a test wants of its plans; what is left out is at random. */
export interface Wishes {
  readonly stiffness?: "rigid" | "elastic";
  /** Whether steps may have parts. */
  readonly parts?: boolean;
  /** How many stands a layout has. */
  readonly stands?: { readonly min: number; readonly max: number };
}

export function arbitraryPlan(wishes: Wishes = {}): fc.Arbitrary<PlanDocument> {
  return fc
    .record({ piece: arbitraryPiece(wishes), standTypes: standTypes(), placed: placedStands(wishes) })
    .chain(({ piece, standTypes, placed }) => {
      const stands = placed.map(({ stand }, index) => ({
        ...stand,
        id: `H-${index}` as StandId,
        type: typeAt(standTypes, index).id,
      }));
      return layouts(piece, standTypes, stands).chain((layouts) =>
        fc.record(
          {
            format: fc.constant("trestleboard-plan" as const),
            version: fc.constant(1 as const),
            title: text,
            revision: fc.nat({ max: 99 }),
            notes: text,
            display: display(),
            piece: fc.constant(piece),
            standTypes: fc.constant(standTypes),
            stands: fc.constant(stands),
            layouts: fc.constant(layouts),
            steps: steps(piece, layouts, wishes),
            bay: fc.option(bay()),
            criteria: criteria(),
          },
          { requiredKeys: ["format", "version", "title", "piece", "standTypes", "stands", "layouts", "steps"] },
        ),
      );
    });
}

// Numbers and texts

/** To the thousandth, or now and then to the last bit. */
const real = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    {
      weight: 5,
      arbitrary: fc.integer({ min: Math.ceil(min * 1000), max: Math.floor(max * 1000) }).map((n) => n / 1000),
    },
    { weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) },
  );

/** From 10^low to 10^high, evenly in its logarithm, to four figures. */
const decades = (low: number, high: number): fc.Arbitrary<number> =>
  fc.double({ min: low, max: high, noNaN: true }).map((exponent) => Number((10 ** exponent).toPrecision(4)));

const text = fc.oneof(
  fc.constantFrom("", "A", "Runway girder G2", "Träger Ω, 2,5 t", "\uFEFF", '\\ " \n\t\u2028', "__proto__"),
  fc.string({ unit: "binary", maxLength: 12 }),
);

const date = fc
  .date({ min: new Date("0001-01-01T00:00:00Z"), max: new Date("9999-12-31T00:00:00Z"), noInvalidDate: true })
  .map((day) => day.toISOString().slice(0, 10));

/** Ascending places strictly within (0, length), no two the same. */
const cuts = (length: number, most: number): fc.Arbitrary<readonly number[]> =>
  fc
    .uniqueArray(fc.integer({ min: 1, max: 99 }), { maxLength: most })
    .map((hundredths) => hundredths.sort((a, b) => a - b).map((one) => (one * length) / 100));

/** Stretches between the ends and the cuts, [from, to]; all of them, or some. */
const stretches = (length: number, most: number, all: boolean): fc.Arbitrary<readonly (readonly [number, number])[]> =>
  cuts(length, most - 1).chain((inner) => {
    const ends = [0, ...inner, length];
    const whole = inner.map((_, index) => [ends[index]!, ends[index + 1]!] as const).concat([[ends.at(-2)!, length]]);
    return all ? fc.constant(whole) : fc.subarray(whole);
  });

// The piece

const rectangle = (from: Point, to: Point): Polygon => [from, [to[0], from[1]], to, [from[0], to[1]]];

const box = (from: Point, to: Point): fc.Arbitrary<Polygon> =>
  fc
    .record({
      s: fc.uniqueArray(fc.integer({ min: 0, max: 100 }), { minLength: 2, maxLength: 2 }),
      t: fc.uniqueArray(fc.integer({ min: 0, max: 100 }), { minLength: 2, maxLength: 2 }),
    })
    .map(({ s, t }) => {
      const at = (share: number, axis: 0 | 1) => from[axis] + (share * (to[axis] - from[axis])) / 100;
      return rectangle([at(Math.min(...s), 0), at(Math.min(...t), 1)], [at(Math.max(...s), 0), at(Math.max(...t), 1)]);
    });

/** Seen from its middle, the corners go round once: such a polygon is simple. */
const star = (): fc.Arbitrary<Polygon> =>
  fc.array(real(0.5, 3), { minLength: 3, maxLength: 24 }).map((radii) => {
    const corners = radii.map((radius, index): Point => {
      const angle = (2 * Math.PI * index) / radii.length;
      return [2 * radius * Math.cos(angle), radius * Math.sin(angle)];
    });
    const least = Math.min(...corners.map(([s]) => s));
    return corners.map(([s, t]): Point => [s - least, t]);
  });

const outline: fc.Arbitrary<Polygon> = fc.oneof(
  { weight: 4, arbitrary: fc.tuple(real(1, 30), real(0.1, 2)).map(([l, w]) => rectangle([0, -w / 2], [l, w / 2])) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(real(1, 30), real(0.2, 2), real(0.1, 0.9), real(0.1, 0.9))
      .map(([l, w, along, across]): Polygon => {
        const [s, t] = [along * l, -w / 2 + across * w];
        return [
          [0, -w / 2],
          [l, -w / 2],
          [l, t],
          [s, t],
          [s, w / 2],
          [0, w / 2],
        ];
      }),
  },
  { weight: 1, arbitrary: star() },
);

const lengthOf = (polygon: Polygon) => Math.max(...polygon.map(([s]) => s));
const halfWidthOf = (polygon: Polygon) => Math.max(...polygon.map(([, t]) => Math.abs(t)));

const zones = (from: Point, to: Point) => fc.array(fc.record({ name: text, polygon: box(from, to) }), { maxLength: 2 });

const sectionKeys = {
  depth: real(0.1, 1),
  flangeWidth: real(0.1, 0.5),
  flangeThickness: real(0.005, 0.05),
  webThickness: real(0.005, 0.04),
  fillet: real(0, 0.03),
  sectionModulus: decades(-4, -2),
  shearArea: decades(-3, -1),
  radiusOfGyrationY: real(0.02, 0.2),
  webs: fc.constantFrom(1, 2),
  yield: decades(8, 9),
  E: fc.constant(2e11),
};

function arbitraryPiece({ stiffness }: Wishes): fc.Arbitrary<PieceDocument> {
  return outline.chain((outline) => {
    const length = lengthOf(outline);
    const half = halfWidthOf(outline);
    const [low, high]: readonly [Point, Point] = [
      [0, -half],
      [length, half],
    ];
    const elastic = stretches(length, 4, true).chain((all) =>
      fc.tuple(
        ...all.map(([from, to]) =>
          fc.record({
            from: fc.constant(from),
            to: fc.constant(to),
            EI: decades(5, 10),
            kGA: fc.option(decades(6, 10)),
            GJ: fc.option(decades(3, 9)),
          }),
        ),
      ),
    );
    const underside = stretches(length, 4, false).chain((some) =>
      fc.tuple(
        ...some.map(([from, to]) =>
          fc.record({ from: fc.constant(from), to: fc.constant(to), z: fc.tuple(real(-0.1, 0.1), real(-0.1, 0.1)) }),
        ),
      ),
    );
    const sections = stretches(length, 3, false).chain((some) =>
      fc.tuple(
        ...some.map(([from, to]) =>
          fc.record({ from: fc.constant(from), to: fc.constant(to), ...sectionKeys }, { requiredKeys: ["from", "to"] }),
        ),
      ),
    );
    return fc.record(
      {
        name: text,
        ends: fc.record({ datum: text, far: text }),
        pose: fc.record({ x: real(-5, 15), y: real(-5, 15), heading: real(-180, 180) }),
        outline: fc.constant(outline),
        depth: real(0.01, 2),
        stiffness: stiffness === "rigid" ? rigid : stiffness === "elastic" ? elastic : fc.oneof(rigid, elastic),
        underside,
        masses: masses(length, half),
        restZones: fc.option(fc.array(box(low, high), { minLength: 1, maxLength: 3 })),
        noRestZones: zones(low, high),
        workWindows: fc.array(fc.record({ name: text, polygon: box(low, high), clearance: real(0, 1) }), {
          maxLength: 2,
        }),
        section: fc.option(fc.oneof(fc.record(sectionKeys, { requiredKeys: [] }), sections)),
      },
      { requiredKeys: ["name", "outline", "depth", "stiffness", "masses"] },
    );
  });
}
const rigid = fc.constant("rigid" as const);

const basis = fc.constantFrom(null, "scale", "hook", "maker", "model", "calculated");

function masses(length: number, half: number): fc.Arbitrary<readonly MassDocument[]> {
  const common = { name: text, t: real(-half, half), z: real(-1, 2), uncertainty: real(0, 0.4), basis };
  const line = stretches(length, 3, true).chain((all) =>
    fc.constantFrom(...all).chain(([from, to]) =>
      fc.record(
        {
          ...common,
          kind: fc.constant("line" as const),
          from: fc.constant(from),
          to: fc.constant(to),
          massPerLength: fc.tuple(real(0, 500), real(0, 500)),
        },
        { requiredKeys: ["name", "kind", "from", "to", "massPerLength", "t", "z"] },
      ),
    ),
  );
  const point = fc.record(
    {
      ...common,
      kind: fc.constant("point" as const),
      s: fc.oneof(
        fc.constantFrom(0, length),
        real(0, length).map((s) => Math.min(s, length)),
      ),
      mass: real(0, 5000),
      centreWithin: fc.record({ s: real(0, 0.5), t: real(0, 0.3) }),
    },
    { requiredKeys: ["name", "kind", "s", "mass", "t", "z"] },
  );
  const guessed = point.map((mass) => ({ ...mass, basis: "guess" as const, uncertainty: 0.25 }));
  return fc
    .array(fc.oneof(line, point, guessed), { maxLength: 5 })
    .map((list) => list.map((mass, index) => ({ ...mass, id: `m${index}` as MassId })));
}

// Stands

const standType = fc
  .record(
    {
      name: text,
      legs: fc.constantFrom("a-frame", "vertical"),
      height: fc
        .record({ min: real(0.2, 1), range: real(0, 0.5), increment: fc.constantFrom(0, 0.025, 0.1) })
        .map(({ min, range, increment }) => ({ min, max: min + range, increment })),
      top: fc.record({
        length: real(0.5, 2),
        width: real(0.05, 0.4),
        material: fc.constantFrom("steel", "hardwood", "uhmw-pe", "rubber"),
      }),
      legSpacing: real(0.1, 0.5),
      splay: fc.record({ along: real(0, 30), across: real(0, 15) }),
      foot: fc.record({ length: real(0.05, 0.3), width: real(0.05, 0.3) }),
      ratedLoad: fc.option(decades(3.5, 6)),
      ratedLoadCentre: fc.option(decades(3.5, 6)),
      designFactor: fc.option(real(1.5, 5)),
      ratedForWorkUnder: fc.option(fc.boolean()),
      marking: text,
      stiffness: fc.option(decades(6, 10)),
      selfMass: real(0, 300),
      casters: fc.option(fc.record({ retractLoad: real(1, 2000) })),
      liftingPoints: fc.boolean(),
    },
    { requiredKeys: ["name", "legs", "height", "top", "legSpacing", "splay", "foot", "selfMass"] },
  )
  .map((type) => (type.legs === "vertical" ? { ...type, splay: { along: 0, across: 0 } } : type));

const standTypes = (): fc.Arbitrary<readonly StandTypeDocument[]> =>
  fc
    .array(standType, { minLength: 1, maxLength: 3 })
    .map((types) => types.map((type, index) => ({ ...type, id: `type ${index}` as StandTypeId })));

const typeAt = (types: readonly StandTypeDocument[], index: number) => types[index % types.length]!;

const placedStands = ({ stands = { min: 0, max: 6 } }: Wishes) =>
  fc.array(
    fc.record({
      stand: fc.record(
        {
          condition: fc.constantFrom("in-service" as const, "inspect" as const, "out-of-service" as const),
          lastInspected: fc.option(date),
          heightOffset: real(-0.01, 0.01),
        },
        { requiredKeys: ["condition"] },
      ),
    }),
    { minLength: stands.min, maxLength: stands.max },
  );

const layouts = (
  piece: PieceDocument,
  types: readonly StandTypeDocument[],
  stands: readonly StandDocument[],
): fc.Arbitrary<readonly LayoutDocument[]> =>
  fc
    .array(
      fc.record({
        name: text,
        placements: fc.tuple(...stands.map((stand, index) => placement(piece, typeAt(types, index), stand))),
      }),
      {
        minLength: 1,
        maxLength: 2,
      },
    )
    .map((list) => list.map((layout, index) => ({ ...layout, id: `layout ${index}` as LayoutId })));

const placement = (piece: PieceDocument, type: StandTypeDocument, { id }: StandDocument) =>
  fc.record(
    {
      stand: fc.constant(id),
      s: real(0, lengthOf(piece.outline)),
      t: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: real(-0.5, 0.5) }),
      angle: fc.oneof(fc.constant(0), real(-90, 90)),
      height: fc.constant(type.height.min),
      shim: real(0, 0.02),
      levelTolerance: real(0, 0.01),
    },
    { requiredKeys: ["stand", "s", "t", "height"] },
  );

// Steps

function steps(piece: PieceDocument, layouts: readonly LayoutDocument[], wishes: Wishes) {
  const length = lengthOf(piece.outline);
  const parts = wishes.parts === false ? fc.constant(null) : fc.option(stretches(length, 3, false));
  const step = fc.tuple(fc.constantFrom(...layouts), parts).chain(([layout, some]) => {
    const list = some === null || some.length === 0 ? null : some;
    const where = list ?? [[0, length] as const];
    const off = piece.masses
      .filter((mass) => mass.kind === "point" && !where.some(([from, to]) => mass.s >= from && mass.s <= to))
      .map(({ id }) => id);
    const more = fc.subarray(piece.masses.map(({ id }) => id).filter((id) => !off.includes(id)));
    const load = fc.constantFrom(...where).chain(([from, to]) =>
      fc.record({
        name: text,
        s: real(0, 1).map((share) => Math.min(to, from + share * (to - from))),
        t: real(-1, 1),
        z: real(-1, 2),
        force: fc.tuple(real(-2000, 2000), real(-2000, 2000), real(-2000, 500)),
      }),
    );
    return fc
      .record(
        {
          name: text,
          layout: fc.constant(layout.id),
          absent: more.map((ids) => [...off, ...ids]),
          parts: fc.constant(list),
          bow: fc.option(real(0, 0.01)),
          loads: fc.array(load, { maxLength: 2 }),
          peopleUnder: fc.boolean(),
          setDown: fc.boolean(),
          craneHolds: fc.boolean(),
          chocked: fc.boolean(),
          braced: fc.boolean(),
          readings: readings(layout),
        },
        { requiredKeys: ["name", "layout", "absent", "parts"] },
      )
      .map(({ absent, parts, ...step }) => ({
        ...step,
        ...(absent.length > 0 ? { absent } : {}),
        ...(parts === null ? {} : { parts }),
      }));
  });
  return fc
    .array(step, { minLength: 1, maxLength: 3 })
    .map((list) => list.map((step, index) => ({ ...step, id: `step ${index}` as StepId })));
}

function readings({ placements }: LayoutDocument) {
  const of = <Kind extends string>(kind: Kind, stand: fc.Arbitrary<StandId | null>, value: fc.Arbitrary<number>) =>
    fc.record({ stand, kind: fc.constant(kind), value, tolerance: real(0, 0.01) });
  const weight = of("weight", fc.constant(null), real(0, 1e5));
  if (placements.length === 0) return fc.array(weight, { maxLength: 1 });
  const stand = fc.constantFrom(...placements.map(({ stand }) => stand));
  const gap = of("gap", stand, real(0, 0.01));
  const height = of("height", stand, real(-0.01, 0.01));
  return fc.array(fc.oneof(weight, gap, height, of("reaction", stand, real(0, 1e5))), { maxLength: 2 });
}

// What lies around

const display = () =>
  fc.record(
    {
      units: fc.constantFrom("us" as const, "metric" as const),
      length: fc.constantFrom(null, "ft-in" as const, "in" as const, "mm" as const, "m" as const),
      force: fc.constantFrom(
        null,
        "lb" as const,
        "kip" as const,
        "kg" as const,
        "t" as const,
        "N" as const,
        "kN" as const,
      ),
    },
    { requiredKeys: [] },
  );

function bay() {
  const [low, high]: readonly [Point, Point] = [
    [0, 0],
    [40, 20],
  ];
  const point = fc.tuple(real(1, 39), real(1, 19));
  return fc.record(
    {
      floor: fc.record({ slope: fc.tuple(real(-0.01, 0.01), real(-0.01, 0.01)) }),
      outline: fc.constant(rectangle(low, high)),
      obstacles: zones(low, high),
      noFootZones: zones(low, high),
      walkways: fc.array(
        fc.record(
          { name: text, from: point, to: point, width: real(0.5, 2), lane: fc.option(box(low, high)) },
          { requiredKeys: ["name", "from", "to"] },
        ),
        { maxLength: 2 },
      ),
      slab: fc.option(
        fc.record(
          {
            thickness: real(0.1, 0.5),
            compressiveStrength: decades(7, 7.7),
            subgradeModulus: decades(7, 8),
            joints: fc.option(fc.array(fc.tuple(point, point), { maxLength: 2 })),
          },
          { requiredKeys: ["thickness", "compressiveStrength", "subgradeModulus"] },
        ),
      ),
    },
    { requiredKeys: ["floor", "outline"] },
  );
}

function criteria() {
  const byMaterial = (value: fc.Arbitrary<number>) =>
    fc.record({ steel: value, hardwood: value, "uhmw-pe": value, rubber: value }, { requiredKeys: [] });
  return fc.record(
    {
      levelTolerance: real(0, 0.01),
      topTilt: real(0, 0.005),
      straightness: real(0, 0.002),
      setDownFactor: real(1, 2),
      tipReserve: real(1, 3),
      cgMargin: real(0, 0.1),
      personLoad: real(0, 2000),
      closeFraction: real(0.5, 1),
      friction: byMaterial(real(0, 1)),
      bearingPressure: byMaterial(decades(5, 8)),
      sagLimit: fc.option(real(0, 0.02)),
      require: fc.subarray([...findingCodes] as FindingCode[], { maxLength: 3 }),
    },
    { requiredKeys: [] },
  );
}
