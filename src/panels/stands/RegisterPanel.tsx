/** The plan's stands and stand types: what there is to stand on, and putting it under the piece. */

import { ActionIcon, Button } from "@mantine/core";
import { useState } from "react";
import { genericStands } from "../../library";
import type { LayoutId, Plan, Stand, StandDocument, StandId, StandTypeDocument, StandTypeId } from "../../plan";
import { freeId, layoutInView, nextMark, theEditor } from "../../store";
import {
  ChoiceField,
  type Column,
  DataTable,
  Dialog,
  Icon,
  QuantityField,
  Section,
  TextField,
  useDisplay,
  useFormat,
} from "../../ui";
import { attempt, useCalm, usePlan } from "../connect";
import styles from "../panels.module.css";
import { conditionChoices } from "../words";
import { freePosition } from "./freePosition";
import { StandPicture } from "./StandPicture";
import { StandTypeEditor } from "./StandTypeEditor";
import standsStyles from "./stands.module.css";
import { useCarry } from "./useCarry";
import { wholeType } from "./wholeType";

export function RegisterPanel() {
  const plan = usePlan();
  const layout = useCalm(layoutInView).id;
  const [editing, setEditing] = useState<StandTypeId | null>(null);
  const [choosing, setChoosing] = useState(false);
  return (
    <>
      <Section title="Stands of this plan">
        <StandsList plan={plan} layout={layout} />
      </Section>
      <Section
        title="Stand types"
        actions={
          <Button
            size="compact-md"
            variant="default"
            leftSection={<Icon name="add" size={16} />}
            onClick={() => setChoosing(true)}
          >
            Add a type
          </Button>
        }
      >
        <TypesList plan={plan} layout={layout} edit={setEditing} />
      </Section>
      <Dialog opened={editing !== null} onClose={() => setEditing(null)} title="Stand type">
        {editing !== null && <StandTypeEditor type={editing} />}
      </Dialog>
      <Dialog opened={choosing} onClose={() => setChoosing(false)} title="A stand to start from">
        <GenericChoice
          choose={(type) => {
            setChoosing(false);
            setEditing(addType(plan, type));
          }}
        />
      </Dialog>
    </>
  );
}

/** Adds a stand type under a free id, with one stand of it. */
function addType(plan: Plan, type: StandTypeDocument): StandTypeId {
  const id = freeId(plan.standTypes, type.id) as StandTypeId;
  attempt("type.add", { type: { ...type, id } });
  return id;
}

function StandsList({ plan, layout }: { readonly plan: Plan; readonly layout: LayoutId }) {
  const placed = new Set(plan.layouts.find(({ id }) => id === layout)?.placements.map(({ stand }) => stand));
  const columns: readonly Column<Stand>[] = [
    { key: "id", heading: "Stand", cell: ({ id }) => id },
    {
      key: "type",
      heading: "Type",
      cell: (stand) => (
        <ChoiceField
          bare
          label={`Type of ${stand.id}`}
          value={stand.type as string}
          choices={plan.standTypes.map(({ id, name }) => ({ value: id as string, label: name }))}
          choose={(type) => attempt("register.change", { stand: stand.id, change: { type: type as StandTypeId } })}
        />
      ),
    },
    {
      key: "condition",
      heading: "Condition",
      cell: (stand) => (
        <ChoiceField
          bare
          label={`Condition of ${stand.id}`}
          value={stand.condition}
          choices={conditionChoices}
          choose={(condition) => attempt("register.change", { stand: stand.id, change: { condition } })}
        />
      ),
    },
    {
      key: "inspected",
      heading: "Last inspected",
      cell: (stand) => (
        <TextField
          bare
          label={`${stand.id}, last inspected`}
          placeholder="yyyy-mm-dd"
          value={stand.lastInspected ?? ""}
          commit={(text) =>
            attempt("register.change", { stand: stand.id, change: { lastInspected: text === "" ? null : text } })
          }
        />
      ),
    },
    {
      key: "offset",
      heading: "Higher than said by",
      cell: (stand) => (
        <QuantityField
          bare
          label={`${stand.id}, higher than said by`}
          kind="length"
          step={0}
          value={stand.heightOffset}
          commit={(heightOffset) => attempt("register.change", { stand: stand.id, change: { heightOffset } })}
        />
      ),
    },
    {
      key: "place",
      heading: <span className={styles.hiddenWords}>Place it</span>,
      cell: (stand) =>
        placed.has(stand.id) ? (
          <Button
            size="compact-md"
            variant="subtle"
            onClick={() => theEditor().select({ kind: "stands", ids: [stand.id] })}
          >
            Show
          </Button>
        ) : (
          <PlaceButton plan={plan} layout={layout} stand={stand} />
        ),
    },
    {
      key: "remove",
      heading: <span className={styles.hiddenWords}>Remove from the plan</span>,
      cell: (stand) => (
        <ActionIcon
          variant="subtle"
          aria-label={`Remove ${stand.id} from the plan`}
          onClick={() => attempt("register.remove", { stand: stand.id })}
        >
          <Icon name="bin" />
        </ActionIcon>
      ),
    },
  ];
  return (
    <>
      <DataTable
        caption="Stands of this plan"
        columns={columns}
        rows={plan.stands}
        rowKey={({ id }) => id}
        rowHeading="id"
        empty="No stands yet. Add a type first."
      />
      <AddStands plan={plan} />
    </>
  );
}

