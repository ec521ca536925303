/** The column beside the drawings: what is found, what is chosen, and the lists behind it. */

import { Tabs } from "@mantine/core";
import { lazy, Suspense, useState } from "react";
import { DisplayUnits } from "../ui";
import { useCalm, usePlan } from "./connect";
import { FindingsPanel } from "./findings/FindingsPanel";
import { GoodUpToPanel } from "./findings/GoodUpTo";
import { StepFacts } from "./findings/StepFacts";
import { VerdictLine } from "./findings/VerdictLine";
import styles from "./panels.module.css";
import { Bands } from "./stands/Bands";

/** Loaded when first opened: the page shows its first number without them. */
const StandInspector = lazy(() => import("./stands/StandInspector"));
const StandsPanel = lazy(() => import("./stands/StandsPanel"));
const PieceInspector = lazy(() => import("./piece/PieceInspector"));
const StepsPanel = lazy(() => import("./steps/StepsPanel"));
const PlanPanel = lazy(() => import("./plan/PlanPanel"));

const tabs = [
  { value: "findings", label: "Findings" },
  { value: "stands", label: "Stands" },
  { value: "piece", label: "Piece" },
  { value: "steps", label: "Steps" },
  { value: "plan", label: "Plan" },
] as const;
type Tab = (typeof tabs)[number]["value"];

export function SidePanel() {
  const [tab, setTab] = useState<Tab>("findings");
  const { display } = usePlan();
  return (
    <DisplayUnits display={display}>
      <aside className={styles.side} aria-label="Findings and lists">
        <VerdictLine />
        <Tabs
          value={tab}
          onChange={(value) => setTab((value as Tab | null) ?? "findings")}
          keepMounted={false}
          className={styles.tabs}
        >
          <Tabs.List aria-label="What to look at">
            {tabs.map(({ value, label }) => (
              <Tabs.Tab key={value} value={value}>
                {label}
              </Tabs.Tab>
            ))}
          </Tabs.List>
          <Tabs.Panel value="findings" className={styles.tabBody}>
            <Bands />
            <GoodUpToPanel />
            <StepFacts />
            <ChosenStand />
            <FindingsPanel />
          </Tabs.Panel>
          <Tabs.Panel value="stands" className={styles.tabBody}>
            <ChosenStand />
            <Suspense>
              <StandsPanel />
            </Suspense>
          </Tabs.Panel>
          <Tabs.Panel value="piece" className={styles.tabBody}>
            <Suspense>
              <PieceInspector />
            </Suspense>
          </Tabs.Panel>
          <Tabs.Panel value="steps" className={styles.tabBody}>
            <Suspense>
              <StepsPanel />
            </Suspense>
          </Tabs.Panel>
          <Tabs.Panel value="plan" className={styles.tabBody}>
            <Suspense>
              <PlanPanel />
            </Suspense>
          </Tabs.Panel>
        </Tabs>
      </aside>
    </DisplayUnits>
  );
}

/** The inspector of the stand that was touched last. */
function ChosenStand() {
  const stand = useCalm((state) => (state.selection.kind === "stands" ? (state.selection.ids.at(-1) ?? null) : null));
  if (stand === null) return null;
  return (
    <Suspense>
      <StandInspector stand={stand} />
    </Suspense>
  );
}
