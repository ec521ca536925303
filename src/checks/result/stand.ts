/** A stand's entry of the result file. */

import { feetForces, footprintOf, standInBay } from "../../floor";
import { standFrame, toInner } from "../../geometry";
import type { Witness } from "../../statics";
import type { StandContext, StepContext } from "../context";
import { utilisationOf } from "../families/ratings";
import { knownValue, type StandBounds, type StepCertificates } from "../parts";
import type { StepReport } from "../report";
import { type Json, number, numbers, place } from "./json";

/** `context` is null where the level solution failed: everything that it would say is null. */
export function standEntry(context: StepContext, stand: StandContext, report: StepReport): Json {
  const { level, placement } = stand;
  const bounds = knownValue(report.bounds)?.stands?.[stand.index] ?? null;
  const over = bounds?.over ?? null;
  return {
    stand: placement.stand,
    s: number(placement.s),
    t: number(placement.t),
    reaction: reaction(context, stand, bounds, knownValue(report.certificates)),
    mostAt: witness(over?.mostAt),
    leastAt: witness(over?.leastAt),
    centre: place(level.centre),
    legFrames: numbers(level.legFrames),
    legFramesMost: numbers(over?.legFramesMost),
    contact: level.contact.map((interval) => numbers(interval)),
    settlement: number(level.settlement),
    bearingPressure: number(level.bearingPressure),
    utilisation: number(utilisationOf(context, stand)),
    feet: feet(context, stand),
  };
}

function reaction(
  context: StepContext,
  stand: StandContext,
  bounds: StandBounds | null,
  certificates: StepCertificates | null,
): Json {
  if (!context.level.stable) return null;
  const certified = certificates?.stands?.[stand.index]?.certified ?? null;
  return {
    level: number(stand.level.reaction),
    least: number(bounds?.over?.least),
    most: number(bounds?.over?.most),
    staticsLeast: number(bounds?.staticsLeast),
    staticsMost: number(bounds?.staticsMost),
    certified: certified === null ? null : { least: number(certified.least), most: number(certified.most) },
  };
}

function witness(at: Witness | undefined): Json {
  if (at === undefined) return null;
  const byKey = (values: Readonly<Record<string, number>>): Json =>
    Object.fromEntries(Object.entries(values).map(([key, value]) => [key, number(value)]));
  return {
    heights: byKey(at.heights),
    tilts: byKey(at.tilts),
    bows: byKey(at.bows),
    masses: byKey(at.masses),
    centres: Object.fromEntries(Object.entries(at.centres).map(([key, value]) => [key, numbers(value)])),
    loads: byKey(at.loads),
    stiffness: number(at.stiffness),
  };
}

/** Bay frame; forces of the level case, null in an unstable step. */
function feet(context: StepContext, { placement, type, level }: StandContext): Json {
  const { feet: middles } = footprintOf(type, placement.height, standInBay(placement, context.plan.piece.pose));
  // Where the reaction acts along the top from the stand's middle; a stand that carries nothing has no such place.
  const along = level.centre === null ? 0 : toInner(standFrame(placement), [level.centre.s, level.centre.t])[1];
  const forces = level.reaction === null ? null : feetForces(type, placement.height, level.reaction, along);
  return middles.map(([x, y], index) => ({ x: number(x), y: number(y), force: number(forces?.[index]) }));
}
