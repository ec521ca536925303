/**
 * Keys while a tool is in hand, with the drawings in focus: arrows aim, Space sets a corner, Enter closes, Backspace
 * takes back, Escape leaves; on a shape that is changed, arrows move and Delete removes.
 */

import { useEffect } from "react";
import { type Aim, type Drafting, frameOf, keyName, nudgeOf, shown, theDrafting, theEditor } from "../../store";
import type { PlanMap } from "../camera";
import type { Drawn } from "../hand/hosts";
import { frameOn, roundOn } from "./aim";

const directions: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** How far an arrow key takes the aim, in round steps; with Shift one. */
const aimSteps = 5;

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    target.closest("input, textarea, select, button, summary, [role='menu'], [role='dialog'], [role='tab']") !== null
  );
}

/** The aim an arrow key leads to: from where it is, or from the last corner, or from the middle of the view. */
function aimMoved(drafting: Drafting, map: PlanMap, [dx, dy]: readonly [number, number], fine: boolean): Aim | null {
  const { tool, aim } = drafting.state();
  const frame = frameOf(tool);
  if (frame === null || (tool.kind !== "draw" && tool.kind !== "scale picture")) return null;
  const middle = frameOn(map, frame).to([map.size.width / 2, map.size.height / 2]);
  const round = roundOn(theEditor(), map);
  const step = round * (fine ? 1 : aimSteps);
  const from = aim?.at ?? tool.points.at(-1) ?? [roundTo(middle[0], step), roundTo(middle[1], step)];
  return { at: [roundTo(from[0] + dx * step, round), roundTo(from[1] + dy * step, round)], lines: [], name: null };
}

const roundTo = (value: number, step: number): number => Math.round(value / step) * step;

/** What a key does with the tool in hand; false where it does nothing. */
function pressed(key: string, drafting: Drafting, map: PlanMap): boolean {
  const { tool, aim } = drafting.state();
  const plain = key.replace(/^Shift\+/, "");
  const direction = directions[plain];
  const fine = plain !== key;
  if (key === "Escape") {
    drafting.leave();
    return true;
  }
  switch (tool.kind) {
    case "draw":
    case "scale picture":
      if (direction !== undefined) drafting.aimAt(aimMoved(drafting, map, direction, fine));
      else if (key === "Space" && aim !== null) drafting.place(aim.at);
      else if (key === "Enter" && tool.kind === "draw") {
        if (tool.form !== "corners" && aim !== null) drafting.place(aim.at);
        else drafting.close();
      } else if (key === "Backspace" || key === "Mod+Z") drafting.takeBack();
      else return key === "Tab" || key === "Shift+Tab" ? false : key === "Delete";
      return true;
    case "change": {
      const { coarse, fine: little } = nudgeOf(shown(theEditor().state()).display);
      const by = fine ? little : coarse;
      if (direction !== undefined) drafting.nudge([direction[0] * by, direction[1] * by]);
      else if (key === "Delete" || key === "Backspace") drafting.remove();
      else return false;
      return true;
    }
    case "move picture": {
      const { picture } = drafting.state();
      if (direction === undefined || picture === null) return false;
      const step = roundOn(theEditor(), map) * (fine ? 1 : aimSteps);
      drafting.setPicture({ ...picture, x: picture.x + direction[0] * step, y: picture.y + direction[1] * step });
      return true;
    }
    case "none":
      return false;
    default:
      return tool satisfies never;
  }
}

/** Listens while the drawings are there; before the page's own keys, which see what is left over. */
export function useDraftKeys(drawn: () => Drawn | null): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const drafting = theDrafting();
      const now = drawn();
      if (drafting.state().tool.kind === "none" || now === null || event.defaultPrevented) return;
      if (isTyping(event.target)) return;
      if (theEditor().gesture.running() && event.key === "Escape") return;
      if (!pressed(keyName(event), drafting, now.plan)) return;
      event.preventDefault();
    };
    window.addEventListener("keydown", onKey, { capture: true });
    return () => window.removeEventListener("keydown", onKey, { capture: true });
  }, [drawn]);
}
