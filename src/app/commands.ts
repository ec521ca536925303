/** What the page itself can do, besides the actions on the plan: files, a new plan, the list of keys. */

import { useMemo } from "react";
import { demoBeam, demoDie } from "../library";
import type { Command } from "../panels";
import type { IconName } from "../ui";
import type { Session } from "./session";

export interface PageCommand extends Command {
  readonly icon: IconName;
}

export interface PageDialogs {
  readonly newPlan: () => void;
  readonly keptPlans: () => void;
  readonly keys: () => void;
}

export function usePageCommands(session: Session, open: PageDialogs): readonly PageCommand[] {
  // What opens a dialog only sets a state: it does the same whichever render it comes from.
  return useMemo(
    () => [
      { id: "page.new", label: "My piece: a new plan", icon: "add", keys: [], enabled: true, run: open.newPlan },
      {
        id: "page.kept",
        label: "Plans kept in this browser",
        icon: "history",
        keys: [],
        enabled: true,
        run: open.keptPlans,
      },
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
        id: "page.example.beam",
        label: "Example: a lifting beam on four horses",
        icon: "piece",
        keys: [],
        enabled: true,
        run: () => void session.begin(demoBeam, "Opened the example"),
      },
      {
        id: "page.example.die",
        label: "Example: a die on three stands",
        icon: "stand",
        keys: [],
        enabled: true,
        run: () => void session.begin(demoDie, "Opened the example"),
      },
      {
        id: "page.keys",
        label: "What can be done, and its keys",
        icon: "keyboard",
        keys: ["?"],
        enabled: true,
        run: open.keys,
      },
    ],
    [session],
  );
}