/** Pressed it sets the stand where there is most room; dragged onto the drawings, where it is let go. */
function PlaceButton({
  plan,
  layout,
  stand,
}: {
  readonly plan: Plan;
  readonly layout: LayoutId;
  readonly stand: Stand;
}) {
  const handle = useCarry(() => ({ stand: stand.id, made: null, height: usualHeight(plan, layout, stand.type) }));
  return (
    <Button
      size="compact-md"
      variant="default"
      title={`Press to place ${stand.id}, or drag it onto the drawings`}
      onClick={() => placeStand(plan, layout, stand.id)}
      {...handle}
    >
      Place
    </Button>
  );
}

/** The height that a stand of a type is placed at: the nearest to that of the others, m. */
function usualHeight(plan: Plan, layout: LayoutId, id: StandTypeId): number {
  const type = plan.standTypes.find((one) => one.id === id);
  const placements = plan.layouts.find((one) => one.id === layout)?.placements ?? [];
  return type === undefined ? 0 : freePosition(plan.piece, placements, type).height;
}

/** Sets a free stand where it is farthest from the others, at the height nearest to theirs. */
function placeStand(plan: Plan, layout: LayoutId, stand: StandId): void {
  const type = plan.standTypes.find(({ id }) => id === plan.stands.find((one) => one.id === stand)?.type);
  const placements = plan.layouts.find(({ id }) => id === layout)?.placements ?? [];
  if (type === undefined) return;
  attempt("stand.place", {
    layout,
    placement: { stand, ...freePosition(plan.piece, placements, type), angle: 0, shim: 0 },
  });
  theEditor().select({ kind: "stands", ids: [stand] });
}

function AddStands({ plan }: { readonly plan: Plan }) {
  const last = plan.standTypes.at(-1);
  const [chosen, setChosen] = useState<string>("");
  const type = plan.standTypes.find(({ id }) => id === chosen) ?? last;
  if (type === undefined) return null;
  const add = (count: number) => {
    const stands: StandDocument[] = [];
    for (let index = 0; index < count; index += 1)
      stands.push({
        id: nextMark([...plan.stands, ...stands], type) as StandId,
        type: type.id,
        condition: "in-service",
        lastInspected: null,
      });
    attempt("register.add", { stands });
  };
  return (
    <div className={styles.actions}>
      <ChoiceField
        bare
        label="Type of the stands to add"
        value={type.id as string}
        choices={plan.standTypes.map(({ id, name }) => ({ value: id as string, label: name }))}
        choose={setChosen}
      />
      <Button size="compact-md" variant="default" onClick={() => add(1)}>
        Add one
      </Button>
      <Button size="compact-md" variant="default" onClick={() => add(4)}>
        Add four
      </Button>
    </div>
  );
}

interface TypesProps {
  readonly plan: Plan;
  readonly layout: LayoutId;
  readonly edit: (type: StandTypeId) => void;
}

function TypesList({ plan, layout, edit }: TypesProps) {
  if (plan.standTypes.length === 0) return <p className={styles.quiet}>No stand types yet.</p>;
  return (
    <>
      <p className={styles.quiet}>Drag a type onto the drawings to set a new stand of it there.</p>
      <ul className={standsStyles.typeList}>
        {plan.standTypes.map((type) => (
          <TypeItem key={type.id} plan={plan} layout={layout} type={type} edit={edit} />
        ))}
      </ul>
    </>
  );
}

/** Its picture is what a finger drags: the words beside it scroll the list. */
function TypeItem({ plan, layout, type, edit }: TypesProps & { readonly type: Plan["standTypes"][number] }) {
  const format = useFormat();
  const { style, ...handle } = useCarry(() => {
    const stand = nextMark(plan.stands, type) as StandId;
    const made: StandDocument = { id: stand, type: type.id, condition: "in-service", lastInspected: null };
    return { stand, made, height: usualHeight(plan, layout, type.id) };
  });
  return (
    <li>
      <button type="button" className={standsStyles.typeButton} onClick={() => edit(type.id)} {...handle}>
        <span style={style}>
          <StandPicture type={type} height={type.height.min} small />
        </span>
        <span className={standsStyles.typeWords}>
          <strong>{type.name}</strong>
          <span className={styles.quiet}>
            {type.ratedLoad === null
              ? "rating not known: type what the plate says"
              : `rated ${format(type.ratedLoad, "force")} a stand`}
          </span>
        </span>
      </button>
      <ActionIcon
        variant="subtle"
        aria-label={`Remove type ${type.name} with its stands`}
        onClick={() => attempt("type.remove", { type: type.id })}
      >
        <Icon name="bin" />
      </ActionIcon>
    </li>
  );
}

/** The generic stands, by picture. */
export function GenericChoice({ choose }: { readonly choose: (type: StandTypeDocument) => void }) {
  const { units } = useDisplay();
  return (
    <>
      <p className={styles.quiet}>Usual sizes, without a rating. Measure yours, and type what its plate says.</p>
      <ul className={standsStyles.pictureList}>
        {genericStands.map(({ type, typeIn, height }) => (
          <li key={type.id}>
            <button type="button" className={standsStyles.pictureButton} onClick={() => choose(typeIn(units))}>
              <StandPicture type={wholeType(type)} height={height} small />
              <span>{typeIn(units).name}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
