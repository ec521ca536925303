/** How wide the ways are, and what the plan still takes. */

import type { WalkwayWidth } from "../../floor";
import { knownValue } from "../parts";
import type { Entry } from "./entry";

export const floorEntries = {
  "clear width": {
    label: "clear width of the walkway",
    formula: "the widest disc that gets through: at its narrowest, the distance between the two things that it touches",
    source: "plane geometry, to 2 mm; piece, obstacles, legs with toe clearance and tops below headroom left clear",
    unit: "m",
    of: ({ floor, walkway = 0 }, put) => {
      const way: WalkwayWidth | undefined = floor?.walkways[walkway];
      if (way === undefined || way.narrowestAt === null || way.across === null) return null;
      const { clearWidth: wide, narrowestAt: at, across } = way;
      const [one, other] = [-0.5, 0.5].map((half) => [
        at[0] + half * wide * across[0],
        at[1] + half * wide * across[1],
      ]);
      return {
        value: wide,
        text: `hypot(${put(other![0]!)} - ${put(one![0]!)}, ${put(other![1]!)} - ${put(one![1]!)})`,
      };
    },
  },
} as const satisfies Readonly<Record<string, Entry>>;

const scanned =
  "the value found by 32 equal steps to the stated end and halving to 1 %; beyond it a check fails that holds now";
const source = "every check made again at each value, all else as planned";

export const marginEntries = {
  "heaviest it may prove": {
    label: "heaviest that the piece may prove",
    formula: `weight × the factor on all masses; ${scanned}`,
    source,
    unit: "N",
    of: ({ context }, put) => {
      const factor = knownValue(context.margins)?.weight ?? null;
      const { weight } = context.level;
      return factor === null ? null : { value: factor * weight, text: `${put(factor)} * ${put(weight)}` };
    },
  },
  "greatest push": {
    label: "push that it still takes",
    formula: `push = share × W; ${scanned}`,
    source,
    unit: "N",
    of: ({ context }, put) => {
      const share = knownValue(context.margins)?.push ?? null;
      return share === null ? null : { value: share * context.weight, text: `${put(share)} * ${put(context.weight)}` };
    },
  },
  "weight added at a corner": {
    label: "weight that this corner of the outline still takes",
    formula: `a weight set on the corner, to twice the resultant of the loads; ${scanned}`,
    source,
    unit: "N",
    of: ({ context, corner = -1 }, put) => {
      const value = knownValue(context.margins)?.addedLoad[corner]?.value ?? null;
      return value === null ? null : { value, text: put(value) };
    },
  },
  "% of rating without it": {
    label: "most that another stand is used, as a share of its rating, without this one",
    formula:
      "this stand taken away, all else as planned: the greatest of heaviest × set-down factor / rating of the others",
    source: "bounds and ratings computed again without it",
    unit: "1",
    of: ({ context, stand }, put) => {
      const lost = knownValue(context.margins)?.without.find((one) => one.stand === stand?.placement.stand);
      const value = lost?.utilisation ?? null;
      return value === null ? null : { value, text: put(value) };
    },
  },
  "tops off level by": margin("tops off level by", "level", "levelTolerance of all stands, to 50 mm"),
  "off its marks along": margin("off its marks, along the piece", "along", "the piece moved either way, to 1 m"),
  "off its marks across": margin("off its marks, across the piece", "across", "the piece moved either way, to 1 m"),
} as const satisfies Readonly<Record<string, Entry>>;

function margin(label: string, of: "level" | "along" | "across", what: string): Entry {
  return {
    label,
    formula: `${what}; ${scanned}`,
    source,
    unit: "m",
    of: ({ context }, put) => {
      const value = knownValue(context.margins)?.[of] ?? null;
      return value === null ? null : { value, text: put(value) };
    },
  };
}
