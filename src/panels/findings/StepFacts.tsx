/** What the step in view weighs, where its load centre is and what holds it up: numbers that can be asked about. */

import type { NumberName } from "../../checks";
import { explain } from "../../checks";
import type { QuantityKind } from "../../plan";
import { reportInView } from "../../store";
import { Disclosure, Entry, TitleBlock, useFormat } from "../../ui";
import { useCalm, usePlan } from "../connect";
import { NumberHelp } from "../help/NumberHelp";

const facts: readonly { readonly name: NumberName; readonly words: string; readonly kind: QuantityKind }[] = [
  { name: "weight", words: "Weight", kind: "force" },
  { name: "load centre along", words: "Load centre, along", kind: "length" },
  { name: "load centre across", words: "Load centre, across", kind: "length" },
  { name: "least force that tips", words: "Least force that tips it", kind: "force" },
  { name: "push", words: "Push reckoned with", kind: "force" },
];

export function StepFacts() {
  const plan = usePlan();
  const report = useCalm(reportInView);
  const format = useFormat();
  const parts = report.level.status === "known" ? report.level.value.parts.length : 0;
  if (parts === 0) return null;
  return (
    <Disclosure summary="Weight, load centre, tipping">
      {Array.from({ length: parts }, (_, part) => (
        <TitleBlock key={part}>
          {facts.flatMap(({ name, words, kind }) => {
            const found = explain(name, plan, report, { part });
            return found === null
              ? []
              : [
                  <Entry key={name} name={parts === 1 ? words : `Part ${part + 1}: ${words.toLowerCase()}`}>
                    <NumberHelp name={name} part={part}>
                      {format(found.value, kind)}
                    </NumberHelp>
                  </Entry>,
                ];
          })}
        </TitleBlock>
      ))}
    </Disclosure>
  );
}
