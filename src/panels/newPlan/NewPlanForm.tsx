/** The questions of a new plan. Loaded when the dialog is first opened. */

import { Button } from "@mantine/core";
import { useState } from "react";
import { genericStands, type NewPlanAnswers, newPlan, type PieceKind, type RatedPer } from "../../library";
import type { PlanDocument } from "../../plan";
import { DisplayUnits, QuantityField, Section, TextField } from "../../ui";
import { Cautions } from "../help/Cautions";
import styles from "../panels.module.css";
import { basisWords, topSettings } from "../words";
import newPlanStyles from "./newPlan.module.css";
import { PictureChoice } from "./PictureChoice";
import { CountPicture, KindPicture, StandKindPicture } from "./pictures";

const nothing: Omit<NewPlanAnswers, "display"> = {
  kind: null,
  name: "",
  length: null,
  width: null,
  depth: null,
  mass: null,
  basis: null,
  centre: null,
  standCount: null,
  stand: null,
  rating: null,
  tops: null,
};

interface FormProps {
  readonly units: "us" | "metric";
  readonly make: (plan: PlanDocument) => void;
}

export default function NewPlanForm({ units, make }: FormProps) {
  const [answers, setAnswers] = useState<NewPlanAnswers>({ ...nothing, display: { units } });
  const set = (change: Partial<NewPlanAnswers>): null => {
    setAnswers((before) => ({ ...before, ...change }));
    return null;
  };
  const display = { units: answers.display.units ?? units, length: null, force: null } as const;
  return (
    <DisplayUnits display={display}>
      <form
        className={newPlanStyles.newPlan}
        onSubmit={(event) => {
          event.preventDefault();
          make(newPlan(answers));
        }}
      >
        <p className={styles.quiet}>
          Answer what you know. Whatever you leave at “don’t know” is taken on the cautious side, and the plan says so.
        </p>
        <div className={newPlanStyles.newPlanColumns}>
          <Section title="The piece">
            <PieceQuestions answers={answers} set={set} />
          </Section>
          <Section title="The stands">
            <StandQuestions answers={answers} set={set} />
          </Section>
        </div>
        <Cautions />
        <div className={newPlanStyles.newPlanEnd}>
          <p className={styles.quiet}>The piece counts as rigid until a section is picked for it.</p>
          <Button type="submit" size="md">
            Make the plan
          </Button>
        </div>
      </form>
    </DisplayUnits>
  );
}

interface Questions {
  readonly answers: NewPlanAnswers;
  readonly set: (change: Partial<NewPlanAnswers>) => null;
}

const dontKnow = "don’t know";

const kinds: readonly { readonly value: PieceKind; readonly label: string }[] = [
  { value: "member", label: "a long member" },
  { value: "die", label: "a die" },
  { value: "plate", label: "a plate" },
];

function PieceQuestions({ answers, set }: Questions) {
  const size = (key: "length" | "width" | "depth", label: string) => (
    <QuantityField
      label={label}
      kind="length"
      step={0}
      placeholder={dontKnow}
      value={answers[key]}
      commit={(value) => (value > 0 ? set({ [key]: value }) : `${label}: more than 0.`)}
      clear={() => set({ [key]: null })}
    />
  );
  return (
    <>
      <PictureChoice
        legend="Numbers in"
        name="units"
        value={answers.display.units ?? "metric"}
        choices={[
          { value: "us", label: "feet and pounds" },
          { value: "metric", label: "millimetres and kilograms" },
        ]}
        choose={(units) => set({ display: { units: units ?? "metric" } })}
      />
      <PictureChoice
        legend="What is it?"
        name="kind"
        value={answers.kind}
        choices={kinds.map((kind) => ({ ...kind, picture: <KindPicture kind={kind.value} /> }))}
        orNone={dontKnow}
        choose={(kind) => set({ kind })}
      />
      <TextField label="What is it called?" value={answers.name} commit={(name) => set({ name })} />
      <div className={styles.fields}>
        {size("length", "Length")}
        {size("width", "Width")}
        {size("depth", "Height")}
      </div>
      <div className={styles.fields}>
        <QuantityField
          label="Weight"
          kind="mass"
          step={0}
          placeholder={dontKnow}
          value={answers.mass}
          commit={(mass) => (mass > 0 ? set({ mass }) : "Weight: more than 0.")}
          clear={() => set({ mass: null })}
        />
      </div>
      <PictureChoice
        legend="The weight is known by"
        name="basis"
        value={answers.basis}
        choices={(["scale", "hook", "maker", "model", "calculated", "guess"] as const).map((value) => ({
          value,
          label: basisWords[value],
        }))}
        orNone={dontKnow}
        choose={(basis) => set({ basis })}
      />
      <CentreQuestion answers={answers} set={set} />
    </>
  );
}

