/** The bay: outline, floor, obstacles, walkways and slab, by numbers. */

import { ActionIcon, Button } from "@mantine/core";
import type { Bay, BayDocument, Plan, Polygon, Slab, Walkway, WalkwayDocument } from "../../plan";
import { criteriaOf, pieceLength } from "../../plan";
import { type Changes, changed, layoutInView } from "../../store";
import {
  ChoiceField,
  Disclosure,
  Entry,
  Icon,
  QuantityField,
  Section,
  TextField,
  TitleBlock,
  useFormat,
} from "../../ui";
import { attempt, useCalm, usePlan } from "../connect";
import { ChangeButton, DrawButton } from "../drawing/DrawMenu";
import { NumberHelp } from "../help/NumberHelp";
import styles from "../panels.module.css";
import { AddButton, OutlineEditor, rectangle } from "../piece/OutlineEditor";
import { NamedZones } from "../piece/ZonesEditor";
import { counted } from "../words";

const axes = ["x", "y"] as const;

export function BayPanel() {
  const plan = usePlan();
  const written = useCalm((state) => state.document.bay ?? null);
  const commit = (bay: BayDocument | null, label: string) => attempt("plan.bay", { bay, label });
  const { bay } = plan;
  if (bay === null || written === null)
    return (
      <Section title="Bay">
        <p className={styles.quiet}>
          No bay yet, so nothing on the floor is checked: feet, trip zones, walkways, slab.
        </p>
        <div className={styles.actions}>
          <DrawButton kind="bay" />
          <Button
            size="compact-md"
            variant="default"
            leftSection={<Icon name="bay" size={16} />}
            onClick={() => commit(startBay(plan), "Add a bay")}
          >
            Add a bay round the piece
          </Button>
        </div>
      </Section>
    );
  return <BayFields plan={plan} bay={bay} written={written} commit={commit} />;
}

interface FieldsProps {
  readonly plan: Plan;
  readonly bay: Bay;
  /** The bay as it is written: what is left out stays left out. */
  readonly written: BayDocument;
  readonly commit: (bay: BayDocument | null, label: string) => string | null;
}

function BayFields({ plan, bay, written, commit }: FieldsProps) {
  const change = (keys: Partial<BayDocument>, label = "Change the bay") => commit({ ...written, ...keys }, label);
  const [alongX, alongY] = bay.floor.slope;
  return (
    <Section
      title="Bay"
      actions={
        <Button
          size="compact-md"
          variant="subtle"
          leftSection={<Icon name="bin" size={16} />}
          onClick={() => commit(null, "Remove the bay")}
        >
          Remove
        </Button>
      }
    >
      <div className={styles.fields}>
        <QuantityField
          label="Floor rises along x"
          kind="slope"
          value={alongX}
          commit={(value) => change({ floor: { slope: [value, alongY] } })}
        />
        <QuantityField
          label="Floor rises along y"
          kind="slope"
          value={alongY}
          commit={(value) => change({ floor: { slope: [alongX, value] } })}
        />
      </div>
      <Disclosure summary="Outline" aside={counted(bay.outline.length, "corner")}>
        <div className={styles.actions}>
          <DrawButton kind="bay" />
          <ChangeButton kind="bay" />
        </div>
        <OutlineEditor
          caption="Corners of the bay"
          axes={axes}
          polygon={bay.outline}
          commit={(outline) => change({ outline })}
        />
      </Disclosure>
      <NamedZones
        title="Obstacles and columns"
        kind="obstacle"
        zones={bay.obstacles}
        axes={axes}
        add={() =>
          change({ obstacles: [...bay.obstacles, { name: "column", polygon: startZone(bay) }] }, "Add an obstacle")
        }
        commit={(obstacles) => change({ obstacles }, "Change an obstacle")}
      />
      <NamedZones
        title="No-foot zones"
        kind="noFootZone"
        zones={bay.noFootZones}
        axes={axes}
        add={() =>
          change(
            { noFootZones: [...bay.noFootZones, { name: "trench", polygon: startZone(bay) }] },
            "Add a no-foot zone",
          )
        }
        commit={(noFootZones) => change({ noFootZones }, "Change a no-foot zone")}
      />
      <Walkways plan={plan} bay={bay} written={written.walkways ?? []} change={change} />
      <SlabFields bay={bay} change={change} />
    </Section>
  );
}

interface PartProps {
  readonly bay: Bay;
  readonly change: (keys: Partial<BayDocument>, label?: string) => string | null;
}

