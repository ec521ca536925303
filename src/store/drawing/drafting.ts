/**
 * Drawing by hand: the shape that is being drawn or changed, corner by corner. It lives beside the document, which only
 * knows finished shapes: each is one history entry, made by a command. What the plan file would refuse is refused here,
 * with one sentence, and nothing of what has been drawn is lost.
 */

import { createStore, type StoreApi } from "zustand/vanilla";
import { boundingBox, edgeInTheWay, rectangleBetween, shifted, withCornerAt, withoutCorner } from "../../geometry";
import { faultIn, mostCorners, type Plan, type Point, type Polygon, pieceLength } from "../../plan";
import type { Editor } from "../editor";
import { shown } from "../selectors";
import { noSelection } from "../state";
import { leftBeyond, type ShapeKind, type ShapeRef, shapeNatures, shapeOf, shapesOf } from "./shapes";
import type { TracedPicture } from "./tracing";

/** How a shape is drawn: by two opposite corners, corner by corner, or by its two ends. */
export type Form = "rectangle" | "corners" | "line";

export interface DrawTool {
  readonly kind: "draw";
  readonly shape: ShapeKind;
  readonly form: Form;
  /** The corners so far, in the frame of the shape, m. */
  readonly points: readonly Point[];
  /** Whose lane is drawn; 0 for other shapes. */
  readonly walkway: number;
}

export interface ChangeTool {
  readonly kind: "change";
  readonly ref: ShapeRef;
  /** The corner that is chosen; null = the shape as a whole. */
  readonly corner: number | null;
}

export type Tool =
  | { readonly kind: "none" }
  | DrawTool
  | ChangeTool
  /** Two points of the picture that is traced, in the bay frame as it lies, m. */
  | { readonly kind: "scale picture"; readonly points: readonly Point[] }
  | { readonly kind: "move picture" };

/** A line that a place being drawn keeps to, in the frame of the tool, m. */
export interface NamedLine {
  readonly axis: 0 | 1;
  readonly at: number;
  readonly name: string;
}

/** Where the hand is, and what it keeps to there. */
export interface Aim {
  readonly at: Point;
  readonly lines: readonly NamedLine[];
  /** The point or edge it keeps to; null = none. */
  readonly name: string | null;
}

export interface DraftingState {
  readonly tool: Tool;
  readonly aim: Aim | null;
  /** Why the last corner or change was not taken; null = it was. */
  readonly refusal: string | null;
  /** Whether the plan view has the whole sheet for it: true where somebody set out to draw. */
  readonly wholeSheet: boolean;
  /** Counts up with every setting out to draw or change with the whole sheet: what is there is shown whole again. */
  readonly settingOut: number;
  /** What is traced; null = nothing. */
  readonly picture: TracedPicture | null;
}

export interface Drafting {
  readonly store: StoreApi<DraftingState>;
  readonly state: () => DraftingState;
  /** Begins a shape; what was being drawn is dropped. */
  readonly begin: (shape: ShapeKind, options?: { readonly form?: Form; readonly walkway?: number }) => void;
  /** The corners so far stay, as far as the form can take them. */
  readonly setForm: (form: Form) => void;
  readonly aimAt: (aim: Aim | null) => void;
  /** The next corner; the last one of a rectangle or a line makes the shape, the first one again closes it. */
  readonly place: (point: Point) => void;
  /** Takes the last corner back. */
  readonly takeBack: () => void;
  /** Makes the shape of the corners so far. */
  readonly close: () => void;
  /** Leaves the tool; what is not finished is dropped. */
  readonly leave: () => void;
  /** Opens a shape for changes, with a corner chosen or none. */
  readonly choose: (ref: ShapeRef, corner?: number | null) => void;
  /** The same from a list: with the whole sheet for it. */
  readonly open: (ref: ShapeRef) => void;
  /** Gives the shape being changed other points, or says why not. */
  readonly reshape: (points: readonly Point[], label?: string, burst?: string) => boolean;
  /** Removes the chosen corner, or the shape where none is. */
  readonly remove: () => void;
  /** Moves the chosen corner, or the shape, by so much, m. */
  readonly nudge: (by: Point) => void;
  readonly refuse: (sentence: string | null) => void;
  readonly setPicture: (picture: TracedPicture | null) => void;
  readonly setTool: (tool: Tool) => void;
}

const noTool: Tool = { kind: "none" };

/** A place to a micrometre: the noise of adding is not written. */
const tidy = ([p, q]: Point): Point => [Math.round(p * 1e6) / 1e6, Math.round(q * 1e6) / 1e6];

const tooMany = `An outline may have at most ${mostCorners.toLocaleString("en")} corners.`;

