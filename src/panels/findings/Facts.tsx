/** The facts of the step in view, one list a part: each number can be asked about. */

import type { StepReport } from "../../checks";
import type { TippingEdge } from "../../statics";
import { reportInView } from "../../store";
import { useCalm } from "../connect";
import { type Fact, FactList } from "../help/FactList";

const ofParts: readonly Fact[] = [
  { name: "weight", words: "Weight", kind: "force" },
  { name: "load centre along", words: "Load centre, along", kind: "length" },
  { name: "load centre across", words: "Load centre, across", kind: "length" },
  { name: "inside the tipping line", words: "Inside the tipping line by", kind: "length", ofEdge: true },
  { name: "reserve against tipping", words: "Reserve against tipping", kind: "ratio", ofEdge: true },
  { name: "margin against tipping", words: "Margin against tipping", kind: "moment", ofEdge: true },
  { name: "least force that tips", words: "Least force that tips it", kind: "force" },
  { name: "push", words: "Push reckoned with", kind: "force" },
  { name: "reserve against rolling over", words: "Reserve against rolling over", kind: "ratio", ofEdge: true },
  { name: "droop at the datum end", words: "Droop, datum end", kind: "length" },
  { name: "droop at the far end", words: "Droop, far end", kind: "length" },
];

const ofStep: readonly Fact[] = [
  { name: "centre of gravity along", words: "Centre of gravity, along", kind: "length" },
  { name: "centre of gravity across", words: "Centre of gravity, across", kind: "length" },
  { name: "centre of gravity up", words: "Centre of gravity, up", kind: "length" },
  { name: "reserve against sliding on the tops", words: "Reserve against sliding on the tops", kind: "ratio" },
  { name: "sag", words: "Sag", kind: "length" },
  { name: "bending stress", words: "Bending stress", kind: "pressure" },
  { name: "bending, % of what is allowed", words: "Bending, of what is allowed", kind: "share" },
  { name: "shear stress", words: "Shear stress", kind: "pressure" },
  { name: "shear, % of what is allowed", words: "Shear, of what is allowed", kind: "share" },
];

export default function Facts() {
  const parts = useCalm((state) => {
    const { level } = reportInView(state);
    return level.status === "known" ? level.value.parts.length : 0;
  });
  if (parts === 0) return null;
  return (
    <>
      {Array.from({ length: parts }, (_, part) => (
        <FactList
          key={part}
          facts={ofParts}
          about={({ ofEdge }, report) => {
            const edge = ofEdge === undefined ? null : governingEdge(report, part);
            return edge === null ? { part } : { part, edge };
          }}
          {...(parts === 1 ? {} : { of: `Part ${part + 1}` })}
        />
      ))}
      <FactList facts={ofStep} about={() => ({})} />
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
