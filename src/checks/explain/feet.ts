/** A stand on its feet, what its top and its feet press with, and where people trip over it. */

import {
  allowableSlabStress,
  feetForces,
  interiorStress,
  loadedRadius,
  relativeStiffnessRadius,
  resistingRadius,
  slabFootForce,
} from "../../floor";
import {
  convexHull,
  footSpacing,
  pieceFrame,
  pointToSegment,
  polygonToOuter,
  standFrame,
  toInner,
} from "../../geometry";
import type { Point } from "../../plan";
import { beyond, edgesOf, gravity, levelAt, perturb } from "../../statics";
import { boundsOf, type StandContext, type StepContext } from "../context";
import { knownValue } from "../parts";
import { slidingOf, standOnFeet } from "../push";
import type { Entry, Filled } from "./entry";
import { type Put, sum } from "./text";

export const feetEntries = {
  "press-down": {
    label: "press-down",
    formula: "greatest pressure on the top × top's width × bearing length ÷ stiffness of the stand",
    source: "the stand as a spring, spread evenly over its bearing length, docs/mechanics.md",
    unit: "m",
    of: ({ context, stand }, put) => {
      const { settlement = null, bearingPressure = null } = stand?.level ?? {};
      if (stand === undefined || settlement === null || bearingPressure === null || settlement === 0) return null;
      const model = context.model.stands[stand.index]!;
      return {
        value: settlement,
        text: `${put(bearingPressure)} * ${put(model.topWidth)} * ${put(bearingLength(stand))} / ${put(model.stiffness)}`,
      };
    },
  },

  "pressure on the top": {
    label: "pressure on the top",
    formula: "set-down factor × stiffness × greatest press-down at the heaviest ÷ (bearing length × top's width)",
    source: "docs/mechanics-tipping.md, S7",
    unit: "Pa",
    of: ({ context, stand }, put) => pressed(context, stand, put),
  },

  "own reserve": {
    label: "the stand's own reserve against tipping over",
    formula:
      "(R·b + own weight·b₀) ÷ (its share of the push × (height + shim)); b, b₀: R and the middle inside the worst line of its feet",
    source: "customary overturning factor; docs/mechanics-tipping.md, T14",
    unit: "1",
    of: ({ context, stand }, put) => ownReserve(context, stand, put),
  },

  "greatest foot force": {
    label: "force under its most loaded foot, as planned",
    formula: "R·(½ + |c| ÷ (leg spacing at the floor)) ÷ 2, c the place of the reaction along the top",
    source: "statics: the lever rule between the two leg frames at the floor; docs/mechanics-floor.md, F2",
    unit: "N",
    of: ({ stand }, put) => {
      const { reaction = null, centre = null } = stand?.level ?? {};
      if (stand === undefined || reaction === null || centre === null) return null;
      const { type, placement } = stand;
      const c = toInner(standFrame(placement), [centre.s, centre.t])[1];
      return {
        value: Math.max(...feetForces(type, placement.height, reaction, c)),
        text: `${put(reaction)} * (0.5 + abs(${put(c)}) / ${put(footSpacing(type, placement.height))}) / 2`,
      };
    },
  },

  "slab stress": {
    label: "stress of the slab away from joints, under the stand's most stressed foot",
    formula:
      "0.316·P/h²·(4·log₁₀(l/b) + 1.069) + what the other feet within 3·l add; P the frame's share + half the own weight",
    source: "Westergaard, in Huang, Pavement Analysis and Design, 2nd ed., section 4.2",
    unit: "Pa",
    of: ({ context, stand }, put) => onSlab(context, stand, put),
  },
  "slab, % of what is allowed": {
    label: "slab away from joints, % of what is allowed",
    formula: "stress ÷ (0.62·√f′c in MPa ÷ slab factor)",
    source: "ACI 318 19.2.3.1; slab factor: customary for few repetitions",
    unit: "1",
    of: ({ context, stand }, put) => {
      const slab = context.plan.bay?.slab ?? null;
      const stress = onSlab(context, stand, put);
      if (slab === null || stress === null) return null;
      const { slabFactor } = context.criteria;
      const strength = put(slab.compressiveStrength / 1e6);
      return {
        value: stress.value / allowableSlabStress(slab, context.criteria),
        text: `(${stress.text}) / (0.62 * sqrt(${strength}) * 1000000 / ${put(slabFactor)})`,
      };
    },
  },

  "trip reach": {
    label: "how far its legs reach out from the piece",
    formula: "distance from the farthest point of the trip zone to the nearest point of the piece's outline",
    source: "plane geometry; legs up to the trip height, grown by the toe clearance",
    unit: "m",
    of: ({ floor, stand, context }, put) => {
      const zone = floor?.stands.find((one) => one.stand === stand?.placement.stand)?.tripZone;
      if (zone === undefined || zone.reach === 0) return null;
      const { outline, pose } = context.plan.piece;
      const piece = polygonToOuter(pieceFrame(pose), outline);
      return farthest(
        zone.polygons.flatMap(({ outer, holes }) => [outer, ...holes].flat()),
        piece,
        zone.reach,
        put,
      );
    },
  },
} as const satisfies Readonly<Record<string, Entry>>;

