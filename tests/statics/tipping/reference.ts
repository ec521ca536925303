/**
 * The reference cases as tipping sees them: contacts, resultants and greatest reactions are taken from the expected
 * answers, so that tipping is tested by itself, whatever assembles and solves the step.
 */

import { readdirSync, readFileSync } from "node:fs";
import { complete, type Mass, type Plan, type PlanDocument, type Step } from "../../../src/plan";
import type { ContactPoint, LoadItem, PartLevel, StepLevel, StepModel } from "../../../src/statics";

const folder = new URL("../../cases/reference/", import.meta.url);

export interface ExpectedEdge {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly distance: number | null;
  readonly reserve: number | null;
  readonly margin: number | null;
  readonly righting: number | null;
  readonly overturning: number | null;
}
interface ExpectedPart {
  readonly from: number;
  readonly to: number;
  readonly stable: boolean;
  readonly weight: number;
  readonly resultant: { readonly force: number; readonly s: number | null; readonly t: number | null };
  readonly tipping: {
    readonly edges: readonly ExpectedEdge[];
    readonly addedLoad: { readonly value: number; readonly s: number; readonly t: number } | null;
  };
}
interface ExpectedStep {
  readonly id: string;
  readonly stable: boolean;
  readonly weight: number;
  readonly stands: readonly {
    readonly stand: string;
    readonly reaction: { readonly level: number; readonly most: number | null } | null;
    readonly contact: readonly (readonly [number, number])[];
  }[];
  readonly parts: readonly ExpectedPart[];
}

export interface ReferenceStep {
  readonly name: string;
  readonly plan: Plan;
  readonly step: Step;
  readonly model: StepModel;
  readonly level: StepLevel;
  readonly most: readonly (number | null)[];
  readonly expected: ExpectedStep;
}

export function referenceSteps(): ReferenceStep[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".expected.json"))
    .sort()
    .flatMap((name) => {
      const json = (file: string): unknown => JSON.parse(readFileSync(new URL(file, folder), "utf8"));
      const plan = complete(json(name.replace(".expected", "")) as PlanDocument);
      const { steps } = json(name) as { steps: ExpectedStep[] };
      return steps.map((expected) => referenceStep(name, plan, expected));
    });
}

function referenceStep(name: string, plan: Plan, expected: ExpectedStep): ReferenceStep {
  const step = plan.steps.find((one) => one.id === expected.id)!;
  const model = modelOf(plan, step, expected);
  const parts = expected.parts.map(({ from, to, stable, weight, resultant }) => ({
    from,
    to,
    stable,
    weight,
    resultant,
  })) as unknown as PartLevel[];
  const level = { weight: expected.weight, stable: expected.stable, parts } as unknown as StepLevel;
  const most = expected.stands.map((stand) => stand.reaction?.most ?? null);
  return { name: `${name.replace(".expected.json", "")}, ${expected.id}`, plan, step, model, level, most, expected };
}

function modelOf(plan: Plan, step: Step, expected: ExpectedStep): StepModel {
  const { placements } = plan.layouts.find((layout) => layout.id === step.layout)!;
  const contacts: ContactPoint[][] = expected.parts.map(() => []);
  const stands = expected.stands.map(({ stand, contact }, index) => {
    const placement = placements.find((one) => one.stand === stand)!;
    const a = (placement.angle * Math.PI) / 180;
    const along = [-Math.sin(a), Math.cos(a)] as const;
    const at = (c: number) => ({ s: placement.s + c * along[0], t: placement.t + c * along[1] });
    const intervals = contact.map(([from, to], k) => {
      const middle = at((from + to) / 2).s;
      const near = expected.parts.flatMap((part, i) => (middle >= part.from && middle <= part.to ? [i] : []));
      // Along the common end of two parts the interval is listed once for each, part after part.
      const repeats = contact.slice(0, k).filter((other) => other[0] === from && other[1] === to).length;
      const part = near[repeats] ?? near.at(-1)!;
      for (const c of [from, (from + to) / 2, to])
        contacts[part]!.push({ stand: index, interval: k, ...at(c), c, stiffness: 0, height: 0, bow: 0 });
      return { from, to, part };
    });
    return {
      stand: placement.stand,
      s: placement.s,
      t: placement.t,
      along,
      stiffness: 0,
      estimated: false,
      topWidth: 0,
      legSpacing: 0,
      intervals,
    };
  });
  return {
    stands,
    parts: expected.parts.map(({ from, to }, index) => ({
      from,
      to,
      segments: [],
      contacts: contacts[index]!,
      loads: loadsOn(plan, step, from, to, expected.parts[index - 1]?.to === from),
    })),
  };
}

const g = 9.80665;

/** What lies on [from, to]; at a common end with the part before, what stands exactly there is on that one. */
function loadsOn(plan: Plan, step: Step, from: number, to: number, joined: boolean): LoadItem[] {
  const here = (s: number): boolean => (joined ? s > from : s >= from) && s <= to;
  const masses = plan.piece.masses.flatMap((mass, index): LoadItem[] => {
    if (step.absent.includes(mass.id)) return [];
    const source = { kind: "mass", index } as const;
    if (mass.kind === "line") return lineOn(mass, source, from, to);
    if (!here(mass.s)) return [];
    const down = mass.mass * g;
    return [{ kind: "point", source, s: mass.s, down, momentS: 0, momentT: down * mass.t }];
  });
  const loads = step.loads.flatMap(({ s, t, z, force: [fs, ft, fz] }, index): LoadItem[] =>
    here(s)
      ? [{ kind: "point", source: { kind: "load", index }, s, down: -fz, momentS: fs * z, momentT: -fz * t + ft * z }]
      : [],
  );
  return [...masses, ...loads];
}

function lineOn(
  mass: Extract<Mass, { kind: "line" }>,
  source: { readonly kind: "mass"; readonly index: number },
  from: number,
  to: number,
): LoadItem[] {
  const [a, b] = [Math.max(from, mass.from), Math.min(to, mass.to)];
  if (a >= b) return [];
  const [q0, q1] = mass.massPerLength;
  const at = (s: number): number => g * (q0 + ((q1 - q0) * (s - mass.from)) / (mass.to - mass.from));
  return [{ kind: "line", source, from: a, to: b, intensity: [at(a), at(b)], t: mass.t }];
}
