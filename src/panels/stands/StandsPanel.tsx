/** The table of the stands in view, what is done to them together, and what there is to stand on. */

import { RegisterPanel } from "./RegisterPanel";
import { StandActions } from "./StandActions";
import { StandsTable } from "./StandsTable";

export default function StandsPanel() {
  return (
    <>
      <StandsTable />
      <StandActions />
      <RegisterPanel />
    </>
  );
}
