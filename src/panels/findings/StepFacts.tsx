/** What the step in view weighs, where its load centre is and what holds it up: numbers that can be asked about. */

import { explain, type NumberName, type StepReport } from "../../checks";
import type { QuantityKind } from "../../plan";
import type { TippingEdge } from "../../statics";
import { reportInView } from "../../store";
import { Disclosure, Entry, TitleBlock, useFormat } from "../../ui";
import { useCalm, usePlan } from "../connect";
import { NumberHelp } from "../help/NumberHelp";

interface Fact {
  readonly name: NumberName;
  readonly words: string;
  readonly kind: QuantityKind;
  /** It speaks of the tipping line that governs. */
  readonly ofEdge?: true;
}

const facts: readonly Fact[] = [
  { name: "weight", words: "Weight", kind: "force" },
  { name: "load centre along", words: "Load centre, along", kind: "length" },
  { name: "load centre across", words: "Load centre, across", kind: "length" },
  { name: "inside the tipping line", words: "Inside the tipping line by", kind: "length", ofEdge: true },
  { name: "reserve against tipping", words: "Reserve against tipping", kind: "ratio", ofEdge: true },
  { name: "margin against tipping", words: "Margin against tipping", kind: "moment", ofEdge: true },
  { name: "least force that tips", words: "Least force that tips it", kind: "force" },
  { name: "push", words: "Push reckoned with", kind: "force" },
];

export function StepFacts() {
  return (
    <Disclosure summary="Weight, load centre, tipping">
      <Facts />
    </Disclosure>
  );
}

function Facts() {
  const plan = usePlan();
  const report = useCalm(reportInView);
  const format = useFormat();
  const parts = report.level.status === "known" ? report.level.value.parts.length : 0;
  if (parts === 0) return null;
  return (
    <>
      {Array.from({ length: parts }, (_, part) => {
        const edge = governingEdge(report, part);
        return (
          <TitleBlock key={part}>
            {facts.flatMap(({ name, words, kind, ofEdge }) => {
              const about = ofEdge && edge !== null ? { part, edge } : { part };
              const found = explain(name, plan, report, about);
              return found === null
                ? []
                : [
                    <Entry key={name} name={parts === 1 ? words : `Part ${part + 1}: ${words.toLowerCase()}`}>
                      <NumberHelp name={name} {...about}>
                        {format(found.value, kind)}
                      </NumberHelp>
                    </Entry>,
                  ];
            })}
          </TitleBlock>
        );
      })}
    </>
  );
}

/** The tipping line with the least reserve; where nothing overturns, the one nearest to the load centre. */
function governingEdge({ tipping }: StepReport, part: number): TippingEdge | null {
  const edges = tipping.status === "known" ? (tipping.value[part]?.edges ?? []) : [];
  const rank = ({ reserve, distance }: TippingEdge) =>
    [reserve ?? Number.POSITIVE_INFINITY, distance ?? Number.POSITIVE_INFINITY] as const;
  let worst: TippingEdge | null = null;
  for (const edge of edges) {
    const [reserve, distance] = rank(edge);
    const [least, nearest] = worst === null ? [Infinity, Infinity] : rank(worst);
    if (worst === null || reserve < least || (reserve === least && distance < nearest)) worst = edge;
  }
  return worst;
}
