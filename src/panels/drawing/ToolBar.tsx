/** What the bar holds for the tool in hand; it comes with the first tool. */

import { type RefObject, useEffect, useLayoutEffect } from "react";
import { type Tool, useDrafting } from "../../store";
import { ChangeBar } from "./ChangeBar";
import { DrawBar } from "./DrawBar";
import { focusIsLost } from "./focus";
import { PictureBar } from "./PictureBar";

interface ToolBarProps {
  readonly tool: Tool;
  /** The bar itself, which takes the focus. */
  readonly bar: RefObject<HTMLElement | null>;
}

export default function ToolBar({ tool, bar }: ToolBarProps) {
  const inHand = tool.kind === "draw" || tool.kind === "scale picture" || tool.kind === "move picture";
  const begun = useDrafting((state) => state.settingOut);
  // Keys and screen readers begin here; a finger sees no keyboard come up, because no field is focused. Not before the
  // menu has seen who has the focus as it closes: it would take it back from the bar.
  useEffect(() => {
    if (inHand) bar.current?.focus({ preventScroll: true });
  }, [inHand, begun, bar]);
  // A field goes with its tool, a button with its corner: who had it in focus goes on from here, at once and not from
  // nowhere.
  useLayoutEffect(() => {
    if (tool.kind !== "none" && focusIsLost()) bar.current?.focus({ preventScroll: true });
  }, [tool, bar]);
  return <Content tool={tool} />;
}

function Content({ tool }: { readonly tool: Tool }) {
  switch (tool.kind) {
    case "none":
      return null;
    case "draw":
      return <DrawBar tool={tool} />;
    case "change":
      return <ChangeBar tool={tool} />;
    case "scale picture":
    case "move picture":
      return <PictureBar tool={tool} />;
    default:
      return tool satisfies never;
  }
}
