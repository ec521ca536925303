/** Where a limit comes from, in words; a criterion that the plan changes is marked as changed. */

import type { CriterionKey, Plan, TopMaterial } from "../../plan";
import { criteriaTable, isChanged } from "../../plan";
import type { Basis } from "../facts";

export interface BasisTold {
  readonly basis: string;
  readonly changed: boolean;
}

export function basisOf(basis: Basis, plan: Pick<Plan, "criteria">): BasisTold {
  switch (basis.kind) {
    case "criterion":
      return told(`${wordOf(basis.key)}: ${criteriaTable[basis.key].basis}`, plan, basis.key, basis.material);
    case "text":
      return basis.changedBy === undefined
        ? { basis: basis.text, changed: false }
        : told(basis.text, plan, basis.changedBy);
  }
}

/** A criterion in the trade's word, as it stands inside a sentence. */
function wordOf(key: CriterionKey): string {
  const { label } = criteriaTable[key];
  return label.charAt(0).toLowerCase() + label.slice(1);
}

function told(text: string, plan: Pick<Plan, "criteria">, key: CriterionKey, material?: TopMaterial): BasisTold {
  if (!isChanged(plan, key, material)) return { basis: text, changed: false };
  const standard: unknown = criteriaTable[key].default;
  const was =
    typeof standard === "object" && standard !== null && material !== undefined
      ? (standard as Readonly<Record<TopMaterial, number>>)[material]
      : standard;
  const from = typeof was === "number" ? ` from ${was}` : "";
  return { basis: `${text} (${wordOf(key)} changed in this plan${from})`, changed: true };
}
