/** The page: header, the two drawings, and the panels beside or below them. */

import { ActionIcon, MantineProvider } from "@mantine/core";
import { useEffect, useState } from "react";
import { Drawings } from "../canvas";
import { LiveRegion, MendSearchContext, NewPlanDialog, SidePanel, StepStrip } from "../panels";
import { shown, useEditor } from "../store";
import { cssVariablesResolver, DisplayUnits, Icon, theme } from "../ui";
import { startSearches } from "../worker";
import styles from "./app.module.css";
import { useDrop } from "./drop";
import { Header } from "./Header";
import { Hints } from "./Hints";
import { useKeys } from "./keys";
import { NoticeLine } from "./NoticeLine";
import type { Session } from "./session";
import { themeManager } from "./theme";

/** Searches in the background; their worker starts with the first. */
const searches = startSearches();

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
  const [creating, setCreating] = useState(false);
  const [large, setLarge] = useState(false);
  const units = useEditor((state) => state.document.display?.units ?? "metric");
  const title = useEditor((state) => state.document.title);
  const keys = useKeys(session);
  const dropping = useDrop(session);
  useEffect(() => {
    document.title = title === "" ? "Trestleboard" : `${title} – Trestleboard`;
  }, [title]);
  return (
    <div className={styles.page} data-dropping={dropping}>
      <Header session={session} create={() => setCreating(true)} />
      <NoticeLine />
      <main className={styles.main} data-large={large}>
        <section className={styles.drawings} aria-label="Drawings">
          <div className={styles.strip}>
            <StepStrip />
            <ActionIcon
              className={styles.enlarge}
              variant="subtle"
              size={44}
              aria-label={large ? "Smaller drawings, lists below" : "Larger drawings"}
              aria-pressed={large}
              onClick={() => setLarge(!large)}
            >
              <Icon name={large ? "up" : "down"} />
            </ActionIcon>
          </div>
          {/* The drawings take keys as one thing; what is drawn has its twin in the table of stands. */}
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes keys */}
          <div className={styles.sheet} ref={keys} tabIndex={0} role="application" aria-label={drawingHint}>
            <Drawings />
          </div>
          <Hints example={session.example} create={() => setCreating(true)} />
        </section>
        <MendSearchContext value={searches}>
          <SidePanel />
        </MendSearchContext>
      </main>
      <LiveRegion />
      <NewPlanDialog
        opened={creating}
        units={units}
        onClose={() => setCreating(false)}
        onMade={(document) => {
          setCreating(false);
          void session.begin(document, "New plan");
        }}
      />
    </div>
  );
}

const drawingHint =
  "Plan view and elevation. Tab goes from stand to stand, arrow keys move the chosen one, Shift moves it a little, Delete takes it away, Escape lets go. The table of stands says the same in words.";
