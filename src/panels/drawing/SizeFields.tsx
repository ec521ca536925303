/** Units and size of a drawing: what its numbers are, how large that makes it, and one true size that shows it. */

import { Button } from "@mantine/core";
import { useState } from "react";
import { ChoiceField, Entry, QuantityField, Section, TitleBlock, useFormat } from "../../ui";
import { compareSize } from "./arrange";
import styles from "./drawing.module.css";
import type { ImportState } from "./useImport";

const units = [
  { value: "0.001", label: "millimetres" },
  { value: "0.01", label: "centimetres" },
  { value: "1", label: "metres" },
  { value: "0.0254", label: "inches" },
  { value: "0.3048", label: "feet" },
] as const;

type Measured = "length" | "width" | "points";

export function SizeFields({ state }: { readonly state: ImportState }) {
  const { drawing, unit, size, change } = state;
  const format = useFormat();
  const said = units.find(({ value }) => Number(value) === drawing.metresAUnit)?.label;
  return (
    <Section title="Units and size">
      <div className={styles.importFields}>
        <ChoiceField
          label={said === undefined ? "The file does not say. Its numbers are" : `The file says ${said}`}
          value={unit === null ? "unknown" : String(unit)}
          choices={[
            ...(unit === null ? [{ value: "unknown", label: "choose" }] : []),
            ...units,
            ...(unit !== null && !units.some(({ value }) => Number(value) === unit)
              ? [{ value: String(unit), label: `${unit} m` }]
              : []),
          ]}
          choose={(value) => change({ unit: Number(value), rescale: 1, confirmed: false })}
        />
      </div>
      {size !== null && (
        <>
          <TitleBlock>
            <Entry name="Overall length">{format(size.length, "length")}</Entry>
            <Entry name="Overall width">{format(size.width, "length")}</Entry>
          </TitleBlock>
          <TrueSize state={state} size={size} />
        </>
      )}
    </Section>
  );
}

/** One size that the person knows. */
function TrueSize({ state, size }: { readonly state: ImportState; readonly size: NonNullable<ImportState["size"]> }) {
  const { change, confirmed, measured } = state;
  const format = useFormat();
  const [what, setWhat] = useState<Measured>("length");
  const [typed, setTyped] = useState<number | null>(null);
  const [differs, setDiffers] = useState<{ readonly drawn: number; readonly typed: number } | null>(null);
  const drawn = what === "points" ? measured : size[what];

  const compare = (size: number): string | null => {
    if (size <= 0) return "A size is more than 0.";
    if (drawn === null) return "Touch two corners in the picture first.";
    const answer = compareSize(drawn, size);
    setDiffers(answer.kind === "agrees" ? null : { drawn, typed: size });
    setTyped(size);
    change({ confirmed: answer.kind === "agrees" });
    return null;
  };
  const factor = differs === null ? 1 : differs.typed / differs.drawn;
  return (
    <>
      <div className={styles.importFields}>
        <ChoiceField
          label="A true size that you know"
          value={what}
          choices={[
            { value: "length", label: "overall length" },
            { value: "width", label: "overall width" },
            { value: "points", label: "between two corners" },
          ]}
          choose={(value) => {
            setWhat(value);
            setTyped(null);
            setDiffers(null);
            change({ measuring: value === "points", confirmed: false });
          }}
        />
        <QuantityField
          label={drawn === null ? "Touch two corners in the picture" : `Drawn as ${format(drawn, "length")}, in truth`}
          kind="length"
          value={typed}
          step={0}
          commit={compare}
        />
      </div>
      {confirmed && <p className={styles.quiet}>The size is confirmed.</p>}
      {differs !== null && (
        <div className={styles.differs} role="alert">
          <p>
            The drawing gives {format(differs.drawn, "length")}, you typed {format(differs.typed, "length")}:{" "}
            {Number(factor.toPrecision(4))} times as much. Correct the number or the units, or rescale the whole
            drawing.
          </p>
          <Button
            size="compact-md"
            variant="default"
            onClick={() => {
              setDiffers(null);
              change({ rescale: state.rescale * factor, confirmed: true });
            }}
          >
            Rescale the drawing to {format(differs.typed, "length")}
          </Button>
        </div>
      )}
    </>
  );
}
