/** What a stand presses and how it stands on its own feet: numbers that can be asked about. */

import type { StandId } from "../../plan";
import { type Fact, FactList } from "../help/FactList";

const facts: readonly Fact[] = [
  { name: "own reserve", words: "Own reserve against tipping over", kind: "ratio" },
  { name: "reserve against sliding on the floor", words: "Reserve against sliding on the floor", kind: "ratio" },
  { name: "rating at this spread", words: "Rating at this spread", kind: "force" },
  { name: "greatest foot force", words: "Most loaded foot", kind: "force" },
  { name: "pressure on the top", words: "Pressure on the top", kind: "pressure" },
  { name: "web yielding, % of strength", words: "Web: local yielding", kind: "share" },
  { name: "web crippling, % of strength", words: "Web: crippling", kind: "share" },
  { name: "slab stress", words: "Slab away from joints", kind: "pressure" },
  { name: "slab, % of what is allowed", words: "Slab, of what is allowed", kind: "share" },
  { name: "trip reach", words: "Legs reach out by", kind: "length" },
];

export default function StandFacts({ stand }: { readonly stand: StandId }) {
  return <FactList facts={facts} about={() => ({ stand })} />;
}
