/** Running dimensions from the datum end to each stand's centre, between the two drawings. */

import { memo, useMemo } from "react";
import { type Layout, type Piece, type Point, pieceLength, type StandId } from "../../plan";
import { dash, lineWeight, typeSize } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { arrowHead, crisp, line, type Paper, rowsFor, Sketch, stroke, widthOf, write } from "../sketch";
import { lengthWords } from "../words";

/** The strip at the lower edge of the plan view that is kept for the running dimensions, px. */
export const dimensionStrip = 48;

/** Where their line lies, px above the lower edge; rows of figures above it. */
const layoutOf = { line: 14, row: 15 } as const;

export interface Dimension {
  /** null = the length of the piece. */
  readonly stand: StandId | null;
  readonly s: number;
  readonly text: string;
  /** Middle of the figures, px. */
  readonly at: Point;
  readonly width: number;
}

/** The figures and where they stand: what is drawn and what can be touched. */
export function dimensionsOf(layout: Layout, piece: Piece, map: PlanMap, look: Look): readonly Dimension[] {
  const stations = [
    ...layout.placements.map(({ stand, s }) => ({ stand, s })),
    { stand: null, s: pieceLength(piece) },
  ].map((station) => {
    const text = lengthWords(station.s, look.display);
    return { ...station, text, x: map.piece([station.s, 0])[0], width: widthOf(text, { size: typeSize.small }) };
  });
  const rows = rowsFor(stations.map(({ x, width }) => ({ at: x, width })));
  return stations.map(({ stand, s, text, x, width }, index) => ({
    stand,
    s,
    text,
    at: [
      Math.max(width / 2 + 4, Math.min(map.size.width - width / 2 - 4, x)),
      map.size.height - layoutOf.line - 11 - layoutOf.row * rows[index]!,
    ],
    width,
  }));
}

export const Dimensions = memo(function Dimensions({
  layout,
  piece,
  selected,
  map,
  look,
}: {
  readonly layout: Layout;
  readonly piece: Piece;
  readonly selected: readonly StandId[];
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const draw = useMemo(
    () => (paper: Paper) => {
      const { drawing, accent, paper: ground, inkSoft } = look.colours;
      const y = crisp(map.size.height - layoutOf.line);
      paper.fillStyle = ground;
      paper.fillRect(0, map.size.height - dimensionStrip, map.size.width, dimensionStrip);
      const pen = { colour: drawing.dimension, width: lineWeight.thin };
      const [x0] = map.piece([0, 0]);
      const [xEnd] = map.piece([pieceLength(piece), 0]);
      line(paper, [x0, y], [xEnd, y], pen);
      paper.beginPath();
      paper.arc(x0, y, 3, 0, 2 * Math.PI);
      stroke(paper, { colour: drawing.dimension, width: lineWeight.outline });
      for (const dimension of dimensionsOf(layout, piece, map, look)) {
        const chosen = dimension.stand !== null && selected.includes(dimension.stand);
        const x = crisp(map.piece([dimension.s, 0])[0]);
        const placement = layout.placements.find(({ stand }) => stand === dimension.stand);
        const [, from] = map.piece([dimension.s, placement?.t ?? 0]);
        line(paper, [x, from], [x, map.size.height], {
          colour: chosen ? accent : dimension.stand === null ? look.colours.rule : drawing.dimension,
          width: lineWeight.hair,
          ...(dimension.stand === null ? {} : { dash: dash.centre }),
        });
        const forward = dimension.s >= 0 ? 1 : -1;
        arrowHead(paper, [x, y], [forward, 0], 9, chosen ? accent : drawing.dimension);
        write(paper, dimension.text, dimension.at, {
          colour: chosen ? accent : dimension.stand === null ? inkSoft : look.colours.ink,
          size: typeSize.small,
          strong: chosen,
          rim: ground,
        });
      }
    },
    [layout, piece, selected, map, look],
  );
  return <Sketch draw={draw} />;
});