/** Widths by what the way is for, m. */
const walkwayUses = [
  { value: "exit", label: "exit access, 28 in (29 CFR 1910.36)", width: 0.7112 },
  { value: "machine", label: "machine walkway, 0.8 m (ISO 14122-2)", width: 0.8 },
  { value: "typed", label: "another width, typed", width: null },
] as const;

interface WalkwaysProps extends PartProps {
  readonly plan: Plan;
  readonly written: readonly WalkwayDocument[];
}

function Walkways({ plan, bay, written, change }: WalkwaysProps) {
  const standard = criteriaOf(plan).walkwayWidth;
  const commit = (walkways: readonly WalkwayDocument[], label: string) => change({ walkways }, label);
  const add = () => {
    const [least, greatest] = extent(bay.outline);
    const y = least[1] + 0.5;
    commit([...written, { name: "walkway", from: [least[0] + 0.5, y], to: [greatest[0] - 0.5, y] }], "Add a walkway");
  };
  return (
    <Section
      title="Walkways"
      level={3}
      actions={
        <>
          <DrawButton kind="walkway" />
          <AddButton onClick={add}>Add</AddButton>
        </>
      }
    >
      {bay.walkways.length === 0 && <p className={styles.quiet}>None.</p>}
      {bay.walkways.map((walkway, index) => {
        const replace = (keys: Changes<WalkwayDocument>) =>
          commit(
            written.map((old, at) => (at === index ? changed(old, keys) : old)),
            `Change ${walkway.name}`,
          );
        return (
          <Disclosure key={index} summary={walkway.name}>
            <ChangeButton kind="walkway" index={index} />
            <ClearWidth index={index} />
            <div className={styles.fields}>
              <TextField label="Name" value={walkway.name} commit={(name) => replace({ name })} />
              <ChoiceField
                label="What it is for"
                value={walkwayUses.find(({ width }) => width === (walkway.width ?? standard))?.value ?? "typed"}
                choices={walkwayUses}
                choose={(use) => {
                  const width = walkwayUses.find(({ value }) => value === use)?.width;
                  if (width != null) replace({ width });
                }}
              />
              <QuantityField
                label="Clear width needed"
                kind="length"
                value={walkway.width ?? standard}
                commit={(width) => replace({ width })}
                clear={() => replace({ width: undefined })}
              />
              {(["from", "to"] as const).flatMap((end) =>
                ([0, 1] as const).map((axis) => (
                  <QuantityField
                    key={`${end} ${axis}`}
                    label={`${end === "from" ? "From" : "To"}, ${axes[axis]}`}
                    kind="length"
                    value={walkway[end][axis]}
                    commit={(value) =>
                      replace({ [end]: axis === 0 ? [value, walkway[end][1]] : [walkway[end][0], value] })
                    }
                  />
                )),
              )}
            </div>
            <Lane walkway={walkway} index={index} replace={replace} />
            <ActionIcon
              variant="subtle"
              aria-label={`Remove ${walkway.name}`}
              title={`Remove ${walkway.name}`}
              onClick={() =>
                commit(
                  written.filter((_, at) => at !== index),
                  `Remove ${walkway.name}`,
                )
              }
            >
              <Icon name="bin" />
            </ActionIcon>
          </Disclosure>
        );
      })}
    </Section>
  );
}

/** How wide the way is in the layout in view, and how wide it were without the legs that people trip over. */
function ClearWidth({ index }: { readonly index: number }) {
  const format = useFormat();
  const floor = useCalm(
    (state) => state.answers.report.layouts.find(({ layout }) => layout === layoutInView(state).id)?.floor ?? null,
  );
  const pending = floor?.status === "pending";
  const known = floor?.status === "known" ? floor.value : pending ? floor.last : null;
  const way = known?.walkways[index];
  if (way === undefined) return null;
  return (
    <div data-pending={pending} className={styles.mayBePending}>
      <TitleBlock>
        <Entry name="Clear width">
          <NumberHelp name="clear width" walkway={index}>
            {format(way.clearWidth, "length")}
          </NumberHelp>
        </Entry>
        <Entry name="Without the legs">{format(way.withoutLegs, "length")}</Entry>
      </TitleBlock>
    </div>
  );
}

