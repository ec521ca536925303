/** The weights that make up the piece: points, lines and blocks, each with how it is known and the ± that goes with it. */

import { ActionIcon } from "@mantine/core";
import { useState } from "react";
import { uncertaintyOf } from "../../library";
import type { Mass, MassDocument, MassId, Piece, WeightBasis } from "../../plan";
import { freeId, theEditor } from "../../store";
import { ChoiceField, Disclosure, Icon, QuantityField, TextField, useFormat } from "../../ui";
import { attempt, useCalm, usePlan } from "../connect";
import styles from "../panels.module.css";
import { basisChoices } from "../words";
import { BlockForm } from "./BlockForm";
import { newLineMass, newPointMass } from "./newMass";
import { AddButton } from "./OutlineEditor";
import { massOf } from "./weight";

export function MassesList() {
  const { piece } = usePlan();
  const selected = useCalm((state) => (state.selection.kind === "mass" ? state.selection.id : null));
  const format = useFormat();
  const [blockOpen, setBlockOpen] = useState(false);
  const add = (kind: "point" | "line") => {
    const id = freeId(piece.masses, kind) as MassId;
    const mass = kind === "point" ? newPointMass(id, piece) : newLineMass(id, piece);
    if (attempt("mass.add", { mass }) === null) theEditor().select({ kind: "mass", id });
  };
  return (
    <div className={styles.masses}>
      {piece.masses.map((mass) => (
        <Disclosure
          key={mass.id}
          open={mass.id === selected}
          summary={mass.name}
          aside={`${format(massOf(mass), "mass")} ± ${format(mass.uncertainty, "fraction")}`}
        >
          <MassEditor mass={mass} piece={piece} />
        </Disclosure>
      ))}
      <div className={styles.actions}>
        <AddButton onClick={() => add("point")}>At a point</AddButton>
        <AddButton onClick={() => add("line")}>Along a line</AddButton>
        <AddButton onClick={() => setBlockOpen(true)}>A block or plate, from its size</AddButton>
      </div>
      {blockOpen && <BlockForm piece={piece} done={() => setBlockOpen(false)} />}
    </div>
  );
}

export function MassEditor({ mass, piece }: { readonly mass: Mass; readonly piece: Piece }) {
  const change = (keys: Partial<MassDocument>) =>
    attempt("mass.change", { mass: { ...mass, ...keys } as MassDocument, burst: `field ${mass.id}` });
  return (
    <div className={styles.massEditor}>
      <div className={styles.fields}>
        <TextField label="Name" required value={mass.name} commit={(name) => change({ name })} />
        <ChoiceField
          label="Known by"
          value={mass.basis ?? "none"}
          choices={basisChoices}
          choose={(basis) =>
            change(basis === "none" ? { basis: null } : { basis, uncertainty: uncertaintyOf[basis as WeightBasis] })
          }
        />
        <QuantityField
          label="Within ±"
          kind="fraction"
          value={mass.uncertainty}
          commit={(uncertainty) => change({ uncertainty })}
        />
      </div>
      {mass.kind === "point" ? (
        <PointFields mass={mass} datum={piece.ends.datum} change={change} />
      ) : (
        <LineFields mass={mass} datum={piece.ends.datum} change={change} />
      )}
      <div className={styles.fields}>
        <QuantityField label="Across" kind="length" value={mass.t} commit={(t) => change({ t })} />
        <QuantityField label="Up from the datum plane" kind="length" value={mass.z} commit={(z) => change({ z })} />
      </div>
      <div className={styles.actions}>
        <ActionIcon
          variant="subtle"
          aria-label={`Remove ${mass.name}`}
          title={`Remove ${mass.name}`}
          onClick={() => attempt("mass.remove", { mass: mass.id })}
        >
          <Icon name="bin" />
        </ActionIcon>
      </div>
    </div>
  );
}

interface KindProps<Kind extends Mass["kind"]> {
  readonly mass: Extract<Mass, { kind: Kind }>;
  readonly datum: string;
  readonly change: (keys: Partial<MassDocument>) => string | null;
}

function PointFields({ mass, datum, change }: KindProps<"point">) {
  return (
    <div className={styles.fields}>
      <QuantityField label="Weight" kind="mass" value={mass.mass} commit={(value) => change({ mass: value })} />
      <QuantityField label={`From ${datum}`} kind="length" value={mass.s} commit={(s) => change({ s })} />
      <QuantityField
        label="Centre within ±, along"
        kind="length"
        value={mass.centreWithin.s}
        commit={(s) => change({ centreWithin: { ...mass.centreWithin, s } })}
      />
      <QuantityField
        label="Centre within ±, across"
        kind="length"
        value={mass.centreWithin.t}
        commit={(t) => change({ centreWithin: { ...mass.centreWithin, t } })}
      />
    </div>
  );
}

/** A line mass is told by its weight as a whole too: typing that keeps its slope. */
function LineFields({ mass, datum, change }: KindProps<"line">) {
  const whole = massOf(mass);
  const length = mass.to - mass.from;
  const scaled = (value: number) =>
    change({
      massPerLength:
        whole > 0
          ? [(mass.massPerLength[0] * value) / whole, (mass.massPerLength[1] * value) / whole]
          : [value / length, value / length],
    });
  return (
    <div className={styles.fields}>
      <QuantityField label="Weight as a whole" kind="mass" value={whole} commit={scaled} />
      <QuantityField label={`From, off ${datum}`} kind="length" value={mass.from} commit={(from) => change({ from })} />
      <QuantityField label={`To, off ${datum}`} kind="length" value={mass.to} commit={(to) => change({ to })} />
      <QuantityField
        label="A length of it, at its start"
        kind="massPerLength"
        value={mass.massPerLength[0]}
        commit={(start) => change({ massPerLength: [start, mass.massPerLength[1]] })}
      />
      <QuantityField
        label="A length of it, at its end"
        kind="massPerLength"
        value={mass.massPerLength[1]}
        commit={(end) => change({ massPerLength: [mass.massPerLength[0], end] })}
      />
    </div>
  );
}
