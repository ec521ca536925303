/** The camera while somebody draws: it stands still, with room round what is there, and comes back afterwards. */

import { useLayoutEffect, useRef } from "react";
import { boundingBox, pieceFrame, toInner } from "../../geometry";
import type { Plan, Point, Pose } from "../../plan";
import { type Camera, frameOf, pictureToBay, type Tool, theDrafting, theEditor, useDrafting } from "../../store";
import { fitted, type Sheet } from "../camera";

/** Room round what is there, as a share of its size: a bay is drawn round a piece, a wall is followed from inside. */
const room = { zone: 0.04, outline: 0.25, bay: 0.1, noBay: 1 } as const;

/** The camera that shows the piece, or the bay round it, with room on all sides. */
function roomyCamera(plan: Plan, tool: Tool, sheet: Sheet): Camera {
  const frame = frameOf(tool);
  const outline = tool.kind === "draw" && tool.shape === "outline";
  const toPiece = pieceFrame(plan.piece.pose);
  const bay = frame === "bay" ? (plan.bay?.outline ?? []).map((point): Point => toInner(toPiece, point)) : [];
  const picture = frame === "bay" ? pictureCorners().map((point): Point => toInner(toPiece, point)) : [];
  const { least, most } = boundingBox([...plan.piece.outline, ...bay, ...picture]);
  const inBay = plan.bay === null ? room.noBay : room.bay;
  const share = frame === "bay" ? inBay : outline ? room.outline : room.zone;
  const beyond = share * Math.max(most[0] - least[0], most[1] - least[1], 1);
  return fitted(
    {
      s: [least[0] - beyond, most[0] + beyond],
      t: [least[1] - beyond, most[1] + beyond],
      z: [0, 0.1],
    },
    sheet,
  );
}

/** The corners of the picture that is traced, in the bay. */
function pictureCorners(): readonly Point[] {
  const { picture } = theDrafting().state();
  if (picture === null || !picture.shown) return [];
  const { width, height } = picture;
  return (
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ] as const
  ).map((corner) => pictureToBay(picture, corner));
}

export function useDraftCamera(plan: Plan, sheet: Sheet | null): void {
  const whole = useDrafting((state) => state.wholeSheet);
  const frame = useDrafting((state) => frameOf(state.tool));
  const settingOut = useDrafting((state) => state.settingOut);
  // Scaled, a picture is another size: it is shown whole again.
  const scale = useDrafting(({ tool, picture }) => (tool.kind === "move picture" ? picture?.metresAPixel : null));
  const drawing = whole && frame !== null;
  const latest = useRef({ plan, sheet });
  latest.current = { plan, sheet };
  const ready = sheet !== null;

  useLayoutEffect(() => {
    const now = latest.current;
    if (!drawing || !ready || now.sheet === null || frame === null) return;
    const editor = theEditor();
    const before = editor.state().view.camera;
    editor.look({ camera: roomyCamera(now.plan, theDrafting().state().tool, now.sheet) });
    return () => editor.look({ camera: before });
  }, [drawing, frame, ready, settingOut]);

  useLayoutEffect(() => {
    const now = latest.current;
    if (scale == null || now.sheet === null || !drawing) return;
    theEditor().look({ camera: roomyCamera(now.plan, theDrafting().state().tool, now.sheet) });
  }, [scale, drawing]);

  // A new datum end takes the sheet along; what is drawn stays where it is seen.
  const { pose } = plan.piece;
  const seen = useRef<Pose>(pose);
  useLayoutEffect(() => {
    const before = seen.current;
    seen.current = pose;
    const { camera } = theEditor().state().view;
    if (!drawing || camera === null || before === pose || before.heading !== pose.heading) return;
    const [ds, dt] = toInner(pieceFrame(before), [pose.x, pose.y]);
    theEditor().look({ camera: { ...camera, s: camera.s - ds, t: camera.t - dt } });
  }, [pose, drawing]);
}
