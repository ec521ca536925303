/** What has to hold between the parts of a plan: places lie within the piece, ids are those of something. */

import type { LayoutDocument, PlanDocument, StepDocument } from "../document";
import { pieceLength } from "../lookup";
import { quoted } from "../quote";
import type { MassId } from "../types";
import { found, type Issue, issue } from "./refusal";
import {
  endKeys,
  type Path,
  Places,
  type Stretch,
  type StretchRules,
  wrongPlace,
  wrongStretch,
  wrongStretches,
} from "./stretches";

/** The first thing that does not hold in a document whose parts, each by itself, are right; null if all does. */
export function wrongRelation(document: PlanDocument): Issue | null {
  return wrongInPiece(document) ?? wrongType(document) ?? wrongPlacement(document) ?? wrongInSteps(document);
}

const apart: StretchRules = { keys: endKeys, cover: false };
const covering: StretchRules = { keys: endKeys, cover: true };
const parts: StretchRules = { keys: [0, 1], cover: false };

function wrongInPiece({ piece }: PlanDocument): Issue | null {
  const length = pieceLength(piece);
  const least = piece.outline.reduce((least, [s]) => Math.min(least, s), Number.POSITIVE_INFINITY);
  if (least !== 0)
    return issue(found(`an outline whose least s is ${least} m`, "0 m, at the datum end"), "piece", "outline");
  const { stiffness, underside = [], section } = piece;
  return (
    (stiffness === "rigid" ? null : wrongStretches(stiffness, length, ["piece", "stiffness"], covering)) ??
    wrongStretches(underside, length, ["piece", "underside"], apart) ??
    wrongMass(piece, length) ??
    (Array.isArray(section) ? wrongStretches(section as readonly Stretch[], length, ["piece", "section"], apart) : null)
  );
}

function wrongMass({ masses }: PlanDocument["piece"], length: number): Issue | null {
  for (const [index, mass] of masses.entries()) {
    const path = ["piece", "masses", index];
    const wrong =
      mass.kind === "line" ? wrongStretch(mass, length, path, endKeys) : wrongPlace(mass.s, length, [...path, "s"]);
    if (wrong !== null) return wrong;
  }
  return null;
}

function unknownId(id: string, what: string, path: Path): Issue {
  return issue(found(quoted(id), `the id of a ${what} of this plan`), ...path);
}

function wrongType({ standTypes, stands }: PlanDocument): Issue | null {
  const known = new Set(standTypes.map(({ id }) => id));
  const index = stands.findIndex(({ type }) => !known.has(type));
  return index < 0 ? null : unknownId(stands[index]!.type, "stand type", ["stands", index, "type"]);
}

function wrongPlacement({ stands, layouts }: PlanDocument): Issue | null {
  const known = new Set(stands.map(({ id }) => id));
  for (const [index, { placements }] of layouts.entries()) {
    const at = placements.findIndex(({ stand }) => !known.has(stand));
    if (at >= 0) return unknownId(placements[at]!.stand, "stand", ["layouts", index, "placements", at, "stand"]);
  }
  return null;
}

/** What the steps are held against, put in order once for all of them. */
interface Surroundings {
  readonly length: number;
  readonly layouts: ReadonlyMap<string, LayoutDocument>;
  readonly masses: ReadonlySet<string>;
  readonly pointMasses: Places<{ readonly id: MassId; readonly s: number }>;
}

function wrongInSteps({ piece, layouts, steps }: PlanDocument): Issue | null {
  const surroundings: Surroundings = {
    length: pieceLength(piece),
    layouts: new Map(layouts.map((layout) => [layout.id, layout])),
    masses: new Set(piece.masses.map(({ id }) => id)),
    pointMasses: new Places(piece.masses.filter((mass) => mass.kind === "point")),
  };
  for (const [index, step] of steps.entries()) {
    const wrong = wrongInStep(step, surroundings, ["steps", index]);
    if (wrong !== null) return wrong;
  }
  return null;
}

function wrongInStep(step: StepDocument, surroundings: Surroundings, path: Path): Issue | null {
  const { absent = [] } = step;
  const layout = surroundings.layouts.get(step.layout);
  if (layout === undefined) return unknownId(step.layout, "layout", [...path, "layout"]);
  const at = absent.findIndex((id) => !surroundings.masses.has(id));
  if (at >= 0) return unknownId(absent[at]!, "mass", [...path, "absent", at]);
  return (
    wrongLoad(step, surroundings, path) ?? wrongParts(step, surroundings, path) ?? wrongReading(step, layout, path)
  );
}

function wrongLoad({ loads = [] }: StepDocument, { length }: Surroundings, path: Path): Issue | null {
  for (const [index, { s }] of loads.entries()) {
    const wrong = wrongPlace(s, length, [...path, "loads", index, "s"]);
    if (wrong !== null) return wrong;
  }
  return null;
}

function wrongParts(step: StepDocument, { length, pointMasses }: Surroundings, path: Path): Issue | null {
  const list = step.parts ?? null;
  if (list === null) return null;
  const stretches = list.map(([from, to]) => ({ from, to }));
  const wrong = wrongStretches(stretches, length, [...path, "parts"], parts);
  if (wrong !== null) return wrong;

  const absent = new Set(step.absent);
  const mass = pointMasses.offEveryPart(list, ({ id }) => absent.has(id));
  if (mass !== undefined) {
    const what = `no part under the mass ${quoted(mass.id)} at ${mass.s} m`;
    return issue(found(what, "a part that holds it, or its id in absent"), ...path, "parts");
  }
  const loads = (step.loads ?? []).map(({ s }, index) => ({ s, index }));
  const load = new Places(loads).offEveryPart(list, () => false);
  if (load === undefined) return null;
  return issue(found(`${load.s}, where no part is`, "a place on a part"), ...path, "loads", load.index, "s");
}

function wrongReading({ readings = [] }: StepDocument, { placements }: LayoutDocument, path: Path): Issue | null {
  const placed = new Set<string>(placements.map(({ stand }) => stand));
  const at = readings.findIndex(({ stand }) => stand !== null && !placed.has(stand));
  if (at < 0) return null;
  const right = "the id of a stand that is placed in the step's layout";
  return issue(found(quoted(readings[at]?.stand ?? ""), right), ...path, "readings", at, "stand");
}