/** The painted lane: nothing of a stand may be in it, however wide the way is beside it. */
function Lane({
  walkway,
  index,
  replace,
}: {
  readonly walkway: Walkway;
  readonly index: number;
  readonly replace: (keys: Changes<WalkwayDocument>) => string | null;
}) {
  const { lane, from, to } = walkway;
  if (lane === null)
    return (
      <div className={styles.actions}>
        <DrawButton kind="lane" walkway={index} />
        <AddButton
          onClick={() =>
            replace({
              lane: rectangle(
                [Math.min(from[0], to[0]), Math.min(from[1], to[1]) - 0.4],
                [Math.max(from[0], to[0]), Math.max(from[1], to[1]) + 0.4],
              ),
            })
          }
        >
          A painted lane
        </AddButton>
      </div>
    );
  return (
    <>
      <OutlineEditor
        caption={`Corners of the lane of ${walkway.name}`}
        axes={axes}
        polygon={lane}
        commit={(after) => replace({ lane: after })}
      />
      <Button size="compact-md" variant="subtle" onClick={() => replace({ lane: null })}>
        No painted lane
      </Button>
    </>
  );
}

/** A usual shop floor to start from: 150 mm, 25 MPa, 50 MPa/m. Custom, no source; to be found out. */
const usualSlab: Slab = { thickness: 0.15, compressiveStrength: 25e6, subgradeModulus: 50e6, joints: null };

function SlabFields({ bay, change }: PartProps) {
  const format = useFormat();
  const { slab } = bay;
  const set = (keys: Partial<Slab>) => change({ slab: { ...(slab ?? usualSlab), ...keys } }, "Change the slab");
  return (
    <Disclosure summary="Slab" aside={slab === null ? "not known, not checked" : format(slab.thickness, "length")}>
      {slab === null ? (
        <AddButton onClick={() => set({})}>What the floor is made of</AddButton>
      ) : (
        <>
          <div className={styles.fields}>
            <QuantityField
              label="Thickness"
              kind="length"
              value={slab.thickness}
              commit={(thickness) => set({ thickness })}
            />
            <QuantityField
              label="Compressive strength"
              kind="pressure"
              value={slab.compressiveStrength}
              commit={(compressiveStrength) => set({ compressiveStrength })}
            />
            <QuantityField
              label="Subgrade modulus"
              kind="pressurePerLength"
              value={slab.subgradeModulus}
              commit={(subgradeModulus) => set({ subgradeModulus })}
            />
          </div>
          <p className={styles.quiet}>
            {slab.joints === null
              ? "Where its joints are is not known: edges and corners stay unknown."
              : counted(slab.joints.length, "joint")}
          </p>
          <div className={styles.actions}>
            <Button
              size="compact-md"
              variant="default"
              onClick={() => set({ joints: slab.joints === null ? [] : null })}
            >
              {slab.joints === null ? "There are no joints near" : "Joints not known"}
            </Button>
            <Button size="compact-md" variant="subtle" onClick={() => change({ slab: null }, "The slab is not known")}>
              Slab not known
            </Button>
          </div>
        </>
      )}
    </Disclosure>
  );
}

function extent(polygon: Polygon): readonly [readonly [number, number], readonly [number, number]] {
  const xs = polygon.map(([x]) => x);
  const ys = polygon.map(([, y]) => y);
  return [
    [Math.min(...xs), Math.min(...ys)],
    [Math.max(...xs), Math.max(...ys)],
  ];
}

function startZone(bay: Bay): Polygon {
  const [least] = extent(bay.outline);
  return rectangle([least[0] + 0.5, least[1] + 0.5], [least[0] + 0.9, least[1] + 0.9]);
}

/** A bay with room of 3 m round the piece where it lies, whatever its heading. */
function startBay({ piece }: Plan): BayDocument {
  const room = 3;
  const { x, y, heading } = piece.pose;
  const angle = (heading * Math.PI) / 180;
  const length = pieceLength(piece);
  const [least, greatest] = extent(
    piece.outline.map(([s, t]) => [
      x + s * Math.cos(angle) - t * Math.sin(angle),
      y + s * Math.sin(angle) + t * Math.cos(angle),
    ]),
  );
  const tidy = (value: number) => Math.round(value * 10) / 10;
  const margin = Math.max(room, length * 0.1);
  return {
    floor: { slope: [0, 0] },
    outline: rectangle(
      [tidy(least[0] - margin), tidy(least[1] - margin)],
      [tidy(greatest[0] + margin), tidy(greatest[1] + margin)],
    ),
  };
}
