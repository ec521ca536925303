/** What has been said of a drawing that is being imported, and what comes of it. */

import { useEffect, useMemo, useState } from "react";
import { boundingBox, type Laying, laidPoint, turnsAlong } from "../../geometry";
import type { Point } from "../../plan";
import type { Keeping } from "../../store";
import {
  type Arranged,
  type BayFromDrawing,
  bayFrom,
  type NamedLoops,
  type PieceFromDrawing,
  pieceFrom,
  proposedLayers,
} from "./arrange";
import type { DrawingSource, JoinedLoops, ReadDrawing } from "./source";

export type Target = "piece" | "bay";
/** What a layer is taken for. */
export type Role = "none" | "outline" | "obstacles" | "noFoot";

export type Made = Arranged<
  ({ readonly target: "piece" } & PieceFromDrawing) | ({ readonly target: "bay" } & BayFromDrawing)
>;

export interface ImportChoices {
  readonly target: Target;
  /** By the name of the layer; what is not named is left out. */
  readonly roles: ReadonlyMap<string, Role>;
  /** m to one unit of the drawing, as the file says or the person; null = not known yet. */
  readonly unit: number | null;
  /** What a typed size has made of the unit, as a factor. */
  readonly rescale: number;
  /** Whether one true size has been typed. */
  readonly confirmed: boolean;
  /** Whether corners are being chosen in the picture, and the last two that were, drawing units. */
  readonly measuring: boolean;
  readonly measurePoints: readonly Point[];
  /** Ends within this of each other are joined, drawing units. */
  readonly tolerance: number;
  /** Which loop is the outline, the greatest first. */
  readonly outer: number;
  readonly quarterTurns: number;
  readonly mirrored: boolean;
  readonly keeping: Keeping;
  readonly centre: boolean;
}

export interface ImportState extends ImportChoices {
  readonly drawing: ReadDrawing;
  readonly change: (choices: Partial<ImportChoices>) => void;
  readonly metresAUnit: number | null;
  /** The loops of the outline's layers; null while they are being joined. */
  readonly joined: JoinedLoops | null;
  readonly laying: Laying | null;
  /** Overall size of the outline as it will lie, m; null while it is not known. */
  readonly size: { readonly length: number; readonly width: number } | null;
  /** How far the two chosen corners lie apart, m; null where two are not chosen. */
  readonly measured: number | null;
  readonly made: Made | null;
}

/** Ends meet within this share of the drawing's size, unless somebody says otherwise: far below what is drawn on purpose. */
const usualTolerance = 1e-6;

function startWith(drawing: ReadDrawing): ImportChoices {
  const proposed = new Set(proposedLayers(drawing.layers));
  return {
    target: "piece",
    roles: new Map(drawing.layers.flatMap(({ name }) => (proposed.has(name) ? [[name, "outline"] as const] : []))),
    unit: drawing.metresAUnit,
    rescale: 1,
    confirmed: false,
    measuring: false,
    measurePoints: [],
    tolerance: usualTolerance * sizeOf(drawing),
    outer: 0,
    quarterTurns: 0,
    mirrored: false,
    keeping: "shares",
    centre: true,
  };
}

/** The longer side of the drawing as a whole, drawing units. */
export function sizeOf({ layers }: ReadDrawing): number {
  const { least, most } = boundingBox(layers.flatMap((layer) => [layer.least, layer.most]));
  return Math.max(most[0] - least[0], most[1] - least[1]);
}

export function useImport(source: DrawingSource): readonly [ImportState | null, (drawing: ReadDrawing | null) => void] {
  const [drawing, setDrawing] = useState<ReadDrawing | null>(null);
  const [choices, setChoices] = useState<ImportChoices | null>(null);
  const load = (read: ReadDrawing | null): void => {
    setDrawing(read);
    setChoices(read === null ? null : startWith(read));
  };
  const joined = useJoined(source, drawing, choices);

  const state = useMemo((): ImportState | null => {
    if (drawing === null || choices === null) return null;
    const metresAUnit = choices.unit === null ? null : choices.unit * choices.rescale;
    const laying: Laying | null =
      metresAUnit === null
        ? null
        : { metresAUnit, mirrored: choices.mirrored, quarterTurns: turnsOf(choices, joined?.outline ?? null) };
    return {
      ...choices,
      drawing,
      metresAUnit,
      joined: joined?.outline ?? null,
      laying,
      size: laying === null || joined === null ? null : overall(joined.outline.loops[choices.outer], laying),
      measured: metresAUnit === null ? null : between(choices.measurePoints, metresAUnit),
      made: laying === null || joined === null ? null : arrange(choices, joined, laying),
      change: (changes) => setChoices((before) => (before === null ? null : { ...before, ...changes })),
    };
  }, [drawing, choices, joined]);
  return [state, load];
}

/** The piece is laid along its longer side, before anybody turns it; a bay lies as it is drawn. */
function turnsOf({ target, quarterTurns, outer }: ImportChoices, outline: JoinedLoops | null): number {
  const loop = outline?.loops[outer];
  const own = target === "piece" && loop !== undefined ? turnsAlong(loop) : 0;
  return (own + quarterTurns) % 4;
}

function overall(loop: readonly Point[] | undefined, laying: Laying): ImportState["size"] {
  if (loop === undefined) return null;
  const { least, most } = boundingBox(loop.map((point) => laidPoint(point, laying)));
  return { length: most[0] - least[0], width: most[1] - least[1] };
}

function between([first, second]: readonly Point[], metresAUnit: number): number | null {
  if (first === undefined || second === undefined) return null;
  const distance = Math.hypot(second[0] - first[0], second[1] - first[1]);
  return distance === 0 ? null : distance * metresAUnit;
}

interface JoinedByRole {
  readonly outline: JoinedLoops;
  readonly obstacles: readonly NamedLoops[];
  readonly noFoot: readonly NamedLoops[];
}

function arrange(choices: ImportChoices, joined: JoinedByRole, laying: Laying): Made {
  if (choices.target === "piece") {
    const made = pieceFrom(joined.outline.loops, choices.outer, laying);
    return made.ok ? { ...made, target: "piece" } : made;
  }
  const made = bayFrom(joined.outline.loops, choices.outer, joined.obstacles, joined.noFoot, laying);
  return made.ok ? { ...made, target: "bay" } : made;
}

/** Joins the layers by what they are taken for, anew with every change of them; null while that is under way. */
function useJoined(source: DrawingSource, drawing: ReadDrawing | null, choices: ImportChoices | null) {
  const [joined, setJoined] = useState<JoinedByRole | null>(null);
  const roles = choices?.roles;
  const tolerance = choices?.tolerance ?? 0;
  useEffect(() => {
    setJoined(null);
    if (drawing === null || roles === undefined) return;
    let stale = false;
    const layersFor = (role: Role): readonly string[] =>
      drawing.layers.map(({ name }) => name).filter((name) => roles.get(name) === role);
    const oneByOne = (role: Role): Promise<readonly NamedLoops[]> =>
      Promise.all(layersFor(role).map(async (name) => ({ name, loops: (await source.join([name], tolerance)).loops })));
    void Promise.all([source.join(layersFor("outline"), tolerance), oneByOne("obstacles"), oneByOne("noFoot")]).then(
      ([outline, obstacles, noFoot]) => {
        if (!stale) setJoined({ outline, obstacles, noFoot });
      },
    );
    return () => {
      stale = true;
    };
  }, [source, drawing, roles, tolerance]);
  return joined;
}
