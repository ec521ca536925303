/** What can be drawn by hand, imported or traced: one menu over the drawings. */

import { Button, Menu } from "@mantine/core";
import { useLayoutEffect, useRef } from "react";
import { type ShapeKind, shapeNatures, theDrafting, useDrafting } from "../../store";
import { Icon } from "../../ui";
import { usePlan } from "../connect";
import { foreseeTool } from "./DrawingBar";
import styles from "./drawing.module.css";
import { focusIsLost } from "./focus";

const onPiece: readonly ShapeKind[] = ["outline", "restZone", "noRestZone", "workWindow"];
const inBay: readonly ShapeKind[] = ["obstacle", "noFootZone", "walkway"];

/** The menu's words for a kind: as the person would ask for one. */
const asks: Readonly<Record<ShapeKind, string>> = {
  outline: "Outline of the piece",
  restZone: "Bearing area",
  noRestZone: "Keep off",
  workWindow: "Keep clear for work",
  bay: "Outline of the bay",
  obstacle: "Obstacle or column",
  noFootZone: "No-foot zone",
  walkway: "Walkway",
  lane: "Painted lane",
};

export interface DrawMenuProps {
  readonly importDrawing: () => void;
  readonly tracePicture: () => void;
}

export function DrawMenu({ importDrawing, tracePicture }: DrawMenuProps) {
  const { bay } = usePlan();
  const picture = useDrafting((state) => state.picture);
  const toolInHand = useDrafting((state) => state.tool.kind !== "none");
  const button = useRef<HTMLButtonElement>(null);
  // The bar goes when it is done with: keys go on from where it was opened.
  const had = useRef(false);
  useLayoutEffect(() => {
    if (had.current && !toolInHand && focusIsLost()) button.current?.focus({ preventScroll: true });
    had.current = toolInHand;
  }, [toolInHand]);
  const item = (kind: ShapeKind, disabled = false) => (
    <Menu.Item key={kind} disabled={disabled} onClick={() => theDrafting().begin(kind)}>
      {asks[kind]}
    </Menu.Item>
  );
  return (
    <Menu position="bottom-end" withinPortal={false} onOpen={foreseeTool}>
      <Menu.Target>
        <Button
          ref={button}
          className={styles.drawButton}
          size="compact-md"
          variant="subtle"
          leftSection={<Icon name="draw" size={18} />}
        >
          Draw
        </Button>
      </Menu.Target>
      <Menu.Dropdown className={styles.drawMenu}>
        <Menu.Label>On the piece</Menu.Label>
        {onPiece.map((kind) => item(kind))}
        <Menu.Label>{bay === null ? "In the bay, once it has an outline" : "In the bay"}</Menu.Label>
        {item("bay")}
        {inBay.map((kind) => item(kind, bay === null))}
        {bay?.walkways.map((walkway, index) =>
          walkway.lane === null ? (
            <Menu.Item key={walkway.name} onClick={() => theDrafting().begin("lane", { walkway: index })}>
              Painted lane of {walkway.name}
            </Menu.Item>
          ) : null,
        )}
        <Menu.Divider />
        <Menu.Item onClick={importDrawing}>Import a DXF drawing</Menu.Item>
        <Menu.Item onClick={tracePicture}>Trace over a picture or a PDF page</Menu.Item>
        {picture !== null && (
          <>
            <Menu.Item onClick={() => theDrafting().setTool({ kind: "move picture" })}>
              Move or scale the traced picture
            </Menu.Item>
            <Menu.Item onClick={() => theDrafting().setPicture({ ...picture, shown: !picture.shown })}>
              {picture.shown ? "Hide" : "Show"} the traced picture
            </Menu.Item>
          </>
        )}
      </Menu.Dropdown>
    </Menu>
  );
}

/** "Draw" beside a list of shapes. */
export function DrawButton({ kind, walkway = 0 }: { readonly kind: ShapeKind; readonly walkway?: number }) {
  return (
    <Button
      size="compact-md"
      variant="default"
      leftSection={<Icon name="draw" size={16} />}
      aria-label={`Draw ${shapeNatures[kind].one}`}
      onClick={() => theDrafting().begin(kind, { walkway })}
    >
      Draw
    </Button>
  );
}

/** Opens a shape of a list on the drawing, where its corners are dragged. */
export function ChangeButton({ kind, index = 0 }: { readonly kind: ShapeKind; readonly index?: number }) {
  return (
    <Button
      size="compact-md"
      variant="subtle"
      leftSection={<Icon name="draw" size={16} />}
      onClick={() => theDrafting().open({ kind, index })}
    >
      Change on the drawing
    </Button>
  );
}
