/** How the piece bends and twists: rigid, or stretches with a section each, picked from the library, built up or typed. */

import { ActionIcon, Button } from "@mantine/core";
import { lazy, Suspense, useState } from "react";
import type { Piece } from "../../plan";
import { edits, theEditor } from "../../store";
import { Icon, QuantityField, useFormat } from "../../ui";
import { attempt } from "../connect";
import { HelpFor } from "../help/HelpFor";
import styles from "../panels.module.css";
import { counted } from "../words";
import { sectionMass } from "./newMass";
import type { PickedSection, Weighing } from "./SectionPicker";
import { makeUpOf, mergeAway, type Stretch, splitAt, stretchesOf, withSection } from "./stretches";

/** The tables of sections come with it, so it is loaded when it is first opened. */
const SectionPicker = lazy(() => import("./SectionPicker"));

/** What the piece counts as, in a word or two. */
export function stiffnessText({ stiffness }: Pick<Piece, "stiffness">): string {
  return stiffness === "rigid" ? "rigid" : counted(stiffness.length, "stretch", "stretches");
}

export function StiffnessEditor({ piece }: { readonly piece: Piece }) {
  const stretches = stretchesOf(piece);
  const [picking, setPicking] = useState<number | null>(null);
  const commit = (after: readonly Stretch[], label: string) =>
    attempt("piece.change", { change: makeUpOf(after), label });
  const middle = stretches[0]!;
  const [cut, setCut] = useState((middle.from + middle.to) / 2);
  return (
    <>
      <div className={styles.actions}>
        <p className={styles.quiet}>
          {piece.stiffness === "rigid"
            ? "The piece counts as rigid until a section is picked."
            : "It bends and twists as these stretches do."}
        </p>
        <HelpFor entry="stiffness" />
      </div>
      {stretches.map((stretch, index) => (
        <StretchFields
          key={stretch.from}
          stretch={stretch}
          name={stretches.length === 1 ? "the piece" : `stretch ${index + 1}`}
          pick={() => setPicking(index)}
          commit={(after) =>
            commit(
              stretches.map((old, at) => (at === index ? after : old)),
              "Change the stiffness",
            )
          }
          remove={stretches.length === 1 ? null : () => commit(mergeAway(stretches, index), "Remove a stretch")}
        />
      ))}
      {picking !== null && (
        <Suspense fallback={<p className={styles.quiet}>Getting the tables of sections…</p>}>
          <SectionPicker
            masses={piece.masses}
            close={() => setPicking(null)}
            pick={(section, weighing) => {
              applySection(piece, picking, section, weighing);
              setPicking(null);
            }}
          />
        </Suspense>
      )}
      {piece.stiffness !== "rigid" && (
        <>
          <div className={styles.fields}>
            <QuantityField
              label="Section changes at"
              kind="length"
              value={cut}
              commit={(s) => {
                setCut(s);
                return null;
              }}
            />
          </div>
          <div className={styles.actions}>
            <Button
              size="compact-md"
              variant="default"
              onClick={() => commit(splitAt(stretches, cut), "Add a stretch of another section")}
            >
              Another section from there
            </Button>
            <Button
              size="compact-md"
              variant="default"
              onClick={() =>
                attempt("piece.change", { change: { stiffness: "rigid" }, label: "Count the piece as rigid" })
              }
            >
              Count it as rigid
            </Button>
          </div>
        </>
      )}
    </>
  );
}

/** One history entry: the section's stiffness and strength, and its weight where that is wanted. */
function applySection(piece: Piece, index: number, section: PickedSection, weighing: Weighing): void {
  const stretches = stretchesOf(piece);
  const stretch = stretches[index];
  if (stretch === undefined) return;
  const change = makeUpOf(withSection(stretches, index, section.plan));
  const weighed = { name: section.name, massPerLength: section.plan.massPerLength, basis: section.basis };
  theEditor().runAll(`Pick ${section.name}`, (document) => {
    const bent = edits["piece.change"].run(document, { change });
    if (weighing.kind === "leave") return bent;
    const freed = weighing.kind === "replace" ? edits["mass.remove"].run(bent, { mass: weighing.mass }) : bent;
    return edits["mass.add"].run(freed, { mass: sectionMass(freed.piece.masses, weighed, stretch, piece.depth) });
  });
}

interface StretchProps {
  readonly stretch: Stretch;
  readonly name: string;
  readonly pick: () => void;
  readonly commit: (stretch: Stretch) => string | null;
  readonly remove: (() => void) | null;
}

function StretchFields({ stretch, name, pick, commit, remove }: StretchProps) {
  const format = useFormat();
  const { stiffness, strength } = stretch;
  const typed = stiffness ?? { EI: 1e8, kGA: null, GJ: null };
  const bend = (keys: Partial<typeof typed>) => commit({ ...stretch, stiffness: { ...typed, ...keys } });
  return (
    <fieldset className={styles.ask}>
      <legend>
        {format(stretch.from, "length")} to {format(stretch.to, "length")}
        {strength?.depth === undefined ? "" : `, ${format(strength.depth, "length")} deep`}
      </legend>
      <div className={styles.fields}>
        <QuantityField
          label="Bending stiffness EI"
          kind="bendingStiffness"
          placeholder="rigid"
          step={0}
          value={stiffness?.EI ?? null}
          commit={(EI) => bend({ EI })}
        />
        <QuantityField
          label="Shear stiffness"
          kind="force"
          placeholder="rigid"
          step={0}
          value={stiffness?.kGA ?? null}
          disabled={stiffness === null}
          commit={(kGA) => bend({ kGA })}
          clear={() => bend({ kGA: null })}
        />
        <QuantityField
          label="Torsional stiffness GJ"
          kind="bendingStiffness"
          placeholder="rigid"
          step={0}
          value={stiffness?.GJ ?? null}
          disabled={stiffness === null}
          commit={(GJ) => bend({ GJ })}
          clear={() => bend({ GJ: null })}
        />
      </div>
      <div className={styles.actions}>
        <Button size="compact-md" variant="default" onClick={pick}>
          Pick a section for {name}
        </Button>
        {remove !== null && (
          <ActionIcon variant="subtle" aria-label={`Remove ${name}`} title={`Remove ${name}`} onClick={remove}>
            <Icon name="bin" />
          </ActionIcon>
        )}
      </div>
    </fieldset>
  );
}
