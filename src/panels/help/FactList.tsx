/** Numbers that the help can tell of, each with its value: those that this plan has. */

import { explain, type NumberName, type StepReport } from "../../checks";
import type { QuantityKind } from "../../plan";
import { reportInView } from "../../store";
import { Entry, TitleBlock, useFormat } from "../../ui";
import { useCalm, usePlan } from "../connect";
import { NumberHelp } from "./NumberHelp";
import type { About } from "./question";

export interface Fact {
  readonly name: NumberName;
  readonly words: string;
  /** "share": a ratio told in percent. */
  readonly kind: QuantityKind | "share";
  /** It speaks of the tipping line that governs. */
  readonly ofEdge?: true;
}

interface FactListProps {
  readonly facts: readonly Fact[];
  readonly about: (fact: Fact, report: StepReport) => About;
  /** What it is of, where there are several. */
  readonly of?: string;
}

export function FactList({ facts, about, of }: FactListProps) {
  const plan = usePlan();
  const report = useCalm(reportInView);
  const format = useFormat();
  return (
    <TitleBlock>
      {facts.flatMap((fact) => {
        const { name, words, kind } = fact;
        const { stand, part, edge } = about(fact, report);
        const known = {
          ...(stand === undefined ? {} : { stand }),
          ...(part === undefined ? {} : { part }),
          ...(edge === undefined ? {} : { edge }),
        };
        const found = explain(name, plan, report, known);
        if (found === null) return [];
        return [
          <Entry key={name} name={of === undefined ? words : `${of}: ${words.toLowerCase()}`}>
            <NumberHelp name={name} {...known}>
              {kind === "share" ? `${(found.value * 100).toFixed(0)} %` : format(found.value, kind)}
            </NumberHelp>
          </Entry>,
        ];
      })}
    </TitleBlock>
  );
}
