/** Up to three layouts side by side, at one scale and in the same step, with what differs under them. */

import { type CSSProperties, type ReactNode, useEffect, useLayoutEffect, useRef, useState } from "react";
import type { Layout, LayoutId, Plan, StandId, Step } from "../../plan";
import { stepInView } from "../../store";
import { CheckField, Dialog, useFormat, VerdictMark } from "../../ui";
import { useCalm, usePlan } from "../connect";
import styles from "../panels.module.css";
import { type ComparedLayout, compared, mostCompared, standsOf } from "./compare";
import { isLong, LayoutPicture } from "./LayoutPicture";
import stepsStyles from "./steps.module.css";

export function CompareDialog({ opened, onClose }: { readonly opened: boolean; readonly onClose: () => void }) {
  return (
    <Dialog opened={opened} onClose={onClose} title="Layouts side by side" whole>
      {opened && <Comparison />}
    </Dialog>
  );
}

function Comparison() {
  const plan = usePlan();
  const step = useCalm(stepInView);
  const [chosen, setChosen] = useState<readonly LayoutId[]>(() => startWith(plan.layouts, step));
  const columns = useCompared(plan, step, chosen);
  return (
    <>
      <p className={styles.quiet}>
        In the step {step.name}: as if it stood on each of them, at one scale. Choose up to {mostCompared}.
      </p>
      <div className={styles.actions}>
        {plan.layouts.map(({ id, name }) => (
          <CheckField
            key={id}
            label={name}
            value={chosen.includes(id)}
            disabled={!chosen.includes(id) && chosen.length >= mostCompared}
            choose={(on) => setChosen(on ? [...chosen, id] : chosen.filter((one) => one !== id))}
          />
        ))}
      </div>
      <ComparisonView plan={plan} columns={columns} />
    </>
  );
}

/** The step's own layout first, then the others in order. */
function startWith(layouts: readonly Layout[], step: Step): readonly LayoutId[] {
  const others = layouts.map(({ id }) => id).filter((id) => id !== step.layout);
  return [step.layout, ...others].slice(0, mostCompared);
}

/** The chosen layouts as they are computed, one between two frames. */
function useCompared(plan: Plan, step: Step, chosen: readonly LayoutId[]): readonly ComparedLayout[] {
  const [columns, setColumns] = useState<readonly ComparedLayout[]>([]);
  useEffect(() => {
    let stopped = false;
    const done: ComparedLayout[] = [];
    const next = () => {
      const id = chosen[done.length];
      if (stopped || id === undefined) return;
      done.push(compared(plan, step, id));
      setColumns([...done]);
      setTimeout(next);
    };
    setColumns([]);
    setTimeout(next);
    return () => {
      stopped = true;
    };
  }, [plan, step, chosen]);
  return columns;
}

export function ComparisonView({
  plan,
  columns,
}: {
  readonly plan: Plan;
  readonly columns: readonly ComparedLayout[];
}) {
  const format = useFormat();
  const percent = (value: number) => `${(value * 100).toFixed(0)} %`;
  if (columns.length === 0) return <p className={styles.quiet}>Choose a layout.</p>;
  const measures: readonly { readonly name: string; readonly of: (column: ComparedLayout) => ReactNode }[] = [
    { name: "Verdict", of: ({ verdict }) => <VerdictMark verdict={verdict} /> },
    {
      name: "Governing stand",
      of: ({ governing }) =>
        governing === null ? "no rating" : `${governing.stand}, ${percent(governing.utilisation)} of rating`,
    },
    {
      name: "Heaviest",
      of: ({ heaviest }) => (heaviest === null ? "–" : `${heaviest.stand}, ${format(heaviest.most, "force")}`),
    },
    { name: "Reserve against tipping", of: ({ reserve }) => (reserve === null ? "–" : reserve.toFixed(2)) },
  ];
  return (
    <>
      <Pictures plan={plan} columns={columns} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
      <section className={stepsStyles.compareScroll} aria-label="Layouts side by side: table" tabIndex={0}>
        <table className={stepsStyles.compare} style={{ "--layouts": columns.length } as CSSProperties}>
          <caption className={styles.hiddenWords}>Layouts side by side</caption>
          <thead>
            <tr>
              <td />
              {columns.map(({ layout }) => (
                <th key={layout.id} scope="col">
                  {layout.name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {measures.map(({ name, of }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {columns.map((column) => (
                  <td key={column.layout.id}>{of(column)}</td>
                ))}
              </tr>
            ))}
            {standsOf(columns).map((stand) => (
              <tr key={stand} data-same={standsAlike(columns, stand)}>
                <th scope="row">{stand}</th>
                {columns.map((column) => (
                  <td key={column.layout.id}>
                    <StandCell column={column} stand={stand} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

/** The layouts from above, at one scale, as large as the window allows. */
function Pictures({ plan, columns }: { readonly plan: Plan; readonly columns: readonly ComparedLayout[] }) {
  const format = useFormat();
  const holder = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = holder.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    setWidth(element.clientWidth);
    return () => observer.disconnect();
  }, []);
  const abreast = isLong(plan) || width < narrow ? 1 : columns.length;
  const each = Math.floor((width - pictureGap * (abreast - 1)) / abreast);
  return (
    <div
      ref={holder}
      className={stepsStyles.pictures}
      style={{ gridTemplateColumns: `repeat(${abreast}, minmax(0, 1fr))`, columnGap: pictureGap }}
    >
      {width > 0 &&
        columns.map(({ layout, rows, verdict, governing }) => (
          <figure key={layout.id} className={stepsStyles.picture}>
            <figcaption>
              <strong>{layout.name}</strong> <VerdictMark verdict={verdict} />
              {governing === null ? null : (
                <span className={stepsStyles.governs}>
                  {governing.stand} governs, {(governing.utilisation * 100).toFixed(0)} % of rating
                </span>
              )}
            </figcaption>
            <LayoutPicture
              plan={plan}
              layout={layout}
              rows={rows}
              governing={governing?.stand ?? null}
              width={each}
              height={(window.innerHeight - headHeight) / Math.ceil(columns.length / abreast) - captionHeight}
              words={({ band }) => (band.level === null ? "–" : format(band.level, "force"))}
            />
          </figure>
        ))}
    </div>
  );
}

/** Under this width pictures stand one under the other, px; and the room between two. */
const narrow = 700;
const pictureGap = 24;

/** What stands over the pictures, and over each of them, px: all of them are to be seen at once. */
const headHeight = 110;
const captionHeight = 40;

function StandCell({ column, stand }: { readonly column: ComparedLayout; readonly stand: StandId }) {
  const format = useFormat();
  const row = column.rows.find(({ placement }) => placement.stand === stand);
  if (row === undefined) return <span className={styles.quiet}>not used</span>;
  return (
    <span className={styles.figures}>
      at {format(row.placement.s, "length")}: {format(row.band.level, "force")}
      {row.band.most === null ? "" : `, at most ${format(row.band.most, "force")}`}
    </span>
  );
}

/** Whether all the layouts have the stand at one place with one load: such rows stand back. */
function standsAlike(columns: readonly ComparedLayout[], stand: StandId): boolean {
  const texts = columns.map(({ rows }) => {
    const row = rows.find(({ placement }) => placement.stand === stand);
    return JSON.stringify(row === undefined ? null : [row.placement, row.band.level, row.band.most]);
  });
  return texts.every((text) => text === texts[0]);
}
