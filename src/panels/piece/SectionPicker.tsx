/** A section from the library or built up from plates, with its picture and properties. Loaded when first opened. */

import { Button, SegmentedControl } from "@mantine/core";
import { useMemo, useState } from "react";
import {
  box,
  builtUpI,
  findSection,
  type Outline,
  type PlanSection,
  type Section,
  type SectionFamily,
  sectionFamilies,
  sectionNames,
  sectionSource,
  sectionToPlan,
  solid,
  steel,
  steelDensity,
  steelGrades,
} from "../../library";
import type { Mass, MassId } from "../../plan";
import { ChoiceField, Dialog, Entry, QuantityField, TextField, TitleBlock, useDisplay, useFormat } from "../../ui";
import styles from "../panels.module.css";
import pieceStyles from "./piece.module.css";
import { massOf } from "./weight";

export interface PickedSection {
  readonly name: string;
  readonly plan: PlanSection;
  /** How its weight is known. */
  readonly basis: "maker" | "calculated";
}

/** What becomes of the section's weight: added, left out, or put in the place of a weight that is there. */
export type Weighing = { readonly kind: "add" | "leave" } | { readonly kind: "replace"; readonly mass: MassId };

export interface SectionPickerProps {
  /** The weights that are there. */
  readonly masses: readonly Mass[];
  readonly close: () => void;
  readonly pick: (section: PickedSection, weighing: Weighing) => void;
}

type Kind = "standard" | "builtUp" | "box" | "solid";

const kinds: readonly { readonly value: Kind; readonly label: string }[] = [
  { value: "standard", label: "Standard" },
  { value: "builtUp", label: "I of plates" },
  { value: "box", label: "Box of plates" },
  { value: "solid", label: "Solid" },
];

export default function SectionPicker({ masses, close, pick }: SectionPickerProps) {
  const us = useDisplay().units === "us";
  const [kind, setKind] = useState<Kind>("standard");
  const [name, setName] = useState(us ? "W18×50" : "HEA300");
  const [plates, setPlates] = useState<Plates>(startPlates);
  const [grade, setGrade] = useState("");
  const [weighing, setWeighing] = useState<Weighing>(() => firstWeighing(masses));
  const [called, setCalled] = useState("");
  const format = useFormat();
  const found = useMemo(() => sectionOf(kind, name, plates), [kind, name, plates]);
  const usual = found === undefined ? "" : usualName(kind, found, format);
  const section = found && { ...found, name: called.trim() === "" ? usual : called.trim() };
  const yieldStress = steelGrades.find((one) => one.name === grade)?.yield ?? null;
  return (
    <Dialog opened onClose={close} title="Pick a section">
      <SegmentedControl
        aria-label="Kind of section"
        fullWidth
        value={kind}
        onChange={(value) => {
          setKind(value as Kind);
          setCalled("");
        }}
        data={kinds.map((one) => ({ ...one }))}
      />
      {kind === "standard" ? (
        <StandardFields name={name} setName={setName} us={us} />
      ) : (
        <>
          <TextField
            label="What it is called"
            value={called === "" ? usual : called}
            commit={(typed) => {
              setCalled(typed === usual ? "" : typed);
              return null;
            }}
          />
          <PlateFields kind={kind} plates={plates} set={(change) => setPlates((old) => ({ ...old, ...change }))} />
        </>
      )}
      {section === undefined ? (
        <p className={styles.quiet}>No section of that name.</p>
      ) : (
        <SectionProperties section={section} />
      )}
      <div className={styles.fields} data-columns="short-long">
        <ChoiceField
          label="Steel"
          value={grade}
          choices={[
            { value: "", label: "not known" },
            ...steelGrades.map((one) => ({ value: one.name, label: one.name })),
          ]}
          choose={setGrade}
        />
        <WeighingField masses={masses} value={weighing} choose={setWeighing} />
      </div>
      <div className={styles.actions}>
        <Button
          disabled={section === undefined}
          onClick={() => {
            if (section === undefined) return;
            const plan = sectionToPlan(section, yieldStress, us ? steel.aisc : steel.eurocode);
            pick({ name: section.name, plan, basis: kind === "standard" ? "maker" : "calculated" }, weighing);
          }}
        >
          Pick {section?.name ?? "it"}
        </Button>
        <Button variant="subtle" onClick={close}>
          Leave it
        </Button>
      </div>
    </Dialog>
  );
}

