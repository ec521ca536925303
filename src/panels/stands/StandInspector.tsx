/** One stand of the layout in view: where it stands, what it carries, what speaks for and against it. */

import { Button } from "@mantine/core";
import { lazy, Suspense, useMemo } from "react";
import type { NumberName } from "../../checks";
import { criteriaOf, type LayoutId, type Plan, type StandId } from "../../plan";
import { layoutInView, reportInView, stepInView, theEditor } from "../../store";
import {
  ChoiceField,
  Disclosure,
  Entry,
  Icon,
  Quantity,
  QuantityField,
  ReactionBand,
  Section,
  TitleBlock,
  useFormat,
  VerdictMark,
} from "../../ui";
import { attempt, useCalm, usePlan } from "../connect";
import { NumberHelp } from "../help/NumberHelp";
import styles from "../panels.module.css";
import { materialWords } from "../words";
import { type StandRow, standRows } from "./rows";
import { StandPicture } from "./StandPicture";
import standsStyles from "./stands.module.css";

/** Loaded when first opened. */
const StandFacts = lazy(() => import("./StandFacts"));

export default function StandInspector({ stand }: { readonly stand: StandId }) {
  const plan = usePlan();
  const step = useCalm(stepInView);
  const layout = useCalm(layoutInView);
  const report = useCalm(reportInView);
  const row = useMemo(
    () => standRows(plan, step, report).find(({ placement }) => placement.stand === stand) ?? null,
    [plan, step, report, stand],
  );
  if (row === null)
    return (
      <Section title={`Stand ${stand}`}>
        <p className={styles.quiet}>Not placed in {layout.name}.</p>
      </Section>
    );
  return <StandInspectorView row={row} plan={plan} layout={layout.id} />;
}

interface ViewProps {
  readonly row: StandRow;
  readonly plan: Plan;
  readonly layout: LayoutId;
}

export function StandInspectorView({ row, plan, layout }: ViewProps) {
  const { placement, type, level, band, pending, utilisation, verdict } = row;
  const { stand } = placement;
  const format = useFormat();
  const asked = (name: NumberName, force: number | null) => (
    <NumberHelp name={name} stand={stand}>
      <Quantity kind="force" value={force} />
    </NumberHelp>
  );
  return (
    <Section
      title={`Stand ${stand}`}
      actions={
        <Button
          size="compact-md"
          variant="subtle"
          leftSection={<Icon name="bin" size={16} />}
          onClick={() => attempt("stands.remove", { layout, stands: [stand] })}
        >
          Take away
        </Button>
      }
    >
      <div className={standsStyles.bandHead}>
        <VerdictMark verdict={verdict} />
        <span className={styles.figures} data-pending={pending}>
          {utilisation === null ? (type.ratedLoad === null ? "rating not known" : "") : null}
          {utilisation !== null && (
            <NumberHelp name="% of rating" stand={stand}>
              {(utilisation * 100).toFixed(0)} % of rating
            </NumberHelp>
          )}
        </span>
      </div>
      <ReactionBand
        numbers={band}
        pending={pending}
        label={`Stand ${stand}`}
        format={(force) => format(force, "force")}
      />
      <TitleBlock>
        <Entry name="As planned">
          <NumberHelp name="as planned" stand={stand}>
            <strong data-testid="inspector-level">
              <Quantity kind="force" value={band.level} />
            </strong>
          </NumberHelp>
        </Entry>
        <Entry name="Lightest to heaviest">
          {asked("lightest", band.least)} to {asked("heaviest", band.most)}
        </Entry>
        <Entry name="Whatever the floor">
          {asked("lightest, whatever the floor", band.staticsLeast)} to{" "}
          {asked("heaviest, whatever the floor", band.staticsMost)}
        </Entry>
        <Entry name="Rated">{band.rating === null ? "not known" : format(band.rating, "force")}</Entry>
        <Entry name="Leg frames">
          {level?.legFrames ? (
            <>
              <NumberHelp name="leg frame −" stand={stand}>
                {format(level.legFrames[0], "force")}
              </NumberHelp>{" "}
              and{" "}
              <NumberHelp name="leg frame +" stand={stand}>
                {format(level.legFrames[1], "force")}
              </NumberHelp>
            </>
          ) : (
            "–"
          )}
        </Entry>
        <Entry name={level?.gap ? "Gap" : "Press-down"}>
          {level?.gap ? (
            <Quantity kind="length" value={level.gap} />
          ) : (
            <NumberHelp name="press-down" stand={stand}>
              <Quantity kind="length" value={level?.settlement ?? null} />
            </NumberHelp>
          )}
        </Entry>
      </TitleBlock>
      {level?.estimated && (
        <p className={styles.quiet}>
          Estimated: the stiffness of this stand is not known, so it is taken from its rating.
        </p>
      )}
      <Disclosure summary="Reserve, feet and pressure">
        <Suspense>
          <StandFacts stand={stand} />
        </Suspense>
      </Disclosure>
      <PlacementFields row={row} plan={plan} layout={layout} />
      <Disclosure summary={type.name} aside={materialWords[type.top.material]}>
        <StandPicture type={type} height={placement.height} />
      </Disclosure>
    </Section>
  );
}

