/** Weight and centre of gravity of every step, with how they were come by. */

import { useMemo } from "react";
import type { NumberName } from "../../checks";
import type { StepId } from "../../plan";
import { type Column, DataTable, Quantity, useFormat } from "../../ui";
import { useCalm, usePlan } from "../connect";
import { NumberHelp } from "../help/NumberHelp";
import { basesText, type WeightAccount, weightAccount } from "./weight";

interface Row {
  readonly id: StepId;
  readonly name: string;
  readonly account: WeightAccount;
  readonly cg: { readonly s: number; readonly t: number; readonly z: number } | null;
}

export function WeightByStep() {
  const plan = usePlan();
  const reports = useCalm((state) => state.answers.report.steps);
  const rows = useMemo(
    () =>
      plan.steps.map((step): Row => {
        const level = reports.find((report) => report.step === step.id)?.level;
        return {
          id: step.id,
          name: step.name,
          account: weightAccount(plan.piece, step),
          cg: level?.status === "known" ? level.value.cg : null,
        };
      }),
    [plan, reports],
  );
  return <WeightByStepView rows={rows} />;
}

export function WeightByStepView({ rows }: { readonly rows: readonly Row[] }) {
  const format = useFormat();
  const centre = ({ id, cg }: Row, of: "s" | "t" | "z", name: NumberName) => (
    <NumberHelp name={name} step={id}>
      <Quantity kind="length" value={cg?.[of] ?? null} />
    </NumberHelp>
  );
  const columns: readonly Column<Row>[] = [
    { key: "step", heading: "Step", cell: ({ name }) => name },
    {
      key: "mass",
      heading: "Weight",
      numeric: true,
      cell: ({ account, id }) => (
        <>
          <NumberHelp name="weight" step={id}>
            <Quantity kind="mass" value={account.mass} />
          </NumberHelp>
          {account.within > 0 && ` ± ${format(account.within, "mass")}`}
        </>
      ),
    },
    {
      key: "s",
      heading: "Centre of gravity along",
      numeric: true,
      cell: (row) => centre(row, "s", "centre of gravity along"),
    },
    { key: "t", heading: "across", numeric: true, cell: (row) => centre(row, "t", "centre of gravity across") },
    { key: "z", heading: "up", numeric: true, cell: (row) => centre(row, "z", "centre of gravity up") },
    { key: "basis", heading: "Known", cell: ({ account }) => basesText(account) },
  ];
  return (
    <DataTable
      caption="Weight and centre of gravity of every step"
      columns={columns}
      rows={rows}
      rowKey={({ id }) => id}
      rowHeading="step"
    />
  );
}
