/** The page: header, the two drawings, and the panels beside or below them. */

import { MantineProvider } from "@mantine/core";
import { useEffect, useState } from "react";
import { Drawings, StandingBar } from "../canvas";
import {
  BackgroundContext,
  CommandsDialog,
  DrawingBar,
  LiveRegion,
  MendSearchContext,
  NewPlanDialog,
  SidePanel,
  StepStrip,
} from "../panels";
import { actions, shown, theEditor, useEditor } from "../store";
import { cssVariablesResolver, DisplayUnits, type IconName, theme } from "../ui";
import styles from "./app.module.css";
import { usePageCommands } from "./commands";
import { DrawingTools } from "./DrawingTools";
import { useDrop } from "./drop";
import { Header } from "./Header";
import { Hints } from "./Hints";
import { KeptPlansDialog } from "./KeptPlans";
import { useKeys } from "./keys";
import { NoticeLine } from "./NoticeLine";
import type { Session } from "./session";
import { Tool } from "./Tool";
import { themeManager } from "./theme";

export function App({ session }: { readonly session: Session }) {
  const wished = useEditor((state) => state.view.theme);
  const display = useEditor((state) => shown(state).display);
  return (
    <MantineProvider
      theme={theme}
      cssVariablesResolver={cssVariablesResolver}
      colorSchemeManager={themeManager}
      defaultColorScheme="auto"
      {...(wished === "auto" ? {} : { forceColorScheme: wished })}
    >
      <DisplayUnits display={display}>
        <Page session={session} />
      </DisplayUnits>
    </MantineProvider>
  );
}

function Page({ session }: { readonly session: Session }) {
  const [dialog, setDialog] = useState<"new plan" | "kept plans" | "keys" | null>(null);
  const close = () => setDialog(null);
  const [large, setLarge] = useState(false);
  const units = useEditor((state) => state.document.display?.units ?? "metric");
  const title = useEditor((state) => state.document.title);
  const commands = usePageCommands(session, {
    newPlan: () => setDialog("new plan"),
    keptPlans: () => setDialog("kept plans"),
    keys: () => setDialog("keys"),
  });
  const keys = useKeys(session.editor, commands);
  const dropping = useDrop(session);
  useEffect(() => {
    document.title = title === "" ? "Trestleboard" : `${title} – Trestleboard`;
  }, [title]);
  return (
    <div className={styles.page} data-dropping={dropping}>
      <Header commands={commands} />
      <NoticeLine />
      <main className={styles.main} data-large={large}>
        <section className={styles.drawings} aria-label="Drawings">
          <div className={styles.strip}>
            <StepStrip />
            <DrawingTools />
            <div className={styles.tools} role="toolbar" aria-label="View of the drawings">
              <StandingTool />
              {viewTools.map(({ id, icon }) => (
                <ViewTool key={id} id={id} icon={icon} />
              ))}
              <Tool
                className={styles.enlarge}
                icon={large ? "up" : "down"}
                label={large ? "Smaller drawings, lists below" : "Larger drawings"}
                pressed={large}
                onClick={() => setLarge(!large)}
              />
            </div>
          </div>
          <DrawingBar />
          <StandingBar />
          {/* The drawings take keys as one thing; what is drawn has its twin in the table of stands. */}
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes keys */}
          <div className={styles.sheet} ref={keys} tabIndex={0} role="application" aria-label={drawingHint}>
            <Drawings />
          </div>
          <Hints example={session.example} create={() => setDialog("new plan")} />
        </section>
        <MendSearchContext value={session.searches}>
          <BackgroundContext value={session.background}>
            <SidePanel />
          </BackgroundContext>
        </MendSearchContext>
      </main>
      <LiveRegion />
      <CommandsDialog opened={dialog === "keys"} onClose={close} more={commands} />
      <KeptPlansDialog session={session} opened={dialog === "kept plans"} onClose={close} />
      <NewPlanDialog
        opened={dialog === "new plan"}
        units={units}
        onClose={close}
        onMade={(document) => {
          close();
          void session.begin(document, "New plan");
        }}
      />
    </div>
  );
}

const viewTools = [
  { id: "view.out", icon: "zoomOut" },
  { id: "view.fit", icon: "fit" },
  { id: "view.in", icon: "zoomIn" },
] as const satisfies readonly ViewToolProps[];

interface ViewToolProps {
  readonly id: string;
  readonly icon: IconName;
  /** For a switch. */
  readonly pressed?: boolean;
}

/** A button for one of the table's actions on the view. */
function ViewTool({ id, icon, pressed }: ViewToolProps) {
  const action = actions.find((one) => one.id === id);
  if (action === undefined) throw new Error(`no action ${id}`);
  return (
    <Tool
      className={id === "view.in" || id === "view.out" ? styles.zoom : undefined}
      icon={icon}
      label={action.label}
      {...(pressed === undefined ? {} : { pressed })}
      onClick={() => action.run(theEditor())}
    />
  );
}

/** The switch of the map of where a person may stand. */
function StandingTool() {
  const on = useEditor((state) => state.view.overlays.standing);
  return <ViewTool id="view.standing" icon="person" pressed={on} />;
}

const drawingHint =
  "Plan view and elevation. Tab goes from stand to stand, arrow keys move the chosen one, Shift moves it a little, Delete takes it away, Escape lets go. The table of stands says the same in words.";
