/** The words of the trade for the keys of the plan file. */

import type { StandCondition, StandType, TopMaterial, WeightBasis } from "../plan";
import type { Choice } from "../ui";

export const basisWords: Readonly<Record<WeightBasis, string>> = {
  scale: "a scale",
  hook: "the crane's hook scale",
  maker: "the maker",
  model: "a drawing's model",
  calculated: "calculation",
  guess: "a guess",
};

/** How a weight is known, with "not said" for null. */
export const basisChoices: readonly Choice<WeightBasis | "none">[] = [
  { value: "none", label: "not said" },
  ...(Object.keys(basisWords) as WeightBasis[]).map((value) => ({ value, label: basisWords[value] })),
];

export const materialWords: Readonly<Record<TopMaterial, string>> = {
  steel: "steel",
  hardwood: "hardwood",
  "uhmw-pe": "plastic (UHMW-PE)",
  rubber: "rubber",
};

export const materialChoices = (Object.keys(materialWords) as TopMaterial[]).map((value) => ({
  value,
  label: materialWords[value],
}));

export const legWords: Readonly<Record<StandType["legs"], string>> = {
  "a-frame": "splayed (A-frame)",
  vertical: "straight down",
};

export const conditionWords: Readonly<Record<StandCondition, string>> = {
  "in-service": "in service",
  inspect: "to be inspected",
  "out-of-service": "out of service",
};

export const conditionChoices = (Object.keys(conditionWords) as StandCondition[]).map((value) => ({
  value,
  label: conditionWords[value],
}));

/** How the tops are set, by the height tolerance that goes with it, m. */
export const topSettings = [
  { value: "touch", label: "shimmed until they touch", levelTolerance: 0.0005 },
  { value: "laser", label: "set by laser", levelTolerance: 0.003 },
  { value: "tape", label: "set by tape", levelTolerance: 0.006 },
] as const;

/** One and many: "1 stand", "4 stands". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
