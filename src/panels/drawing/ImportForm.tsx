/** A DXF drawing taken over, on one screen: file, layers, units and size, gaps, and what becomes of it. */

import { Button } from "@mantine/core";
import { useRef, useState } from "react";
import { shown, theDrafting, theEditor } from "../../store";
import { DisplayUnits, Section, useFormat } from "../../ui";
import { attempt, usePlan } from "../connect";
import styles from "./drawing.module.css";
import { FilePicker } from "./FilePicker";
import { GapList } from "./GapList";
import { ImportPreview } from "./ImportPreview";
import { LayerList } from "./LayerList";
import { LayingFields } from "./LayingFields";
import { SizeFields } from "./SizeFields";
import type { DrawingSource } from "./source";
import { type ImportState, useImport } from "./useImport";

export interface ImportFormProps {
  readonly source: DrawingSource;
  readonly done: () => void;
}

export default function ImportForm({ source, done }: ImportFormProps) {
  const { display } = usePlan();
  const [file, setFile] = useState<string | null>(null);
  const [reading, setReading] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const [state, load] = useImport(source);
  const latest = useRef(0);

  const choose = async (chosen: File): Promise<void> => {
    latest.current += 1;
    const own = latest.current;
    setFile(chosen.name);
    setRefusal(null);
    setReading(true);
    load(null);
    const answer = await source.read(new Uint8Array(await chosen.arrayBuffer()));
    if (own !== latest.current) return;
    setReading(false);
    if (answer.ok) load(answer.drawing);
    else setRefusal(answer.message);
  };
  const stop = (): void => {
    latest.current += 1;
    source.stop();
    setReading(false);
    setFile(null);
  };

  return (
    <DisplayUnits display={display}>
      <div className={styles.import}>
        <Section title="Drawing">
          <FilePicker
            accept=".dxf"
            label={file === null ? "Choose a DXF file" : "Choose another DXF file"}
            choose={(chosen) => void choose(chosen)}
          />
          {file !== null && <p className={styles.quiet}>{reading ? `Reading ${file}` : file}</p>}
          {reading && (
            <Button size="compact-md" variant="default" onClick={stop}>
              Stop
            </Button>
          )}
          {refusal !== null && (
            <p className={styles.refusal} role="alert">
              {refusal}
            </p>
          )}
        </Section>
        {state !== null && <ImportSteps state={state} file={file ?? "the drawing"} done={done} />}
      </div>
    </DisplayUnits>
  );
}

function ImportSteps({
  state,
  file,
  done,
}: {
  readonly state: ImportState;
  readonly file: string;
  readonly done: () => void;
}) {
  const [refusal, setRefusal] = useState<string | null>(null);
  const format = useFormat();
  const missing = missingFrom(state);
  const take = (): void => {
    const { made } = state;
    if (made === null || !made.ok) return;
    const refused =
      made.target === "piece"
        ? attempt("drawing.piece", { outline: made.outline.polygon, holes: made.holes, keeping: state.keeping })
        : attempt("drawing.bay", {
            outline: made.outline.polygon,
            obstacles: made.obstacles,
            noFootZones: made.noFootZones,
            centre: state.centre,
          });
    if (refused !== null) {
      setRefusal(refused);
      return;
    }
    done();
    theDrafting().leave();
    theEditor().look({ camera: null });
    const { length, width } = state.size ?? { length: 0, width: 0 };
    theEditor().say({
      kind: "information",
      text: `Taken over from ${file}: ${format(length, "length")} by ${format(width, "length")}. The weights are as they were; check them.`,
    });
  };
  return (
    <div className={styles.importColumns}>
      <div className={styles.importPreviewPlace}>
        <ImportPreview state={state} ends={shown(theEditor().state()).piece.ends} />
      </div>
      <div className={styles.importSteps}>
        <LayerList state={state} />
        <SizeFields state={state} />
        <GapList state={state} />
        <LayingFields state={state} plan={shown(theEditor().state())} />
        <div className={styles.importEnd}>
          <p className={styles.quiet} role="status">
            {missing}
          </p>
          {refusal !== null && (
            <p className={styles.refusal} role="alert">
              {refusal}
            </p>
          )}
          <Button size="md" disabled={missing !== null} onClick={take}>
            Take it over
          </Button>
        </div>
      </div>
    </div>
  );
}

/** What is still to be done before the drawing can be taken over; null where nothing is. */
function missingFrom(state: ImportState): string | null {
  if (state.made === null) return state.metresAUnit === null ? "Say what its numbers are." : "Joining.";
  if (!state.made.ok) return state.made.message;
  return state.confirmed ? null : "Type one true size first: it shows that the drawing is to scale.";
}