function PlacementFields({ row, plan, layout }: ViewProps) {
  const { stand, s, t, angle, height, shim, levelTolerance } = row.placement;
  const on = { layout, stand };
  const free = plan.stands.filter(({ id }) => !isPlaced(plan, layout, id));
  const move = (to: { s: number; t: number }) =>
    attempt("stands.move", { layout, moves: [{ stand, ...to }], burst: `field ${stand}` });
  return (
    <>
      <div className={styles.fields}>
        <QuantityField
          label={`From ${plan.piece.ends.datum}`}
          kind="length"
          value={s}
          commit={(value) => move({ s: value, t })}
        />
        <QuantityField label="Across" kind="length" value={t} commit={(value) => move({ s, t: value })} />
        <QuantityField
          label="Angle from square"
          kind="angle"
          value={angle}
          commit={(value) => attempt("stand.turn", { ...on, angle: value, burst: `field ${stand}` })}
        />
        <QuantityField
          label="Height"
          kind="length"
          value={height}
          description={heightRange(row.type.height)}
          commit={(value) => attempt("stand.height", { ...on, height: value })}
        />
        <QuantityField
          label="Shim"
          kind="length"
          value={shim}
          step={0}
          commit={(value) => attempt("stand.shim", { ...on, shim: value })}
        />
        <QuantityField
          label="Top within ±"
          kind="length"
          value={levelTolerance ?? null}
          step={0}
          placeholder={`as the plan: ${useFormat()(criteriaOf(plan).levelTolerance, "length")}`}
          commit={(value) => attempt("stand.levelTolerance", { ...on, levelTolerance: value })}
          clear={() => attempt("stand.levelTolerance", { ...on, levelTolerance: null })}
        />
      </div>
      <div className={styles.actions}>
        {shim !== 0 && (
          <Button size="compact-md" variant="default" onClick={() => attempt("stand.shim", { ...on, shim: 0 })}>
            Take the shim out
          </Button>
        )}
        {angle !== 0 && (
          <Button size="compact-md" variant="default" onClick={() => attempt("stand.turn", { ...on, angle: 0 })}>
            Set square
          </Button>
        )}
        {t !== 0 && (
          <Button size="compact-md" variant="default" onClick={() => move({ s, t: 0 })}>
            Set on the middle line
          </Button>
        )}
      </div>
      {free.length > 0 && (
        <ChoiceField
          label="Put another stand here"
          value=""
          choices={[
            { value: "", label: "choose a free stand" },
            ...free.map(({ id, type }) => ({
              value: id as string,
              label: `${id}, ${plan.standTypes.find((one) => one.id === type)?.name ?? type}`,
            })),
          ]}
          choose={(by) => {
            if (by === "") return;
            attempt("stand.swap", { ...on, by: by as StandId });
            theEditor().select({ kind: "stands", ids: [by as StandId] });
          }}
        />
      )}
    </>
  );
}

function isPlaced(plan: Plan, layout: LayoutId, stand: StandId): boolean {
  return plan.layouts.some(({ id, placements }) => id === layout && placements.some((one) => one.stand === stand));
}

function heightRange({ min, max, increment }: { min: number; max: number; increment: number }) {
  if (min === max) return "fixed";
  return <HeightRange min={min} max={max} increment={increment} />;
}

function HeightRange({ min, max, increment }: { min: number; max: number; increment: number }) {
  const format = useFormat();
  const range = `${format(min, "length")} to ${format(max, "length")}`;
  return <>{increment === 0 ? range : `${range} by ${format(increment, "length")}`}</>;
}
