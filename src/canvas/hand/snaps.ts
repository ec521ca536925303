/** What a dragged stand snaps to: drawn stations by name first, else a round number that the hand can tell apart. */

import { type Station, snap, stationsAcross, stationsAlong } from "../../geometry";
import type { Display, Plan, Step } from "../../plan";
import { layoutOf } from "../../plan";
import type { SnapLine } from "../../store";
import type { Snap } from "./strokes";

/** Within how many px a stand snaps to a station. */
const reachOnScreen = 7;

/** A round number must differ from the next by so many px, or a coarser one is taken. */
const roundOnScreen = 1.5;

const inch = 0.0254;
const roundSteps = {
  us: [inch / 16, inch / 4, inch, 3 * inch, 6 * inch, 12 * inch],
  metric: [0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.5],
} as const;

/** The finest round step that a hand can set on a drawing to that scale (px a metre), m. */
export function roundStep(display: Display, scale: number): number {
  const steps = roundSteps[display.units];
  return steps.find((step) => step * scale >= roundOnScreen) ?? steps.at(-1)!;
}

/** Snapping in a plan's step at a scale, px a metre. Stations are those at the start of the drag. */
export function snapsOf(plan: Plan, step: Step, scale: number): Snap {
  const layout = layoutOf(plan, step);
  const reach = reachOnScreen / scale;
  const round = roundStep(plan.display, scale);
  const finest = roundSteps[plan.display.units][0];
  return (stand, s, t, free) => {
    if (free) return { s: Math.round(s / finest) * finest, t: Math.round(t / finest) * finest, lines: [] };
    const along = settle(s, stationsAlong(plan.piece, layout, step, stand), reach, round);
    const across = settle(t, stationsAcross(plan.piece, layout, stand), reach, round);
    const lines: SnapLine[] = [];
    if (along.name !== null) lines.push({ axis: "s", at: along.value, name: along.name });
    if (across.name !== null) lines.push({ axis: "t", at: across.value, name: across.name });
    return { s: along.value, t: across.value, lines };
  };
}

/** A station in reach by its name, or the nearest round number, which needs none. */
function settle(
  value: number,
  stations: readonly Station[],
  reach: number,
  round: number,
): { readonly value: number; readonly name: string | null } {
  const station = snap(value, stations, reach);
  if (station === null) return { value: Math.round(value / round) * round, name: null };
  const same = stations.filter((other) => Math.abs(other.value - station.value) < 1e-6);
  return { value: station.value, name: [...new Set(same.map(({ name }) => name))].slice(0, 2).join(", ") };
}
