/** What the page itself can do, besides the actions on the plan: files, a new plan, the list of keys. */

import { useMemo } from "react";
import type { Command } from "../panels";
import type { IconName } from "../ui";
import type { Session } from "./session";

export interface PageCommand extends Command {
  readonly icon: IconName;
}

export function usePageCommands(session: Session, create: () => void, list: () => void): readonly PageCommand[] {
  // The two functions only set a state: they do the same whichever render they come from.
  return useMemo(
    () => [
      { id: "page.new", label: "My piece: a new plan", icon: "add", keys: [], enabled: true, run: create },
      {
        id: "page.open",
        label: "Open a plan file",
        icon: "open",
        keys: ["Mod+O"],
        enabled: true,
        run: () => void session.openFile(),
      },
      {
        id: "page.save",
        label: "Save to a plan file",
        icon: "save",
        keys: ["Mod+S"],
        enabled: true,
        run: () => void session.saveFile(),
      },
      {
        id: "page.keys",
        label: "What can be done, and its keys",
        icon: "keyboard",
        keys: ["?"],
        enabled: true,
        run: list,
      },
    ],
    [session],
  );
}
