/** Layouts: named arrangements of stands, and how the ones in use differ. */

import { ActionIcon, Button } from "@mantine/core";
import { useMemo, useState } from "react";
import { layoutInView } from "../../store";
import { type Column, DataTable, Icon, Section, TextField, VerdictMark } from "../../ui";
import { attempt, useCalm, usePlan } from "../connect";
import styles from "../panels.module.css";
import { AddButton } from "../piece/OutlineEditor";
import { counted } from "../words";
import { CompareDialog } from "./CompareDialog";
import { type LayoutRow, layoutRows } from "./layoutRows";

export function LayoutsPanel() {
  const plan = usePlan();
  const current = useCalm(layoutInView);
  const report = useCalm((state) => state.answers.report);
  const rows = useMemo(() => layoutRows(plan, report), [plan, report]);
  const columns: readonly Column<LayoutRow>[] = [
    {
      key: "name",
      heading: "Layout",
      cell: ({ layout }) => (
        <TextField
          bare
          label={`Name of ${layout.name}`}
          required
          value={layout.name}
          commit={(name) => attempt("layout.rename", { layout: layout.id, name })}
        />
      ),
    },
    { key: "stands", heading: "Stands", cell: ({ layout }) => counted(layout.placements.length, "stand") },
    { key: "steps", heading: "Used in", cell: ({ steps }) => (steps === 0 ? "no step" : counted(steps, "step")) },
    {
      key: "verdict",
      heading: "Verdict",
      cell: ({ verdict }) => (verdict === null ? "–" : <VerdictMark verdict={verdict} />),
    },
    {
      key: "governs",
      heading: "Governing stand",
      cell: ({ governing }) =>
        governing === null ? "–" : `${governing.stand}, ${(governing.utilisation * 100).toFixed(0)} % of rating`,
    },
    {
      key: "remove",
      heading: <span className={styles.hiddenWords}>Remove</span>,
      cell: ({ layout, steps }) => (
        <ActionIcon
          variant="subtle"
          aria-label={`Remove ${layout.name}`}
          title={steps > 0 ? "A step uses it" : `Remove ${layout.name}`}
          disabled={steps > 0}
          onClick={() => attempt("layout.remove", { layout: layout.id })}
        >
          <Icon name="bin" />
        </ActionIcon>
      ),
    },
  ];
  const [comparing, setComparing] = useState(false);
  const next = `Layout ${String.fromCharCode(65 + plan.layouts.length)}`;
  return (
    <Section
      title="Layouts"
      actions={
        <>
          {plan.layouts.length > 1 && (
            <Button size="compact-md" variant="default" onClick={() => setComparing(true)}>
              Side by side
            </Button>
          )}
          <AddButton onClick={() => attempt("layout.add", { name: next, copyOf: current.id })}>Copy this one</AddButton>
          <AddButton onClick={() => attempt("layout.add", { name: next })}>Empty</AddButton>
        </>
      }
    >
      <DataTable
        caption="Layouts and how they differ"
        columns={columns}
        rows={rows}
        rowKey={({ layout }) => layout.id}
        rowHeading="name"
        chosen={({ layout }) => layout.id === current.id}
      />
      <CompareDialog opened={comparing} onClose={() => setComparing(false)} />
    </Section>
  );
}