/** A standard section has its name; one of plates is called by its kind and its depth. */
function usualName(kind: Kind, { name, dimensions }: Section, format: ReturnType<typeof useFormat>): string {
  return kind === "standard" ? name : `${name}, ${format(dimensions.depth ?? null, "length")} deep`;
}

/** A guess that stands alone is what a new plan took for the weight: the section's comes in its place. */
function firstWeighing(masses: readonly Mass[]): Weighing {
  const [only] = masses;
  return masses.length === 1 && only?.basis === "guess" ? { kind: "replace", mass: only.id } : { kind: "add" };
}

interface WeighingProps {
  readonly masses: readonly Mass[];
  readonly value: Weighing;
  readonly choose: (weighing: Weighing) => void;
}

function WeighingField({ masses, value, choose }: WeighingProps) {
  const format = useFormat();
  const choices: readonly { readonly word: string; readonly weighing: Weighing }[] = [
    { word: "is added", weighing: { kind: "add" } },
    ...masses.map((mass) => ({
      word: `takes the place of ${mass.name}, ${format(massOf(mass), "mass")}`,
      weighing: { kind: "replace", mass: mass.id } as const,
    })),
    { word: "is in the plan already", weighing: { kind: "leave" } },
  ];
  const keyOf = (one: Weighing) => (one.kind === "replace" ? `replace ${one.mass}` : one.kind);
  return (
    <ChoiceField
      label="Its weight"
      value={keyOf(value)}
      choices={choices.map(({ word, weighing }) => ({ value: keyOf(weighing), label: word }))}
      choose={(key) => choose(choices.find(({ weighing }) => keyOf(weighing) === key)?.weighing ?? value)}
    />
  );
}

function StandardFields({
  name,
  setName,
  us,
}: {
  readonly name: string;
  readonly setName: (name: string) => void;
  readonly us: boolean;
}) {
  const [family, setFamily] = useState<SectionFamily>(us ? "W" : "HEA");
  const names = sectionNames(family);
  return (
    <>
      <div className={styles.fields}>
        <ChoiceField
          label="Family"
          value={family}
          choices={sectionFamilies.map((value) => ({ value, label: value }))}
          choose={(chosen) => {
            setFamily(chosen);
            setName(sectionNames(chosen)[0] ?? "");
          }}
        />
        <ChoiceField
          label="Section"
          value={findSection(name)?.name ?? ""}
          choices={names.map((value) => ({ value, label: value }))}
          choose={setName}
        />
      </div>
      <p className={styles.quiet}>
        {names.length} sections; {sectionSource(family)}.
      </p>
    </>
  );
}

/** Sizes of plates, m; what a kind does not use it leaves alone. */
interface Plates {
  readonly topWidth: number;
  readonly topThickness: number;
  readonly bottomWidth: number;
  readonly bottomThickness: number;
  readonly webHeight: number;
  readonly webThickness: number;
  readonly between: number;
  readonly weld: number;
  readonly width: number;
  readonly depth: number;
}

const startPlates: Plates = {
  topWidth: 0.3,
  topThickness: 0.02,
  bottomWidth: 0.3,
  bottomThickness: 0.02,
  webHeight: 0.6,
  webThickness: 0.01,
  between: 0.2,
  weld: 0.006,
  width: 0.1,
  depth: 0.2,
};

