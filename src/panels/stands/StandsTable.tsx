/** The table twin of the drawings: every stand of the layout in view, with the same edits and the same selection. */

import { ActionIcon, Checkbox } from "@mantine/core";
import { memo, type ReactNode, useMemo } from "react";
import type { NumberName } from "../../checks";
import { criteriaOf, type LayoutId, type StandId } from "../../plan";
import { layoutInView, reportInView, selectedStands, stepInView, theEditor } from "../../store";
import { Icon, Quantity, QuantityField, VerdictMark, VerdictShape, verdictWords } from "../../ui";
import { attempt, useCalm, usePlan } from "../connect";
import { NumberHelp } from "../help/NumberHelp";
import styles from "../panels.module.css";
import { type StandRow, standRows } from "./rows";
import standsStyles from "./stands.module.css";

export function StandsTable() {
  const plan = usePlan();
  const step = useCalm(stepInView);
  const layout = useCalm(layoutInView);
  const report = useCalm(reportInView);
  const selected = useCalm(selectedStands);
  const rows = useMemo(() => standRows(plan, step, report), [plan, step, report]);
  const tolerance = criteriaOf(plan).levelTolerance;
  return (
    <StandsTableView
      rows={rows}
      layout={layout.id}
      layoutName={layout.name}
      selected={selected}
      tolerance={tolerance}
    />
  );
}

interface TableProps {
  readonly rows: readonly StandRow[];
  readonly layout: LayoutId;
  readonly layoutName: string;
  readonly selected: readonly StandId[];
  /** The criterion, for tops without a tolerance of their own, m. */
  readonly tolerance: number;
}

export function StandsTableView({ rows, layout, layoutName, selected, tolerance }: TableProps) {
  if (rows.length === 0)
    return <p className={styles.quiet}>No stand is placed in {layoutName} yet. Add one from the stands below.</p>;
  return (
    <section
      className={standsStyles.wide}
      data-scrolls="across"
      aria-label={`Stands of ${layoutName}: table`}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
      tabIndex={0}
    >
      <table className={standsStyles.stands}>
        <caption className={styles.hiddenWords}>
          Stands of {layoutName}: where they stand, how high, and what each carries
        </caption>
        <thead>
          <tr>
            <th scope="col">Stand</th>
            <th scope="col">From datum end</th>
            <th scope="col">As planned</th>
            <th scope="col">% of rating</th>
            <th scope="col">Verdict</th>
            <th scope="col">Lightest</th>
            <th scope="col">Heaviest</th>
            <th scope="col">Across</th>
            <th scope="col">Angle</th>
            <th scope="col">Height</th>
            <th scope="col">Shim</th>
            <th scope="col">Top within ±</th>
            <th scope="col">
              <span className={styles.hiddenWords}>Take away</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <StandTableRow
              key={row.placement.stand}
              row={row}
              layout={layout}
              tolerance={tolerance}
              selected={selected.includes(row.placement.stand)}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface RowProps {
  readonly row: StandRow;
  readonly layout: LayoutId;
  readonly tolerance: number;
  readonly selected: boolean;
}

function StandTableRow({ row, layout, tolerance, selected }: RowProps) {
  const { placement, band, pending, utilisation, verdict } = row;
  const { stand } = placement;
  const asked = (name: NumberName, number: ReactNode) => (
    <NumberHelp name={name} stand={stand} offTab>
      {number}
    </NumberHelp>
  );
  return (
    <tr data-chosen={selected} data-stand={stand}>
      <th scope="row">
        <Checkbox
          size="sm"
          label={stand}
          aria-label={`Select stand ${stand}`}
          checked={selected}
          onChange={() => theEditor().toggleStand(stand)}
        />
      </th>
      <StationCell placement={placement} layout={layout} />
      <td data-numeric data-testid={`level-${stand}`}>
        {asked("as planned", <Quantity kind="force" value={band.level} />)}
      </td>
      <td data-numeric data-pending={pending}>
        {utilisation === null ? "–" : asked("% of rating", `${(utilisation * 100).toFixed(0)} %`)}
      </td>
      <td>
        {verdict === "holds" ? (
          <VerdictShape verdict="holds" label={verdictWords.holds} />
        ) : (
          <VerdictMark verdict={verdict} />
        )}
      </td>
      <td data-numeric data-pending={pending}>
        {asked("lightest", <Quantity kind="force" value={band.least} />)}
      </td>
      <td data-numeric data-pending={pending}>
        {asked("heaviest", <Quantity kind="force" value={band.most} />)}
      </td>
      <PlacementCells placement={placement} layout={layout} tolerance={tolerance} />
      <td>
        <ActionIcon
          variant="subtle"
          aria-label={`Take ${stand} away`}
          title={`Take ${stand} away`}
          onClick={() => attempt("stands.remove", { layout, stands: [stand] })}
        >
          <Icon name="bin" />
        </ActionIcon>
      </td>
    </tr>
  );
}

type CellProps = Pick<RowProps, "layout"> & { readonly placement: StandRow["placement"] };

/** Cells with fields redraw only when the placement itself changes. */
const StationCell = memo(function StationCell({ placement, layout }: CellProps) {
  const { stand, s, t } = placement;
  return (
    <td>
      <QuantityField
        bare
        label={`${stand}, distance from the datum end`}
        kind="length"
        value={s}
        commit={(value) => attempt("stands.move", { layout, moves: [{ stand, s: value, t }], burst: `field ${stand}` })}
      />
    </td>
  );
});

const PlacementCells = memo(function PlacementCells({
  placement,
  layout,
  tolerance,
}: CellProps & Pick<RowProps, "tolerance">) {
  const { stand, s, t, angle, height, shim, levelTolerance } = placement;
  const on = { layout, stand };
  return (
    <>
      <td>
        <QuantityField
          bare
          label={`${stand}, across from the middle line`}
          kind="length"
          value={t}
          commit={(value) =>
            attempt("stands.move", { layout, moves: [{ stand, s, t: value }], burst: `field ${stand}` })
          }
        />
      </td>
      <td>
        <QuantityField
          bare
          label={`${stand}, angle from square`}
          kind="angle"
          value={angle}
          commit={(value) => attempt("stand.turn", { ...on, angle: value })}
        />
      </td>
      <td>
        <QuantityField
          bare
          label={`${stand}, height`}
          kind="length"
          value={height}
          commit={(value) => attempt("stand.height", { ...on, height: value })}
        />
      </td>
      <td>
        <QuantityField
          bare
          label={`${stand}, shim`}
          kind="length"
          value={shim}
          step={0}
          commit={(value) => attempt("stand.shim", { ...on, shim: value })}
        />
      </td>
      <td>
        <QuantityField
          bare
          label={`${stand}, top within plus or minus`}
          kind="length"
          value={levelTolerance ?? tolerance}
          step={0}
          commit={(value) => attempt("stand.levelTolerance", { ...on, levelTolerance: value })}
          clear={() => attempt("stand.levelTolerance", { ...on, levelTolerance: null })}
        />
      </td>
    </>
  );
});
