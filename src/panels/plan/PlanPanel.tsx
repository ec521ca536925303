/** The plan as a whole: its title, the bay, the criteria, what was done. */

import { AboutPanel } from "./AboutPanel";
import { BayPanel } from "./BayPanel";
import { CriteriaPanel } from "./CriteriaPanel";
import { HistoryPanel } from "./HistoryPanel";
import { TitlePanel } from "./TitlePanel";

export default function PlanPanel() {
  return (
    <>
      <TitlePanel />
      <BayPanel />
      <CriteriaPanel />
      <HistoryPanel />
      <AboutPanel />
    </>
  );
}