const bearingLength = ({ level }: StandContext): number =>
  level.contact.reduce((total, [from, to]) => total + (to - from), 0);

function pressed(context: StepContext, stand: StandContext | undefined, put: Put): Filled | null {
  const witness = stand === undefined ? undefined : boundsOf(context, stand.index)?.mostAt;
  if (stand === undefined || witness === undefined) return null;
  const heaviest = levelAt(perturb(context.model, context.plan, witness), context.plan.piece.masses);
  const { settlement, bearingPressure } = heaviest.stands[stand.index]!;
  if (settlement === null || bearingPressure === null || bearingPressure === 0) return null;
  const { topWidth, stiffness, estimated } = context.model.stands[stand.index]!;
  const k = estimated ? stiffness * witness.stiffness : stiffness;
  return {
    value: context.setDownFactor * bearingPressure,
    text: `${put(context.setDownFactor)} * ${put(k)} * ${put(settlement)} / (${put(bearingLength(stand))} * ${put(topWidth)})`,
  };
}

function ownReserve(context: StepContext, stand: StandContext | undefined, put: Put): Filled | null {
  if (stand === undefined || context.noReactions) return null;
  const { feet, middle, centre, square, topWidth, height, reaction, selfWeight } = standOnFeet(stand);
  const push = slidingOf(context).shares[stand.index]!;
  const hull = convexHull(feet);
  if (hull.length < 3 || !(push > 0)) return null;
  let worst: Filled | null = null;
  for (const edge of edgesOf(hull))
    for (const side of [-0.5, 0.5]) {
      const b = -beyond(edge, centre[0] + side * topWidth * square[0], centre[1] + side * topWidth * square[1]);
      const b0 = -beyond(edge, middle[0], middle[1]);
      const value = (reaction * b + selfWeight * b0) / (push * height);
      if (worst !== null && value >= worst.value) continue;
      const text = `(${put(reaction)} * ${put(b)} + ${put(selfWeight)} * ${put(b0)}) / (${put(push)} * ${put(height)})`;
      worst = { value, text };
    }
  return worst;
}

/** Interior stress under the foot of a stand that has most of it. */
function onSlab(context: StepContext, stand: StandContext | undefined, put: Put): Filled | null {
  const slab = context.plan.bay?.slab ?? null;
  const known = knownValue(context.slab);
  if (stand === undefined || slab === null || known === null) return null;
  const h = slab.thickness;
  const l = relativeStiffnessRadius(slab);
  const { type } = stand;
  const b = resistingRadius(loadedRadius(type.foot.length * type.foot.width), h);
  const feet = known.stands[stand.index]!.feet;
  const most = feet.reduce((worst, foot, index) => (foot.interior > feet[worst]!.interior ? index : worst), 0);
  const frames = boundsOf(context, stand.index)?.legFramesMost;
  if (frames === undefined) return null;
  const P = slabFootForce(frames[most < 2 ? 0 : 1], context.setDownFactor, type.selfMass * gravity);
  const value = feet[most]!.interior;
  const others = value - interiorStress(P, h, l, b);
  const own = `0.316 * ${put(P)} / (${put(h)} * ${put(h)}) * (4 * log10(${put(l)} / ${put(b)}) + 1.069)`;
  return {
    value,
    text: sum(
      [
        { text: own, value: value - others },
        { text: put(others), value: others },
      ],
      put,
    ),
  };
}

/** The corner that reaches as far as is told, and the point of the outline nearest to it. */
function farthest(corners: readonly Point[], outline: readonly Point[], reach: number, put: Put): Filled | null {
  for (const corner of corners) {
    const near = outline
      .map((from, index) => pointToSegment(corner, from, outline[(index + 1) % outline.length]!))
      .reduce((least, one) => (one.distance < least.distance ? one : least));
    if (Math.abs(near.distance - reach) > sameReach) continue;
    const [x, y] = near.to;
    return { value: reach, text: `hypot(${put(corner[0])} - ${put(x)}, ${put(corner[1])} - ${put(y)})` };
  }
  return null;
}

/** m. */
const sameReach = 1e-9;