function sectionOf(kind: Kind, name: string, plates: Plates): Section | undefined {
  const top = { width: plates.topWidth, thickness: plates.topThickness };
  const bottom = { width: plates.bottomWidth, thickness: plates.bottomThickness };
  const web = { width: plates.webHeight, thickness: plates.webThickness };
  switch (kind) {
    case "standard":
      return findSection(name);
    case "builtUp":
      return builtUpI("I of plates", { top, bottom, web, weld: plates.weld });
    case "box":
      return box("Box of plates", { top, bottom, web, between: plates.between });
    case "solid":
      return solid("Solid", plates.width, plates.depth);
    default:
      return kind satisfies never;
  }
}

const plateFields: Readonly<Record<Exclude<Kind, "standard">, readonly (keyof Plates)[]>> = {
  builtUp: ["topWidth", "topThickness", "bottomWidth", "bottomThickness", "webHeight", "webThickness", "weld"],
  box: ["topWidth", "topThickness", "bottomWidth", "bottomThickness", "webHeight", "webThickness", "between"],
  solid: ["width", "depth"],
};

const plateWords: Readonly<Record<keyof Plates, string>> = {
  topWidth: "Upper flange, width",
  topThickness: "Upper flange, thickness",
  bottomWidth: "Lower flange, width",
  bottomThickness: "Lower flange, thickness",
  webHeight: "Web, clear height",
  webThickness: "Web, thickness",
  between: "Clear between the webs",
  weld: "Weld, leg",
  width: "Width",
  depth: "Depth",
};

function PlateFields({
  kind,
  plates,
  set,
}: {
  readonly kind: Exclude<Kind, "standard">;
  readonly plates: Plates;
  readonly set: (change: Partial<Plates>) => void;
}) {
  return (
    <div className={styles.fields}>
      {plateFields[kind].map((key) => (
        <QuantityField
          key={key}
          label={plateWords[key]}
          kind="length"
          step={0}
          value={plates[key]}
          commit={(value) => {
            if (value < 0 || (value === 0 && key !== "weld")) return `${plateWords[key]}: more than 0.`;
            set({ [key]: value });
            return null;
          }}
        />
      ))}
    </div>
  );
}

function SectionProperties({ section }: { readonly section: Section }) {
  const format = useFormat();
  const { dimensions } = section;
  return (
    <div className={pieceStyles.sectionProperties}>
      <SectionPicture outline={section.outline} name={section.name} />
      <TitleBlock>
        <Entry name="Depth">{format(dimensions.depth ?? null, "length")}</Entry>
        <Entry name="Area">{format(section.area, "area")}</Entry>
        <Entry name="Second moment">{format(section.secondMoment, "secondMoment")}</Entry>
        <Entry name="Section modulus">{format(dimensions.sectionModulus ?? null, "sectionModulus")}</Entry>
        <Entry name="Torsion constant">{format(section.torsionConstant, "secondMoment")}</Entry>
        <Entry name="A length of it">{format(section.area * steelDensity, "massPerLength")}</Entry>
      </TitleBlock>
    </div>
  );
}

/** The section, true to scale. */
function SectionPicture({ outline, name }: { readonly outline: Outline; readonly name: string }) {
  const points = outline.flat();
  const ys = points.map(([y]) => y);
  const zs = points.map(([, z]) => z);
  const [left, right, low, high] = [Math.min(...ys), Math.max(...ys), Math.min(...zs), Math.max(...zs)];
  const margin = 0.06 * Math.max(right - left, high - low);
  const path = outline.map((ring) => `M${ring.map(([y, z]) => `${y} ${-z}`).join("L")}Z`).join("");
  return (
    <svg
      className={pieceStyles.sectionPicture}
      role="img"
      aria-label={`${name} in cross-section`}
      viewBox={`${left - margin} ${-high - margin} ${right - left + 2 * margin} ${high - low + 2 * margin}`}
    >
      <path d={path} fillRule="evenodd" />
    </svg>
  );
}
