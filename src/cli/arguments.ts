/** The command line's words. */

export type Command =
  | {
      readonly kind: "check";
      readonly files: readonly string[];
      /** One JSON object a line instead of text. */
      readonly json: boolean;
      /** Compute "good up to" as well, which takes seconds. */
      readonly margins: boolean;
    }
  | { readonly kind: "help" }
  | { readonly kind: "version" }
  /** Not understood; `why` is one sentence. */
  | { readonly kind: "refused"; readonly why: string };

export const usage = `Usage: trestleboard check PLAN.json [PLAN2.json ...] [--json] [--margins]

Checks the plan of a set-down on stands: what each stand carries, whether the piece
may tip, and whether the stands and the floor hold.

  --json      print the whole result, one JSON object a line
  --margins   also say what each step still takes before something new fails
  --help      print this
  --version   print the version

Exit status: 0 when every verdict is holds or close, 1 when one is fails or unknown,
2 when a plan could not be read.

Results help a qualified person, they do not replace one.
`;

/** Reads the words after the program's name. */
export function commandOf(words: readonly string[]): Command {
  const options = new Set<string>();
  const rest: string[] = [];
  let onlyFiles = false;
  for (const word of words) {
    if (!onlyFiles && word === "--") onlyFiles = true;
    else if (!onlyFiles && word.startsWith("-") && word !== "-") options.add(word);
    else rest.push(word);
  }
  if (options.has("--help") || options.has("-h")) return { kind: "help" };
  if (options.has("--version")) return { kind: "version" };

  const [verb, ...files] = rest;
  if (verb === undefined) return refused("Say what to do: trestleboard check PLAN.json.");
  if (verb !== "check") return refused(`"${verb}" is no command; the command is: trestleboard check PLAN.json.`);
  const strange = [...options].find((option) => option !== "--json" && option !== "--margins");
  if (strange !== undefined) return refused(`"${strange}" is no option of check; it takes --json and --margins.`);
  if (files.length === 0) return refused("Name at least one plan file: trestleboard check PLAN.json.");
  return { kind: "check", files, json: options.has("--json"), margins: options.has("--margins") };
}

function refused(why: string): Command {
  return { kind: "refused", why };
}