/** Why a closed shape cannot stand, with its corners counted from 1; null where it can. */
export function whyNotSimple(points: Polygon): string | null {
  if (points.length < 3) return "An outline takes at least three corners.";
  if (points.length > mostCorners) return tooMany;
  const fault = faultIn(points);
  if (fault === null) return null;
  const [one, other] = fault.which.map((corner) => corner + 1) as [number, number];
  return fault.of === "corners"
    ? `Corners ${one} and ${other} would lie in one place.`
    : `The edge from corner ${one} and the edge from corner ${other} would cross or touch.`;
}

/** Why the piece cannot have this outline: a weight or a load would no longer lie on it; null where it can. */
export function whyNotOutline(plan: Pick<Plan, "piece" | "steps">, outline: Polygon): string | null {
  const { least, most } = boundingBox(outline);
  return leftBeyond(plan, least[0], most[0] - least[0]);
}

export function createDrafting(editor: Editor): Drafting {
  const store = createStore<DraftingState>(() => ({
    tool: noTool,
    aim: null,
    refusal: null,
    wholeSheet: false,
    settingOut: 0,
    picture: null,
  }));
  const { getState, setState } = store;
  const setTool = (tool: Tool): void =>
    setState({
      tool,
      aim: null,
      refusal: null,
      wholeSheet: tool.kind !== "none" && (tool.kind !== "change" || getState().wholeSheet),
    });
  const refuse = (refusal: string | null): void => {
    if (refusal !== getState().refusal) setState({ refusal });
  };

  // What is changed may go: with an undo, with another plan, or because something else is chosen.
  editor.store.subscribe((state, before) => {
    const { tool } = getState();
    if (state.history.entries[0] !== before.history.entries[0]) {
      if (tool.kind !== "none") setTool(noTool);
    } else if (tool.kind === "change") {
      const chosen = state.selection !== before.selection && state.selection.kind !== "none";
      const shape = chosen ? null : shapeOf(shown(state), tool.ref);
      if (shape === null) setTool(noTool);
      else if (tool.corner !== null && tool.corner >= shape.points.length) setTool({ ...tool, corner: null });
    }
  });

  /** Makes the shape; or says why not, and the corners stay. */
  function finish(tool: DrawTool, points: readonly Point[]): string | null {
    const fault = shapeNatures[tool.shape].closed ? whyNotSimple(points) : null;
    if (fault !== null) return fault;
    const length = pieceLength(shown(editor.state()).piece);
    const made = editor.run("shape.add", { kind: tool.shape, points, walkway: tool.walkway });
    if (!made) return saidByEditor() ?? "The plan has this shape already.";
    if (tool.shape === "outline" && pieceLength(shown(editor.state()).piece) !== length)
      editor.say({
        kind: "information",
        text: "Weights, stands and zones keep their share of the new length. Check where they are.",
      });
    const drawn = shapesOf(shown(editor.state())).filter(({ kind }) => kind === tool.shape);
    const index = tool.shape === "lane" ? tool.walkway : (drawn.at(-1)?.index ?? 0);
    setTool({ kind: "change", ref: { kind: tool.shape, index }, corner: null });
    return null;
  }

  /** The sentence with which the editor refused; it is said here and not twice. */
  function saidByEditor(): string | null {
    const { notice } = editor.state();
    if (notice?.kind !== "refusal") return null;
    editor.say(null);
    return notice.text;
  }

  function placeCorner(tool: DrawTool, point: Point): string | null {
    const again = tool.points.findIndex((corner) => same(corner, point));
    if (again === 0 && tool.points.length >= 3) return finish(tool, tool.points);
    if (again >= 0) return `Corner ${again + 1} lies there already.`;
    const inTheWay = edgeInTheWay(tool.points, point);
    if (inTheWay !== null)
      return `This edge would cross or touch the one from corner ${inTheWay + 1} to corner ${inTheWay + 2}.`;
    if (tool.points.length === mostCorners) return tooMany;
    setState({ tool: { ...tool, points: [...tool.points, point] } });
    return null;
  }

  function placeSecond(tool: DrawTool, first: Point, point: Point): string | null {
    if (tool.form === "line") return same(first, point) ? "A walkway needs two ends." : finish(tool, [first, point]);
    if (first[0] === point[0] || first[1] === point[1])
      return "These two corners span no area; take the one opposite, off to the side as well.";
    return finish(tool, rectangleBetween(first, point));
  }

  function placeWith(tool: DrawTool, point: Point): string | null {
    const first = tool.points[0];
    return first === undefined || tool.form === "corners" ? placeCorner(tool, point) : placeSecond(tool, first, point);
  }

  const reshape: Drafting["reshape"] = (points, label, burst) => {
    const { tool } = getState();
    if (tool.kind !== "change") return false;
    const { ref } = tool;
    const tidied = points.map(tidy);
    const refusal =
      (shapeNatures[ref.kind].closed ? whyNotSimple(tidied) : null) ??
      (ref.kind === "outline" ? whyNotOutline(shown(editor.state()), tidied) : null);
    if (refusal !== null) {
      refuse(refusal);
      return false;
    }
    const made = editor.run("shape.points", {
      ref,
      points: tidied,
      ...(label === undefined ? {} : { label }),
      ...(burst === undefined ? {} : { burst }),
    });
    refuse(made ? null : saidByEditor());
    return made;
  };

  return {
    store,
    state: getState,
    begin: (shape, { form, walkway = 0 } = {}) => {
      if (shapeNatures[shape].frame === "bay" && shape !== "bay" && shown(editor.state()).bay === null) {
        editor.say({ kind: "refusal", text: "Draw the bay’s outline first." });
        return;
      }
      editor.gesture.cancel();
      editor.select(noSelection);
      const usual: Form = shapeNatures[shape].closed ? "rectangle" : "line";
      setState({ settingOut: getState().settingOut + 1 });
      setTool({ kind: "draw", shape, form: form ?? usual, points: [], walkway });
    },
    setForm: (form) => {
      const { tool } = getState();
      if (tool.kind !== "draw" || tool.form === form) return;
      const points = form === "corners" ? tool.points : tool.points.slice(0, 1);
      setState({ tool: { ...tool, form, points }, refusal: null });
    },
    aimAt: (aim) => setState({ aim }),
    place: (wished) => {
      const { tool } = getState();
      const point = tidy(wished);
      switch (tool.kind) {
        case "draw":
          refuse(placeWith(tool, point));
          break;
        case "scale picture":
          if (tool.points.length === 1 && same(tool.points[0]!, point)) refuse("Take two points that lie apart.");
          else setState({ tool: { ...tool, points: [...tool.points.slice(0, 1), point] }, refusal: null });
          break;
        case "none":
        case "change":
        case "move picture":
          break;
        default:
          tool satisfies never;
      }
    },
    takeBack: () => {
      const { tool } = getState();
      if (tool.kind !== "draw" && tool.kind !== "scale picture") return;
      setState({ tool: { ...tool, points: tool.points.slice(0, -1) }, refusal: null });
    },
    close: () => {
      const { tool } = getState();
      if (tool.kind !== "draw") return;
      if (tool.form === "corners") refuse(finish(tool, tool.points));
      else refuse(tool.points.length === 0 ? "No corner is drawn yet." : "The opposite corner is still to come.");
    },
    leave: () => {
      if (getState().tool.kind !== "none") setTool(noTool);
    },
    choose: (ref, corner = null) => {
      editor.select(noSelection);
      setTool({ kind: "change", ref, corner });
    },
    open: (ref) => {
      editor.select(noSelection);
      setState({ wholeSheet: true, settingOut: getState().settingOut + 1 });
      setTool({ kind: "change", ref, corner: null });
    },
    reshape,
    remove: () => {
      const { tool } = getState();
      const shape = tool.kind === "change" ? shapeOf(shown(editor.state()), tool.ref) : null;
      if (tool.kind !== "change" || shape === null) return;
      if (tool.corner !== null && shapeNatures[shape.kind].closed) {
        const removed = reshape(withoutCorner(shape.points, tool.corner), `Remove a corner of ${shape.name}`);
        if (removed) setState({ tool: { ...tool, corner: null } });
      } else if (shape.kind === "outline" || shape.kind === "bay")
        refuse(`The ${shape.kind === "bay" ? "bay" : "piece"} keeps an outline; draw another or change its corners.`);
      else editor.run("shape.remove", { ref: tool.ref });
    },
    nudge: (by) => {
      const { tool } = getState();
      const shape = tool.kind === "change" ? shapeOf(shown(editor.state()), tool.ref) : null;
      if (tool.kind !== "change" || shape === null) return;
      const corner = tool.corner === null ? undefined : shape.points[tool.corner];
      const points =
        corner === undefined
          ? shifted(shape.points, by)
          : withCornerAt(shape.points, tool.corner!, [corner[0] + by[0], corner[1] + by[1]]);
      reshape(points, undefined, `nudge ${shape.kind} ${shape.index} ${tool.corner ?? ""}`);
    },
    refuse,
    setPicture: (picture) => setState({ picture }),
    setTool,
  };
}

/** The frame that a tool works in; null where none is in hand. */
export function frameOf(tool: Tool): "piece" | "bay" | null {
  switch (tool.kind) {
    case "none":
      return null;
    case "draw":
      return shapeNatures[tool.shape].frame;
    case "change":
      return shapeNatures[tool.ref.kind].frame;
    case "scale picture":
    case "move picture":
      return "bay";
    default:
      return tool satisfies never;
  }
}

const same = (a: Point, b: Point): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-9;

const draftings = new WeakMap<Editor, Drafting>();

/** The drafting that belongs to an editor: made when first asked for. */
export function draftingOf(editor: Editor): Drafting {
  const known = draftings.get(editor);
  if (known !== undefined) return known;
  const made = createDrafting(editor);
  draftings.set(editor, made);
  return made;
}
