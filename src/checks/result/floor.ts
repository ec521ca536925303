/** A layout's entry of the result file's floor. */

import type { FloorReport } from "../../floor";
import { knownValue } from "../parts";
import type { LayoutReport } from "../report";
import { type Json, number, numbers } from "./json";

export function floorEntry(report: LayoutReport): Json {
  const floor: FloorReport | null = knownValue(report.floor);
  const points = (ring: readonly (readonly [number, number])[]): Json => ring.map((point) => numbers(point));
  return {
    layout: report.layout,
    tripZones: (floor?.stands ?? []).map(({ tripZone }) => ({
      stand: tripZone.stand,
      polygons: tripZone.polygons.map(({ outer, holes }) => ({ outer: points(outer), holes: holes.map(points) })),
      area: number(tripZone.area),
      reach: number(tripZone.reach),
    })),
    walkways: (floor?.walkways ?? []).map(({ name, clearWidth, withoutLegs, required, narrowestAt }) => ({
      name,
      clearWidth: number(clearWidth),
      withoutLegs: number(withoutLegs),
      required: number(required),
      narrowestAt: numbers(narrowestAt),
    })),
  };
}
