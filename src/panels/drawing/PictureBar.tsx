/** The bar of the traced picture: scaled by two points and a length, moved, turned, dimmed, taken away. */

import { useState } from "react";
import { type LineUp, scaledPlace, type Tool, theDrafting, turnedPlace, useDrafting } from "../../store";
import { ChoiceField, QuantityField } from "../../ui";
import { BarButton } from "./BarButton";
import { BarHead } from "./BarHead";
import { CornerFields } from "./CornerFields";
import styles from "./drawing.module.css";

type PictureTool = Extract<Tool, { readonly kind: "scale picture" | "move picture" }>;

export function PictureBar({ tool }: { readonly tool: PictureTool }) {
  const picture = useDrafting((state) => state.picture);
  const drafting = theDrafting();
  if (picture === null) return null;
  const change = (keys: Partial<typeof picture>) => {
    drafting.setPicture({ ...picture, ...keys });
    return null;
  };
  return (
    <>
      <BarHead title="Traced picture" ask={askFor(tool)} />
      {tool.kind === "scale picture" ? (
        <ScaleFields tool={tool} />
      ) : (
        <div className={styles.corner}>
          <QuantityField
            label="Lower left, x"
            kind="length"
            value={Math.round(picture.x * 1e6) / 1e6}
            commit={(x) => change({ x })}
          />
          <QuantityField
            label="Lower left, y"
            kind="length"
            value={Math.round(picture.y * 1e6) / 1e6}
            commit={(y) => change({ y })}
          />
          <ChoiceField
            label="How strong"
            value={String(picture.strength)}
            choices={[0.2, 0.35, 0.5, 0.8].map((strength) => ({
              value: String(strength),
              label: `${strength * 100} %`,
            }))}
            choose={(strength) => change({ strength: Number(strength) })}
          />
        </div>
      )}
      <div className={styles.barEnd}>
        {tool.kind === "move picture" && (
          <>
            <BarButton icon="turn" onClick={() => drafting.setPicture(turnedPlace(picture, 1))}>
              Turn
            </BarButton>
            <BarButton icon="rule" onClick={() => drafting.setTool({ kind: "scale picture", points: [] })}>
              Scale
            </BarButton>
          </>
        )}
        {tool.kind === "scale picture" && (
          <>
            <BarButton icon="undo" disabled={tool.points.length === 0} onClick={drafting.takeBack}>
              Take back
            </BarButton>
            <BarButton icon="spread" onClick={() => drafting.setTool({ kind: "move picture" })}>
              Move
            </BarButton>
          </>
        )}
        <BarButton
          icon="bin"
          onClick={() => {
            drafting.setPicture(null);
            drafting.leave();
          }}
        >
          Remove picture
        </BarButton>
        <BarButton icon="tick" strong onClick={drafting.leave}>
          Done
        </BarButton>
      </div>
    </>
  );
}

/** What the hand is asked for now. */
function askFor(tool: PictureTool): string {
  if (tool.kind === "move picture") return "Drag it to its place, or use the arrow keys.";
  switch (tool.points.length) {
    case 0:
      return "Touch one end of a length that you know.";
    case 1:
      return "Touch the other end of it.";
    default:
      return "Type how long that is in truth.";
  }
}

const lineUps: readonly { readonly value: LineUp; readonly label: string }[] = [
  { value: "as it lies", label: "as it lies" },
  { value: "along x", label: "along x" },
  { value: "along y", label: "along y" },
];

/** Two points, then how far they lie apart. */
function ScaleFields({ tool }: { readonly tool: Extract<Tool, { readonly kind: "scale picture" }> }) {
  const [lineUp, setLineUp] = useState<LineUp>("as it lies");
  const drafting = theDrafting();
  const [first, second] = tool.points;
  if (first === undefined || second === undefined)
    return <CornerFields axes={["x", "y"]} last={first ?? null} add={drafting.place} />;
  const scale = (length: number): string | null => {
    const { picture } = drafting.state();
    if (picture === null) return null;
    if (length <= 0) return "A length is more than 0.";
    drafting.setPicture({ ...scaledPlace(picture, [first, second], length, lineUp), scaled: true });
    drafting.setTool({ kind: "move picture" });
    return null;
  };
  return (
    <div className={styles.corner}>
      <ChoiceField label="It lies" value={lineUp} choices={lineUps} choose={setLineUp} />
      <QuantityField label="True length" kind="length" value={null} step={0} commit={scale} />
    </div>
  );
}
