/** People, tools and pushes on the piece in one step. */

import { ActionIcon } from "@mantine/core";
import { criteriaOf, type Load, type Plan, pieceLength, type Step } from "../../plan";
import { Icon, QuantityField, TextField } from "../../ui";
import { attempt } from "../connect";
import styles from "../panels.module.css";
import { AddButton } from "../piece/OutlineEditor";

export function LoadsEditor({ plan, step }: { readonly plan: Plan; readonly step: Step }) {
  const commit = (loads: readonly Load[], label: string) =>
    attempt("step.change", { step: step.id, change: { loads }, label });
  const { personLoad } = criteriaOf(plan);
  const add = (name: string, force: Load["force"]) =>
    commit([...step.loads, { name, s: pieceLength(plan.piece) / 2, t: 0, z: plan.piece.depth, force }], `Add ${name}`);
  return (
    <>
      {step.loads.map((load, index) => {
        const replace = (keys: Partial<Load>) =>
          commit(
            step.loads.map((old, at) => (at === index ? { ...old, ...keys } : old)),
            `Change ${load.name}`,
          );
        const [along, across, up] = load.force;
        return (
          <fieldset key={index} className={styles.ask}>
            <legend>{load.name}</legend>
            <div className={styles.fields}>
              <TextField label="Name" required value={load.name} commit={(name) => replace({ name })} />
              <QuantityField
                label={`From ${plan.piece.ends.datum}`}
                kind="length"
                value={load.s}
                commit={(s) => replace({ s })}
              />
              <QuantityField label="Across" kind="length" value={load.t} commit={(t) => replace({ t })} />
              <QuantityField label="Up" kind="length" value={load.z} commit={(z) => replace({ z })} />
              <QuantityField
                label="Downward"
                kind="force"
                value={-up}
                commit={(down) => replace({ force: [along, across, down === 0 ? 0 : -down] })}
              />
              <QuantityField
                label="Push along"
                kind="force"
                value={along}
                commit={(push) => replace({ force: [push, across, up] })}
              />
              <QuantityField
                label="Push across"
                kind="force"
                value={across}
                commit={(push) => replace({ force: [along, push, up] })}
              />
            </div>
            <ActionIcon
              variant="subtle"
              aria-label={`Remove ${load.name}`}
              title={`Remove ${load.name}`}
              onClick={() =>
                commit(
                  step.loads.filter((_, at) => at !== index),
                  `Remove ${load.name}`,
                )
              }
            >
              <Icon name="bin" />
            </ActionIcon>
          </fieldset>
        );
      })}
      <div className={styles.actions}>
        <AddButton onClick={() => add("person with tools", [0, 0, -personLoad])}>A person with tools</AddButton>
        <AddButton onClick={() => add("push", [0, 500, 0])}>A push</AddButton>
      </div>
    </>
  );
}
