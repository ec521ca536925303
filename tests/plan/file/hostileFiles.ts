/** Files made to be slow to refuse, of about a given size, each with the path that is at fault. */

import { wholePlan } from "./wholePlan";

export interface HostileFile {
  readonly name: string;
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** The whole plan with a piece of its text replaced. */
function withText(from: string, to: string): string {
  if (!wholePlan.includes(from)) throw new Error(`the plan does not hold ${from}`);
  return wholePlan.replace(from, () => to);
}

/** As many of something as a file of so many bytes holds, one after the other. */
function filled(
  bytes: number,
  one: (index: number) => string,
  last?: string,
): { readonly list: string; readonly count: number } {
  const items: string[] = [];
  for (let length = 0; length < bytes; length += items.at(-1)!.length + 1) items.push(one(items.length));
  if (last !== undefined) items.push(last);
  return { list: items.join(","), count: items.length };
}

const comb = (teeth: number) => {
  const corners = Array.from({ length: 2 * teeth }, (_, index) => `[${index % 2 === 0 ? 0 : 99},${index}]`);
  return `[${corners.join(",")},[-1,${2 * teeth}],[-1,-1]]`;
};
const bowTie = "[[0,0],[2,2],[2,0],[0,2]]";
const zone = (polygon: string) => `{"name":"","polygon":${polygon}}`;
const mass = (id: string, s = 1) => `{"id":"${id}","name":"","kind":"point","s":${s},"t":0,"z":0,"mass":0}`;
const step = (id: string, parts: string) => `{"id":"${id}","name":"","layout":"A","parts":${parts}}`;

const plan = JSON.parse(wholePlan);
const stringOf = (value: unknown) => JSON.stringify(value);
const compact = stringOf(plan);
function with_(key: string, from: unknown, to: string): string {
  const old = `"${key}":${stringOf(from)}`;
  if (!compact.includes(old)) throw new Error(`the plan does not hold ${old}`);
  return compact.replace(old, () => `"${key}":${to}`);
}
const masses = (to: string) => with_("masses", plan.piece.masses, `[${to}]`).replace('["carriage"]', "[]");
const zones = (to: string) => with_("noRestZones", plan.piece.noRestZones, `[${to}]`);
const steps = (to: string) => with_("steps", plan.steps, `[${to}]`);

export function hostileFiles(bytes: number): readonly HostileFile[] {
  const room = bytes - wholePlan.length - 200;
  const file = (name: string, path: string, content: string | Uint8Array): HostileFile => ({ name, path, content });

  const combs = filled(room - 100_000, () => zone(comb(4000)), zone(bowTie));
  const darts = filled(room, () => zone("[[0,0],[2,1],[0,2],[1,1]]"), zone(bowTie));
  const sameIds = filled(room, () => mass("m"));
  const manyMasses = filled(room, (index) => mass(`m${index}`), mass("m0"));
  const halfMasses = filled(room / 2, (index) => mass(`m${index}`, index % 12));
  const halfSteps = filled(room / 2, (index) => step(`s${index}`, "[[0,12]]"), step("last", "[[0,10.5]]"));
  const loads = filled(
    room,
    (index) => `{"name":"","s":${index % 6},"t":0,"z":0,"force":[0,0,0]}`,
    '{"name":"","s":9,"t":0,"z":0,"force":[0,0,0]}',
  );
  const placements = filled(room / 2, (index) => `{"id":"H${index}","type":"af-20k","condition":"inspect"}`);

  return [
    file("larger than any plan", "", new Uint8Array(100_000_000)),
    file("brackets in brackets", "", "[".repeat(bytes)),
    file("braces in braces", "", '{"a":'.repeat(bytes / 5)),
    file(
      "ten thousand deep within a plan",
      "",
      withText('"notes": ""', `"notes": ${"[".repeat(10_000)}${"]".repeat(10_000)}`),
    ),
    file("a text that does not end", "", `{"title":"${"a".repeat(bytes - 10)}`),
    file("nothing but line breaks", "", "\n".repeat(bytes)),
    file("rubbish on a far line", "", `${"\n".repeat(bytes - 10)}rubbish`),
    file("a number of a million digits", "format", `{"format":${"9".repeat(bytes - 20)}}`),
    file("a text of escapes", "format", `{"format":"${"\\u0041\\n".repeat(bytes / 8 - 10)}"}`),
    file("a list where a text belongs", "notes", withText('"notes": ""', `"notes": [${filled(room, () => "0").list}]`)),
    file("empty masses", "piece.masses[0].id", masses(filled(room, () => "{}").list)),
    file(
      "keys that no one knows",
      "k0",
      compact.replace("{", () => `{${filled(room, (index) => `"k${index}":0`).list},`),
    ),
    file(
      "keys that are numbers",
      "0",
      compact.replace("{", () => `{${filled(room, (index) => `"${index * 4096}":0`).list},`),
    ),
    file(
      "polygons with long edges, the last crossed",
      `piece.noRestZones[${combs.count - 1}].polygon`,
      zones(combs.list),
    ),
    file("small polygons, the last crossed", `piece.noRestZones[${darts.count - 1}].polygon`, zones(darts.list)),
    file("one id for all masses", "piece.masses[1].id", masses(sameIds.list)),
    file("the first id again at the end", `piece.masses[${manyMasses.count - 1}].id`, masses(manyMasses.list)),
    file(
      "many masses in many steps, one off the last one's part",
      `steps[${halfSteps.count - 1}].parts`,
      masses(halfMasses.list).replace(
        `"steps":${stringOf(plan.steps).replace('["carriage"]', "[]")}`,
        () => `"steps":[${halfSteps.list}]`,
      ),
    ),
    file(
      "many loads, the last off every part",
      `steps[0].loads[${loads.count - 1}].s`,
      steps(`{"id":"a","name":"","layout":"A","absent":["carriage"],"parts":[[0,6]],"loads":[${loads.list}]}`),
    ),
    file(
      "more placements than a layout has",
      "layouts[0].placements",
      with_(
        "placements",
        plan.layouts[0].placements,
        `[${placements.list.replaceAll('"id"', '"stand"').replaceAll('"type":"af-20k","condition":"inspect"', '"s":1,"t":0,"height":1')}]`,
      ),
    ),
  ];
}
