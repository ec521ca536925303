/** What the bar holds for the tool in hand; it comes with the first tool. */

import type { Tool } from "../../store";
import { ChangeBar } from "./ChangeBar";
import { DrawBar } from "./DrawBar";
import { PictureBar } from "./PictureBar";

export default function ToolBar({ tool }: { readonly tool: Tool }) {
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
