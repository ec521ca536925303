/** Help that is not on one number: what a panel asks for and why. */

export type HelpEntry = "rating" | "weight" | "stiffness" | "parts";

export const helpEntries: Readonly<Record<HelpEntry, { readonly title: string; readonly text: readonly string[] }>> = {
  rating: {
    title: "the rating",
    text: [
      "Type what the plate on the stand says, in the plate's own units.",
      "Some plates speak of one stand and some of a pair. That is asked each time: taking one for the other is a factor of two.",
      "A rating is for a load spread over the top. Where the plate also names a load at the middle, type that too.",
    ],
  },
  weight: {
    title: "weights",
    text: [
      "Every weight says how it is known, and the ± that goes with it: a scale 1 %, the crane's hook scale 2 %, the maker or a drawing's model 5 %, calculation 10 %, a guess 25 %. Custom, no source.",
      "Lightest and heaviest are found over all of these at once, each item by itself.",
    ],
  },
  stiffness: {
    title: "stiffness",
    text: [
      "Rigid means that the piece does not bend between its stands: the reactions then depend on the heights of the tops alone, and a small shim moves much load.",
      "Pick a section, and the piece bends and twists as that section does.",
    ],
  },
  parts: {
    title: "parts",
    text: [
      "A joint that is not welded yet carries nothing. Open it in the steps before the weld: each part then has to stand by itself.",
    ],
  },
};
