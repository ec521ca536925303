/** The bar of a shape that is changed: its name, its chosen corner by numbers, what else it asks for. */

import { withCornerAfter, withCornerAt } from "../../geometry";
import { criteriaOf, type Plan, type Point } from "../../plan";
import { type ChangeTool, type Shape, shapeNatures, shapeOf, theDrafting } from "../../store";
import { ChoiceField, QuantityField, TextField } from "../../ui";
import { attempt, usePlan } from "../connect";
import { BarButton } from "./BarButton";
import { BarHead } from "./BarHead";
import styles from "./drawing.module.css";

export function ChangeBar({ tool }: { readonly tool: ChangeTool }) {
  const plan = usePlan();
  const shape = shapeOf(plan, tool.ref);
  if (shape === null) return null;
  const { word, newName, closed } = shapeNatures[shape.kind];
  const drafting = theDrafting();
  const removes = tool.corner === null || !closed ? shape.kind !== "outline" && shape.kind !== "bay" : true;
  return (
    <>
      <BarHead title={word} ask={closed ? "Drag corners; drag a round handle for another." : "Drag its ends."} />
      <div className={styles.corner}>
        {newName !== null && (
          <TextField
            label="Name"
            required
            value={shape.name}
            commit={(name) => attempt("shape.name", { ref: tool.ref, name })}
          />
        )}
        <Size plan={plan} shape={shape} />
        <CornerChoice shape={shape} corner={tool.corner} />
      </div>
      <div className={styles.barEnd}>
        {closed && tool.corner !== null && (
          <BarButton icon="add" onClick={() => addCorner(shape, tool.corner!)}>
            Add corner after
          </BarButton>
        )}
        {removes && (
          <BarButton icon="bin" onClick={drafting.remove}>
            {tool.corner !== null && closed ? "Remove corner" : `Remove ${word}`}
          </BarButton>
        )}
        <BarButton icon="tick" strong onClick={drafting.leave}>
          Done
        </BarButton>
      </div>
    </>
  );
}

/** Which corner, and where it lies. */
function CornerChoice({ shape, corner }: { readonly shape: Shape; readonly corner: number | null }) {
  const { axes, closed } = shapeNatures[shape.kind];
  const drafting = theDrafting();
  const chosen = corner === null ? undefined : shape.points[corner];
  const move = (point: Point) =>
    drafting.reshape(withCornerAt(shape.points, corner!, point)) ? null : (drafting.state().refusal ?? null);
  const what = closed ? "Corner" : "End";
  const choices = shape.points.length <= 200 ? shape.points : [];
  return (
    <>
      <ChoiceField
        label={what}
        value={corner === null ? "none" : String(corner)}
        choices={[
          { value: "none", label: closed ? "the whole" : "both" },
          ...choices.map((_, index) => ({ value: String(index), label: String(index + 1) })),
          ...(corner !== null && choices.length === 0 ? [{ value: String(corner), label: String(corner + 1) }] : []),
        ]}
        choose={(value) => drafting.choose(shape, value === "none" ? null : Number(value))}
      />
      {chosen !== undefined &&
        ([0, 1] as const).map((axis) => (
          <QuantityField
            key={axis}
            label={axes[axis]}
            kind="length"
            value={chosen[axis]}
            commit={(value) => move(axis === 0 ? [value, chosen[1]] : [chosen[0], value])}
          />
        ))}
    </>
  );
}

/** What else a kind has: how far to keep clear, how wide a way is. */
function Size({ plan, shape }: { readonly plan: Plan; readonly shape: Shape }) {
  const { piece, bay } = plan;
  if (shape.kind === "workWindow")
    return (
      <QuantityField
        label="Clearance"
        kind="length"
        value={piece.workWindows[shape.index]?.clearance ?? null}
        commit={(clearance) =>
          attempt("piece.change", {
            change: {
              workWindows: piece.workWindows.map((old, at) => (at === shape.index ? { ...old, clearance } : old)),
            },
            label: `Change ${shape.name}`,
          })
        }
      />
    );
  if (shape.kind === "walkway")
    return (
      <QuantityField
        label="Clear width"
        kind="length"
        value={bay?.walkways[shape.index]?.width ?? criteriaOf(plan).walkwayWidth}
        commit={(width) => attempt("walkway.width", { index: shape.index, width })}
      />
    );
  return null;
}

/** A further corner in the middle of the edge behind the chosen one, and chosen. */
function addCorner(shape: Shape, corner: number): void {
  const [a, b] = [shape.points[corner]!, shape.points[(corner + 1) % shape.points.length]!];
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const drafting = theDrafting();
  if (drafting.reshape(withCornerAfter(shape.points, corner, middle), `Add a corner to ${shape.name}`))
    drafting.choose({ kind: shape.kind, index: shape.index }, corner + 1);
}
