/** The drawing as it will lie: outline, what is in it, gaps, and the two corners that are measured between. */

import { type PointerEvent, useRef } from "react";
import { boundingBox, laidPoint, thinned } from "../../geometry";
import { memo, type Point } from "../../plan";
import styles from "./drawing.module.css";
import type { ImportState } from "./useImport";

/** The picture of a loop has at most so many corners; what is taken over has its own. */
const mostCorners = 1500;

/** A loop as it is drawn here, thinned once. */
const coarse = memo((loop: readonly Point[]): readonly Point[] => thinned(loop, mostCorners).ring);

const path = (points: readonly Point[]): string => `M${points.map(([x, y]) => `${x} ${-y}`).join("L")}Z`;

/** A mark is this share of the picture's size. */
const markSize = 1 / 70;

export interface ImportPreviewProps {
  readonly state: ImportState;
  /** What the two ends of the piece are called. */
  readonly ends: { readonly datum: string; readonly far: string };
}

export function ImportPreview({ state, ends }: ImportPreviewProps) {
  const { drawing, joined, laying, measuring, measurePoints, change } = state;
  const picture = useRef<SVGSVGElement>(null);
  // Before the units are known the drawing is shown in its own.
  const lay = laying ?? { metresAUnit: 1, mirrored: state.mirrored, quarterTurns: state.quarterTurns };
  const layers = drawing.layers.filter(({ name }) => (state.roles.get(name) ?? "none") !== "none");
  const shownLayers = layers.length === 0 ? drawing.layers : layers;
  const corners = shownLayers.flatMap(({ least, most }): Point[] => [
    least,
    most,
    [least[0], most[1]],
    [most[0], least[1]],
  ]);
  const { least, most } = boundingBox(corners.map((point) => laidPoint(point, lay)));
  const size = Math.max(most[0] - least[0], most[1] - least[1]) || 1;
  const beyond = size * 0.04;
  const mark = size * markSize;
  const turned = [laidPoint([1, 0], lay), laidPoint([0, 1], lay)] as const;
  const outer = joined?.loops[state.outer];
  const others = (joined?.loops ?? []).filter((loop) => loop !== outer);

  const touch = (event: PointerEvent<SVGSVGElement>): void => {
    const matrix = picture.current?.getScreenCTM();
    if (!measuring || matrix == null || outer === undefined) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const distance = (point: Point): number => {
      const [p, q] = laidPoint(point, lay);
      return Math.hypot(p - x, q + y);
    };
    const nearest = [outer, ...others]
      .flat()
      .reduce((best, point) => (distance(point) < distance(best) ? point : best));
    change({ measurePoints: [...measurePoints.slice(-1), nearest].slice(-2), confirmed: false });
  };

  return (
    <svg
      ref={picture}
      className={styles.importPicture}
      data-measuring={measuring}
      viewBox={`${least[0] - beyond} ${-most[1] - beyond} ${most[0] - least[0] + 2 * beyond} ${most[1] - least[1] + 2 * beyond}`}
      role="img"
      aria-label="The drawing as it will lie"
      onPointerDown={touch}
    >
      <g transform={`matrix(${turned[0][0]} ${-turned[0][1]} ${turned[1][0]} ${-turned[1][1]} 0 0)`}>
        {shownLayers.map((layer) => (
          <path
            key={layer.name}
            className={styles.importLayer}
            data-role={state.roles.get(layer.name)}
            d={layer.picture}
          />
        ))}
      </g>
      {outer !== undefined && (
        <path className={styles.importOutline} d={path(coarse(outer).map((point) => laidPoint(point, lay)))} />
      )}
      {others.map((loop, index) => (
        <path key={index} className={styles.importHole} d={path(coarse(loop).map((point) => laidPoint(point, lay)))} />
      ))}
      {outer !== undefined && state.target === "piece" && (
        <Ends outer={coarse(outer).map((point) => laidPoint(point, lay))} ends={ends} size={size} />
      )}
      {(joined?.gaps ?? []).slice(0, 200).map(({ at }, index) => {
        const [x, y] = laidPoint(at, lay);
        return <circle key={index} className={styles.importGap} cx={x} cy={-y} r={mark} />;
      })}
      {measurePoints.map((point, index) => {
        const [x, y] = laidPoint(point, lay);
        return <circle key={index} className={styles.importMeasure} cx={x} cy={-y} r={mark * 0.8} />;
      })}
    </svg>
  );
}

/** The names of the ends, inside the outline at its two ends. */
function Ends({
  outer,
  ends,
  size,
}: {
  readonly outer: readonly Point[];
  readonly ends: ImportPreviewProps["ends"];
  readonly size: number;
}) {
  const { least, most } = boundingBox(outer);
  const middle = -(least[1] + most[1]) / 2;
  const gap = size * 0.02;
  return (
    <g className={styles.importEnds} fontSize={size / 26}>
      <text x={least[0] + gap} y={middle} dominantBaseline="middle">
        {ends.datum}
      </text>
      <text x={most[0] - gap} y={middle} dominantBaseline="middle" textAnchor="end">
        {ends.far}
      </text>
    </g>
  );
}
