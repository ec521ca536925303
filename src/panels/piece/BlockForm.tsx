/** A weight from sizes and a density: plates, blocks, gussets. */

import { Button } from "@mantine/core";
import { useState } from "react";
import { densities } from "../../library";
import { type MassId, type Piece, pieceLength } from "../../plan";
import { freeId } from "../../store";
import { ChoiceField, QuantityField, TextField, useFormat } from "../../ui";
import { attempt } from "../connect";
import styles from "../panels.module.css";
import { type Block, blockMass } from "./newMass";

export function BlockForm({ piece, done }: { readonly piece: Piece; readonly done: () => void }) {
  const format = useFormat();
  const [block, setBlock] = useState<Block>({
    name: "Plate",
    from: 0,
    to: pieceLength(piece),
    t: 0,
    width: 0.2,
    height: 0.02,
    base: 0,
    density: densities[0]!.density,
  });
  const [refusal, setRefusal] = useState<string | null>(null);
  const set = (keys: Partial<Block>) => {
    setBlock((old) => ({ ...old, ...keys }));
    return null;
  };
  const length = (key: Exclude<keyof Block, "name" | "density">, label: string) => (
    <QuantityField label={label} kind="length" value={block[key]} commit={(value) => set({ [key]: value })} />
  );
  const mass = blockMass(freeId(piece.masses, "block") as MassId, block);
  return (
    <fieldset className={styles.ask}>
      <legend>A block or plate, from its size</legend>
      <div className={styles.fields}>
        <TextField label="Name" required value={block.name} commit={(name) => set({ name })} />
        <ChoiceField
          label="Material"
          value={densities.find(({ density }) => density === block.density)?.name ?? ""}
          choices={[
            ...(densities.some(({ density }) => density === block.density)
              ? []
              : [{ value: "", label: "density typed" }]),
            ...densities.map(({ name }) => ({ value: name, label: name })),
          ]}
          choose={(name) => set({ density: densities.find((one) => one.name === name)?.density ?? block.density })}
        />
        <QuantityField label="Density" kind="density" value={block.density} commit={(density) => set({ density })} />
        {length("from", `From, off ${piece.ends.datum}`)}
        {length("to", `To, off ${piece.ends.datum}`)}
        {length("width", "Width, across")}
        {length("height", "Height")}
        {length("t", "Its middle, across")}
        {length("base", "Its underside, up")}
      </div>
      <p className={styles.quiet} aria-live="polite">
        {format(mass.massPerLength[0] * (block.to - block.from), "mass")}, calculated, ± 10 %
      </p>
      {refusal !== null && <p className={styles.refusal}>{refusal}</p>}
      <div className={styles.actions}>
        <Button
          onClick={() => {
            const sentence = attempt("mass.add", { mass });
            setRefusal(sentence);
            if (sentence === null) done();
          }}
        >
          Add it
        </Button>
        <Button variant="subtle" onClick={done}>
          Leave it
        </Button>
      </div>
    </fieldset>
  );
}