function CentreQuestion({ answers, set }: Questions) {
  const { centre } = answers;
  const middle = (answers.length ?? 0) / 2;
  return (
    <>
      <PictureChoice
        legend="Where is its centre of gravity?"
        name="centre"
        value={centre?.kind ?? null}
        choices={[
          { value: "middle", label: "in the middle, both halves are alike" },
          { value: "at", label: "marked on the piece" },
        ]}
        orNone={dontKnow}
        choose={(kind) =>
          set({ centre: kind === null ? null : kind === "middle" ? { kind } : { kind, s: middle, t: 0 } })
        }
      />
      {centre?.kind === "at" && (
        <div className={styles.fields}>
          <QuantityField
            label="From the datum end"
            kind="length"
            value={centre.s}
            commit={(s) =>
              s >= 0 && (answers.length === null || s <= answers.length)
                ? set({ centre: { ...centre, s } })
                : "From the datum end: between 0 and the length."
            }
          />
          <QuantityField
            label="Across, left of the middle"
            kind="length"
            value={centre.t}
            commit={(t) => set({ centre: { ...centre, t } })}
          />
        </div>
      )}
    </>
  );
}

function StandQuestions({ answers, set }: Questions) {
  const { rating } = answers;
  return (
    <>
      <PictureChoice
        legend="How many stands?"
        name="count"
        value={answers.standCount === null ? null : String(answers.standCount)}
        choices={[2, 3, 4, 5].map((count) => ({
          value: String(count),
          label: String(count),
          picture: <CountPicture count={count} />,
        }))}
        orNone={dontKnow}
        choose={(count) => set({ standCount: count === null ? null : Number(count) })}
      />
      <PictureChoice
        legend="Which stands?"
        name="stand"
        value={answers.stand}
        choices={genericStands.map(({ type, typeIn }) => ({
          value: type.id as string,
          label: typeIn(answers.display.units ?? "metric").name,
          picture: <StandKindPicture id={type.id} />,
        }))}
        orNone={dontKnow}
        choose={(stand) => set({ stand })}
      />
      <div className={styles.fields} data-wide>
        <QuantityField
          label="What does the plate on the stand say?"
          kind="force"
          step={0}
          placeholder={dontKnow}
          value={rating?.load ?? null}
          commit={(load) => (load > 0 ? set({ rating: { load, per: rating?.per ?? null } }) : "More than 0.")}
          clear={() => set({ rating: null })}
        />
      </div>
      {rating !== null && (
        <PictureChoice<RatedPer>
          legend="Is that on one stand or on a pair?"
          name="per"
          value={rating.per}
          choices={[
            { value: "stand", label: "on one stand" },
            { value: "pair", label: "on a pair" },
          ]}
          orNone={dontKnow}
          choose={(per) => set({ rating: { ...rating, per } })}
        />
      )}
      <PictureChoice
        legend="How are the tops set?"
        name="tops"
        value={answers.tops}
        choices={topSettings.map(({ value, label }) => ({ value, label }))}
        orNone={dontKnow}
        choose={(tops) => set({ tops })}
      />
    </>
  );
}
