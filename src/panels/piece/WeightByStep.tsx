/** Weight and centre of gravity of every step, with how they were come by. */

import { useMemo } from "react";
import { type Column, DataTable, Quantity, useFormat } from "../../ui";
import { useCalm, usePlan } from "../connect";
import { basesText, type WeightAccount, weightAccount } from "./weight";

interface Row {
  readonly id: string;
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
  const columns: readonly Column<Row>[] = [
    { key: "step", heading: "Step", cell: ({ name }) => name },
    {
      key: "mass",
      heading: "Weight",
      numeric: true,
      cell: ({ account }) => (
        <>
          <Quantity kind="mass" value={account.mass} />
          {account.within > 0 && ` ± ${format(account.within, "mass")}`}
        </>
      ),
    },
    {
      key: "s",
      heading: "Centre of gravity along",
      numeric: true,
      cell: ({ cg }) => <Quantity kind="length" value={cg?.s ?? null} />,
    },
    { key: "t", heading: "across", numeric: true, cell: ({ cg }) => <Quantity kind="length" value={cg?.t ?? null} /> },
    { key: "z", heading: "up", numeric: true, cell: ({ cg }) => <Quantity kind="length" value={cg?.z ?? null} /> },
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
