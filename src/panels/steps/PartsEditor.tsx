/** What of the piece is there in a step: stretches that nothing joins, so that a half-built piece is computed as what it is. */

import { ActionIcon, Button } from "@mantine/core";
import { useState } from "react";
import { type Plan, pieceLength, type Step } from "../../plan";
import { cutAt, type Stretch, tidied } from "../../store";
import { Disclosure, Icon, QuantityField, useFormat } from "../../ui";
import { attempt } from "../connect";
import styles from "../panels.module.css";
import { counted } from "../words";

export function PartsEditor({ plan, step }: { readonly plan: Plan; readonly step: Step }) {
  const length = pieceLength(plan.piece);
  const format = useFormat();
  const [cut, setCut] = useState(length / 2);
  const commit = (parts: readonly Stretch[] | null, label: string) =>
    attempt("step.change", { step: step.id, change: { parts }, label });
  const parts = step.parts;
  return (
    <Disclosure
      summary="Parts that are there"
      aside={parts === null ? "the whole piece, joined" : counted(parts.length, "part")}
    >
      {parts?.map(([from, to], index) => (
        <div key={index} className={styles.partRow}>
          <div className={styles.fields}>
            <QuantityField
              label={`Part ${index + 1}, from`}
              kind="length"
              value={from}
              commit={(value) =>
                commit(tidied(replaced(parts, index, [value, to]), length), `Change the parts of ${step.name}`)
              }
            />
            <QuantityField
              label="to"
              kind="length"
              value={to}
              commit={(value) =>
                commit(tidied(replaced(parts, index, [from, value]), length), `Change the parts of ${step.name}`)
              }
            />
          </div>
          <div className={styles.actions}>
            {parts[index + 1]?.[0] === to && (
              <Button
                size="compact-md"
                variant="default"
                onClick={() => attempt("step.joint", { step: step.id, s: to, words: format(to, "length") })}
              >
                Weld the joint at {format(to, "length")}
              </Button>
            )}
            <ActionIcon
              variant="subtle"
              aria-label={`Part ${index + 1} is not there`}
              title="This part is not there"
              disabled={parts.length === 1}
              onClick={() =>
                commit(
                  parts.filter((_, at) => at !== index),
                  `Take a part out of ${step.name}`,
                )
              }
            >
              <Icon name="bin" />
            </ActionIcon>
          </div>
        </div>
      ))}
      <div className={styles.fields}>
        <QuantityField
          label={`Joint that carries nothing, from ${plan.piece.ends.datum}`}
          kind="length"
          value={cut}
          commit={(value) => {
            setCut(value);
            return null;
          }}
        />
      </div>
      <div className={styles.actions}>
        <Button
          size="compact-md"
          variant="default"
          onClick={() => commit(cutAt(parts, length, cut), `Open a joint at ${format(cut, "length")}`)}
        >
          Open the joint here
        </Button>
        {parts !== null && (
          <Button
            size="compact-md"
            variant="default"
            onClick={() => commit(null, `The whole piece is there in ${step.name}`)}
          >
            The whole piece, joined
          </Button>
        )}
      </div>
    </Disclosure>
  );
}

function replaced(parts: readonly Stretch[], index: number, stretch: Stretch): readonly Stretch[] {
  return parts.map((old, at) => (at === index ? stretch : old));
}
