/** The stand in two views, true to scale, with the sizes that make it. */

import type { StandType } from "../../plan";
import { useFormat } from "../../ui";
import { type StandView, standViews } from "./picture";
import standsStyles from "./stands.module.css";

/** Room round and between the views as a share of the height. */
const margin = 0.16;

export function StandPicture({
  type,
  height,
  small = false,
}: {
  readonly type: StandType;
  /** Floor to top, m. */
  readonly height: number;
  /** Without dimensions, to choose by. */
  readonly small?: boolean;
}) {
  const format = useFormat();
  const views = standViews(type, height);
  const gap = margin * height;
  const frontWidth = views.front.to - views.front.from;
  const sideWidth = views.side.to - views.side.from;
  const room = small ? gap / 2 : gap * 1.6;
  const width = frontWidth + sideWidth + gap * 2 + room * 2;
  const total = height + room * 2;
  const text = height * 0.11;
  return (
    <svg
      className={standsStyles.standPicture}
      data-small={small}
      role="img"
      aria-hidden={small}
      aria-label={`${type.name}: top ${format(type.top.length, "length")} by ${format(type.top.width, "length")}, height ${format(height, "length")}`}
      viewBox={`0 0 ${width} ${total}`}
    >
      <g transform={`translate(${room - views.front.from} ${total - room}) scale(1 -1)`}>
        <Outline view={views.front} height={height} casters={type.casters !== null} />
      </g>
      <g transform={`translate(${room + frontWidth + gap * 2 - views.side.from} ${total - room}) scale(1 -1)`}>
        <Outline view={views.side} height={height} casters={false} />
      </g>
      {!small && (
        <g className={standsStyles.standText} fontSize={text}>
          <text x={room - views.front.from} y={room - text * 0.5} textAnchor="middle">
            {format(type.top.length, "length")}
          </text>
          <text x={room + frontWidth + gap * 2 - views.side.from} y={room - text * 0.5} textAnchor="middle">
            {format(type.top.width, "length")}
          </text>
          <text x={room - views.front.from} y={total - room + text * 1.3} textAnchor="middle">
            {format(type.legSpacing, "length")} between frames
          </text>
          <text x={room + frontWidth + gap} y={total - room - height / 2} textAnchor="middle">
            {format(height, "length")}
          </text>
        </g>
      )}
    </svg>
  );
}

function Outline({
  view,
  height,
  casters,
}: {
  readonly view: StandView;
  readonly height: number;
  readonly casters: boolean;
}) {
  const thick = height * 0.05;
  const points = (list: readonly (readonly [number, number])[]) => list.map(([x, y]) => `${x},${y}`).join(" ");
  return (
    <>
      <line className={standsStyles.standFloor} x1={view.from - thick} x2={view.to + thick} y1={0} y2={0} />
      {view.braces.map(([a, b]) => (
        <line key={`${a} ${b}`} className={standsStyles.standBrace} x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />
      ))}
      {view.legs.map(([a, b]) => (
        <line
          key={`${a} ${b}`}
          className={standsStyles.standLeg}
          strokeWidth={thick}
          x1={a[0]}
          y1={a[1]}
          x2={b[0]}
          y2={b[1]}
        />
      ))}
      {view.feet.map(([a, b]) => (
        <line
          key={`${a} ${b}`}
          className={standsStyles.standFoot}
          strokeWidth={thick}
          x1={a[0]}
          y1={thick / 2}
          x2={b[0]}
          y2={thick / 2}
        />
      ))}
      {casters &&
        view.feet.map(([a, b]) => (
          <circle
            key={`${a} ${b}`}
            className={standsStyles.standCaster}
            cx={(a[0] + b[0]) / 2}
            cy={thick}
            r={thick * 1.2}
          />
        ))}
      <polygon className={standsStyles.standTop} points={points(view.top)} />
    </>
  );
}
