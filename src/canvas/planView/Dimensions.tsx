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
  /** The stands in one line across the piece that it measures to; none = the length of the piece. */
  readonly stands: readonly StandId[];
  readonly s: number;
  readonly text: string;
  /** Middle of the figures, px. */
  readonly at: Point;
  readonly width: number;
}

/** The figures and where they stand: what is drawn and what can be touched. */
export function dimensionsOf(layout: Layout, piece: Piece, map: PlanMap, look: Look): readonly Dimension[] {
  const own: { readonly stands: StandId[]; readonly s: number; readonly text: string; readonly x: number }[] = [];
  for (const { stand, s } of layout.placements) {
    const text = lengthWords(s, look.display);
    const x = map.piece([s, 0])[0];
    const inLine = own.find((other) => other.text === text && Math.abs(other.x - x) < 1);
    if (inLine === undefined) own.push({ stands: [stand], s, text, x });
    else inLine.stands.push(stand);
  }
  const length = pieceLength(piece);
  own.push({ stands: [], s: length, text: lengthWords(length, look.display), x: map.piece([length, 0])[0] });
  const widths = own.map(({ text }) => widthOf(text, { size: typeSize.small }));
  const rows = rowsFor(own.map(({ x }, index) => ({ at: x, width: widths[index]! })));
  return own.map(({ stands, s, text, x }, index) => {
    const width = widths[index]!;
    const at: Point = [
      Math.max(width / 2 + 4, Math.min(map.size.width - width / 2 - 4, x)),
      map.size.height - layoutOf.line - 11 - layoutOf.row * rows[index]!,
    ];
    return { stands, s, text, at, width };
  });
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
        const chosen = dimension.stands.some((stand) => selected.includes(stand));
        const ofPiece = dimension.stands.length === 0;
        const x = crisp(map.piece([dimension.s, 0])[0]);
        const ts = layout.placements.filter(({ stand }) => dimension.stands.includes(stand)).map(({ t }) => t);
        const [, from] = map.piece([dimension.s, Math.max(...(ofPiece ? [0] : ts))]);
        line(paper, [x, from], [x, map.size.height], {
          colour: chosen ? accent : ofPiece ? look.colours.rule : drawing.dimension,
          width: lineWeight.hair,
          ...(ofPiece ? {} : { dash: dash.centre }),
        });
        const forward = dimension.s >= 0 ? 1 : -1;
        arrowHead(paper, [x, y], [forward, 0], 9, chosen ? accent : drawing.dimension);
        write(paper, dimension.text, dimension.at, {
          colour: chosen ? accent : ofPiece ? inkSoft : look.colours.ink,
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
