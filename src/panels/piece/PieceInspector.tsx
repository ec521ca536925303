/** The piece: its name and ends, size, weight, stiffness, where it may rest, and where it lies in the bay. */

import { pieceLength } from "../../plan";
import { Disclosure, QuantityField, Section, TextField, useFormat } from "../../ui";
import { attempt, usePlan } from "../connect";
import { ChangeButton, DrawButton } from "../drawing/DrawMenu";
import { HelpFor } from "../help/HelpFor";
import styles from "../panels.module.css";
import { counted } from "../words";
import { MassesList } from "./MassesList";
import { OutlineEditor } from "./OutlineEditor";
import { StiffnessEditor, stiffnessText } from "./StiffnessEditor";
import { UndersideEditor } from "./UndersideEditor";
import { WeightByStep } from "./WeightByStep";
import { ZonesEditor } from "./ZonesEditor";

export default function PieceInspector() {
  const plan = usePlan();
  const { piece } = plan;
  const format = useFormat();
  const change = (keys: Parameters<typeof attempt<"piece.change">>[1]["change"]) =>
    attempt("piece.change", { change: keys });
  const zones = (piece.restZones?.length ?? 0) + piece.noRestZones.length + piece.workWindows.length;
  return (
    <>
      <Section title="Piece">
        <TextField label="Name" required value={piece.name} commit={(name) => change({ name })} />
        <div className={styles.fields}>
          <TextField
            label="Datum end, as marked"
            required
            value={piece.ends.datum}
            commit={(datum) => change({ ends: { ...piece.ends, datum } })}
          />
          <TextField
            label="Far end, as marked"
            required
            value={piece.ends.far}
            commit={(far) => change({ ends: { ...piece.ends, far } })}
          />
        </div>
        <div className={styles.fields}>
          <QuantityField
            label="Depth, over its underside"
            kind="length"
            value={piece.depth}
            commit={(depth) => change({ depth })}
          />
        </div>
      </Section>
      <Section title="Weight and centre of gravity" actions={<HelpFor entry="weight" />}>
        <WeightByStep />
        <MassesList />
      </Section>
      <Section title="Make-up">
        <Disclosure summary="Stiffness and section" aside={stiffnessText(piece)}>
          <StiffnessEditor piece={piece} />
        </Disclosure>
        <Disclosure
          summary="Outline"
          aside={`${format(pieceLength(piece), "length")} long, ${counted(piece.outline.length, "corner")}`}
        >
          <div className={styles.actions}>
            <DrawButton kind="outline" />
            <ChangeButton kind="outline" />
          </div>
          <OutlineEditor
            caption="Corners of the piece's outline"
            polygon={piece.outline}
            axes={["Along", "Across"]}
            commit={(points) => attempt("shape.points", { ref: { kind: "outline", index: 0 }, points })}
          />
        </Disclosure>
        <Disclosure
          summary="Underside"
          aside={piece.underside.length === 0 ? "flat" : counted(piece.underside.length, "stretch", "stretches")}
        >
          <UndersideEditor piece={piece} />
        </Disclosure>
        <Disclosure summary="Bearing areas, keep off, keep clear for work" aside={zones === 0 ? "none" : String(zones)}>
          <ZonesEditor piece={piece} />
        </Disclosure>
      </Section>
      <PosePanel />
    </>
  );
}

/** Where the piece lies in the bay. */
export function PosePanel() {
  const { pose, ends } = usePlan().piece;
  return (
    <Section title="In the bay">
      <div className={styles.fields}>
        <QuantityField
          label={`${ends.datum}, x`}
          kind="length"
          value={pose.x}
          commit={(x) => attempt("piece.move", { x, y: pose.y, burst: "field pose" })}
        />
        <QuantityField
          label={`${ends.datum}, y`}
          kind="length"
          value={pose.y}
          commit={(y) => attempt("piece.move", { x: pose.x, y, burst: "field pose" })}
        />
        <QuantityField
          label="Heading from +x"
          kind="angle"
          value={pose.heading}
          commit={(heading) => attempt("piece.turn", { heading, burst: "field pose" })}
        />
      </div>
    </Section>
  );
}
