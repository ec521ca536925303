/** Every key of a stand type, beside a true-to-scale picture of the stand that they make. */

import { Button } from "@mantine/core";
import { useState } from "react";
import type { StandType, StandTypeDocument, StandTypeId } from "../../plan";
import { CheckField, ChoiceField, MaybeField, QuantityField, Section, TextField, useFormat } from "../../ui";
import { attempt, useCalm, usePlan } from "../connect";
import { HelpFor } from "../help/HelpFor";
import styles from "../panels.module.css";
import { legWords, materialChoices } from "../words";
import { StandPicture } from "./StandPicture";

export function StandTypeEditor({ type: id }: { readonly type: StandTypeId }) {
  const type = usePlan().standTypes.find((one) => one.id === id);
  const used = useCalm((state) => state.document.stands).filter((stand) => stand.type === id).length;
  if (type === undefined) return null;
  return <StandTypeEditorView type={type} used={used} />;
}

type Change = { readonly [Key in keyof Omit<StandTypeDocument, "id">]?: StandTypeDocument[Key] };

export function StandTypeEditorView({ type, used }: { readonly type: StandType; readonly used: number }) {
  const change = (keys: Change) => attempt("type.change", { type: type.id, change: keys });
  const { height, top, splay, foot } = type;
  return (
    <div className={styles.typeEditor}>
      <StandPicture type={type} height={height.min} />
      <p className={styles.quiet}>
        {used === 0 ? "No stand of the plan is of this type." : `${used} of the plan's stands are of this type.`}{" "}
        Measure the stand itself.
      </p>
      <div className={styles.fields} data-columns="two">
        <TextField label="Name" required value={type.name} commit={(name) => change({ name })} />
        <ChoiceField
          label="Legs"
          value={type.legs}
          choices={(["a-frame", "vertical"] as const).map((value) => ({ value, label: legWords[value] }))}
          choose={(legs) => change(legs === "vertical" ? { legs, splay: { along: 0, across: 0 } } : { legs })}
        />
      </div>
      <RatingFields type={type} change={change} />
      <Section title="Height and top" level={3}>
        <div className={styles.fields}>
          <QuantityField
            label="Least height"
            kind="length"
            value={height.min}
            commit={(min) => change({ height: { ...height, min, max: Math.max(min, height.max) } })}
          />
          <QuantityField
            label="Greatest height"
            kind="length"
            value={height.max}
            commit={(max) => change({ height: { ...height, max, min: Math.min(max, height.min) } })}
          />
          <QuantityField
            label="In steps of"
            description="0: any height between"
            kind="length"
            value={height.increment}
            commit={(increment) => change({ height: { ...height, increment } })}
          />
          <ChoiceField
            label="Top of"
            value={top.material}
            choices={materialChoices}
            choose={(material) => change({ top: { ...top, material } })}
          />
          <QuantityField
            label="Top, length"
            kind="length"
            value={top.length}
            commit={(length) => change({ top: { ...top, length } })}
          />
          <QuantityField
            label="Top, width"
            kind="length"
            value={top.width}
            commit={(width) => change({ top: { ...top, width } })}
          />
        </div>
      </Section>
      <Section title="Legs and feet" level={3}>
        <div className={styles.fields}>
          <QuantityField
            label="Between leg frames"
            kind="length"
            value={type.legSpacing}
            commit={(legSpacing) => change({ legSpacing })}
          />
          <QuantityField
            label="Splay, square to the top"
            kind="angle"
            value={splay.along}
            disabled={type.legs === "vertical"}
            commit={(along) => change({ splay: { ...splay, along } })}
          />
          <QuantityField
            label="Splay, along the top"
            kind="angle"
            value={splay.across}
            disabled={type.legs === "vertical"}
            commit={(across) => change({ splay: { ...splay, across } })}
          />
          <QuantityField
            label="Foot, square to the top"
            kind="length"
            value={foot.length}
            commit={(length) => change({ foot: { ...foot, length } })}
          />
          <QuantityField
            label="Foot, along the top"
            kind="length"
            value={foot.width}
            commit={(width) => change({ foot: { ...foot, width } })}
          />
          <QuantityField
            label="Weight of the stand"
            kind="mass"
            value={type.selfMass}
            commit={(selfMass) => change({ selfMass })}
          />
        </div>
        <div className={styles.checks}>
          <CheckField
            label="On retracting casters"
            value={type.casters !== null}
            choose={(on) => change({ casters: on ? { retractLoad: 900 } : null })}
          />
          <CheckField
            label="Has lifting points"
            value={type.liftingPoints}
            choose={(liftingPoints) => change({ liftingPoints })}
          />
        </div>
        {type.casters !== null && (
          <div className={styles.fields}>
            <QuantityField
              label="Casters are clear from a load of"
              kind="force"
              value={type.casters.retractLoad}
              commit={(retractLoad) => change({ casters: { retractLoad } })}
            />
          </div>
        )}
      </Section>
    </div>
  );
}

type RatingKey = "ratedLoad" | "ratedLoadCentre";

interface RatingProps {
  readonly type: StandType;
  readonly change: (keys: Change) => string | null;
}

/** What the plate says. Whether a number speaks of one stand or of a pair is asked each time, never assumed. */
function RatingFields({ type, change }: RatingProps) {
  const [asked, setAsked] = useState<{ readonly key: RatingKey; readonly load: number } | null>(null);
  const format = useFormat();
  const rating = (key: RatingKey, label: string) => (
    <QuantityField
      label={label}
      placeholder="not known"
      kind="force"
      value={asked?.key === key ? asked.load : type[key]}
      commit={(load) => {
        setAsked({ key, load });
        return null;
      }}
      clear={() => {
        setAsked(null);
        return change({ [key]: null });
      }}
    />
  );
  const rate = (key: RatingKey, load: number) => {
    setAsked(null);
    change({ [key]: load });
  };
  return (
    <Section title="What its plate says" level={3} actions={<HelpFor entry="rating" />}>
      <div className={styles.fields}>
        {rating("ratedLoad", "Load, spread over the top")}
        {rating("ratedLoadCentre", "Load at its middle")}
      </div>
      {asked !== null && (
        <fieldset className={styles.ask}>
          <legend>{format(asked.load, "force")}: is that on one stand, or on a pair?</legend>
          <div className={styles.actions}>
            <Button variant="default" onClick={() => rate(asked.key, asked.load)}>
              On one stand
            </Button>
            <Button variant="default" onClick={() => rate(asked.key, asked.load / 2)}>
              On a pair: {format(asked.load / 2, "force")} each
            </Button>
            <Button variant="subtle" onClick={() => setAsked(null)}>
              Not sure: leave the rating as it was
            </Button>
          </div>
        </fieldset>
      )}
      <TextField
        label="Marking, word for word"
        value={type.marking}
        placeholder="20 000 LB CAPACITY, PER STAND"
        commit={(marking) => change({ marking })}
      />
      <div className={styles.fields}>
        <QuantityField
          label="Design factor"
          placeholder="not known"
          kind="ratio"
          value={type.designFactor}
          commit={(designFactor) => change({ designFactor })}
          clear={() => change({ designFactor: null })}
        />
        <MaybeField
          label="People may work under"
          value={type.ratedForWorkUnder}
          choose={(ratedForWorkUnder) => change({ ratedForWorkUnder })}
        />
        <QuantityField
          label="Stiffness, pad included"
          placeholder="from its rating"
          kind="stiffness"
          value={type.stiffness}
          commit={(stiffness) => change({ stiffness })}
          clear={() => change({ stiffness: null })}
        />
      </div>
    </Section>
  );
}
