/** The criteria: each with its value, where it comes from, whether this plan changes it, and the way back. */

import { ActionIcon } from "@mantine/core";
import {
  type Criteria,
  type CriterionKey,
  criteriaOf,
  criteriaTable,
  criterionKeys,
  type FindingCode,
  findingCodes,
  isChanged,
  type Plan,
  type QuantityKind,
  type TopMaterial,
} from "../../plan";
import { CheckField, Disclosure, Icon, QuantityField, Section } from "../../ui";
import { attempt, usePlan } from "../connect";
import styles from "../panels.module.css";
import stepsStyles from "../steps/steps.module.css";
import { materialWords } from "../words";

/** The criteria that are one number. */
type NumberKey = { [Key in CriterionKey]: Criteria[Key] extends number | null ? Key : never }[CriterionKey];
type MaterialKey = {
  [Key in CriterionKey]: Criteria[Key] extends Readonly<Record<TopMaterial, number>> ? Key : never;
}[CriterionKey];

const materialKeys: readonly CriterionKey[] = ["friction", "bearingPressure"];
/** Ratios that people say in per cent. */
const inPercent: readonly CriterionKey[] = ["horizontalFraction", "closeFraction", "allowableStressFactor"];

function kindOf(key: CriterionKey): QuantityKind {
  const { unit } = criteriaTable[key];
  switch (unit) {
    case "m":
      return "length";
    case "N":
      return "force";
    case "Pa":
      return "pressure";
    case "m/m":
      return "slope";
    case "1":
    case "":
      return inPercent.includes(key) ? "fraction" : "ratio";
    default:
      return unit satisfies never;
  }
}

export function CriteriaPanel() {
  const plan = usePlan();
  const changed = criterionKeys.filter((key) => isChanged(plan, key)).length;
  return (
    <Section title="Criteria">
      <p className={styles.quiet}>
        {changed === 0
          ? "All as they come."
          : `${changed} changed in this plan; each is marked, here and on the sheet.`}
      </p>
      <ul className={stepsStyles.criteria}>
        {criterionKeys.map((key) => (
          <CriterionRow key={key} plan={plan} name={key} />
        ))}
      </ul>
    </Section>
  );
}

function CriterionRow({ plan, name }: { readonly plan: Plan; readonly name: CriterionKey }) {
  const { label, basis } = criteriaTable[name];
  const changed = isChanged(plan, name);
  return (
    <li className={stepsStyles.criterion} data-changed={changed}>
      <div className={stepsStyles.criterionField}>
        {name === "require" ? (
          <RequireField plan={plan} />
        ) : materialKeys.includes(name) ? (
          <MaterialFields plan={plan} name={name as MaterialKey} />
        ) : (
          <NumberField plan={plan} name={name as NumberKey} />
        )}
        {changed && (
          <ActionIcon
            variant="subtle"
            aria-label={`${label}: back to the default`}
            title="Back to the default"
            onClick={() => attempt("plan.criteria", { change: { [name]: undefined } })}
          >
            <Icon name="undo" />
          </ActionIcon>
        )}
      </div>
      <p className={styles.quiet}>
        {changed && <strong>Changed. </strong>}
        Default from: {basis}.
      </p>
    </li>
  );
}

function NumberField({ plan, name }: { readonly plan: Plan; readonly name: NumberKey }) {
  return (
    <QuantityField
      label={criteriaTable[name].label}
      kind={kindOf(name)}
      step={0}
      value={criteriaOf(plan)[name]}
      placeholder="no limit"
      commit={(value) => attempt("plan.criteria", { change: { [name]: value } })}
      {...(name === "sagLimit" ? { clear: () => attempt("plan.criteria", { change: { sagLimit: undefined } }) } : {})}
    />
  );
}

function MaterialFields({ plan, name }: { readonly plan: Plan; readonly name: MaterialKey }) {
  const values = criteriaOf(plan)[name];
  return (
    <fieldset className={styles.materials}>
      <legend>{criteriaTable[name].label}</legend>
      <div className={styles.fields}>
        {(Object.keys(values) as TopMaterial[]).map((material) => (
          <QuantityField
            key={material}
            label={materialWords[material]}
            kind={kindOf(name)}
            step={0}
            value={values[material]}
            commit={(value) =>
              attempt("plan.criteria", { change: { [name]: { ...plan.criteria[name], [material]: value } } })
            }
          />
        ))}
      </div>
    </fieldset>
  );
}

function RequireField({ plan }: { readonly plan: Plan }) {
  const required = new Set<FindingCode>(criteriaOf(plan).require);
  return (
    <Disclosure summary={criteriaTable.require.label} aside={required.size === 0 ? "none" : String(required.size)}>
      <div className={styles.checks}>
        {findingCodes.map((code) => (
          <CheckField
            key={code}
            label={code.replaceAll("-", " ")}
            value={required.has(code)}
            choose={(on) => {
              const after = findingCodes.filter((one) => (one === code ? on : required.has(one)));
              attempt("plan.criteria", { change: { require: after.length === 0 ? undefined : after } });
            }}
          />
        ))}
      </div>
    </Disclosure>
  );
}
