/** What becomes of the drawing: which loop is the outline, how it lies, and what happens to what is on the piece. */

import { Button } from "@mantine/core";
import { type Plan, pieceLength } from "../../plan";
import { CheckField, ChoiceField, Icon, Section, useFormat } from "../../ui";
import { counted } from "../words";
import styles from "./drawing.module.css";
import type { ImportState, Made } from "./useImport";

/** So many loops are offered as the outline. */
const mostOffered = 20;

export function LayingFields({ state, plan }: { readonly state: ImportState; readonly plan: Plan }) {
  const { joined, made, target, outer, change } = state;
  const format = useFormat();
  if (joined === null) return null;
  const { ends } = plan.piece;
  const differs = state.size !== null && Math.abs(state.size.length - pieceLength(plan.piece)) > 1e-6;
  return (
    <Section title="What becomes of it">
      {made?.ok === true && <Outcome made={made} />}
      <div className={styles.importFields}>
        {joined.loops.length > 1 && (
          <ChoiceField
            label="Outline"
            value={String(outer)}
            choices={joined.loops.slice(0, mostOffered).map((loop, index) => ({
              value: String(index),
              label: `${index === 0 ? "the greatest loop" : `loop ${index + 1}`}, ${counted(loop.length, "corner")}`,
            }))}
            choose={(value) => change({ outer: Number(value), confirmed: false })}
          />
        )}
        {target === "piece" && differs && (
          <ChoiceField
            label="Weights, stands and zones on the piece"
            value={state.keeping}
            choices={[
              { value: "shares", label: "keep their share of the length" },
              { value: "places", label: `keep their distance from ${ends.datum}` },
            ]}
            choose={(keeping) => change({ keeping })}
          />
        )}
      </div>
      <div className={styles.importTurns}>
        <Button
          variant="default"
          leftSection={<Icon name="turn" size={16} />}
          onClick={() => change({ quarterTurns: (state.quarterTurns + 1) % 4 })}
        >
          Turn by 90°
        </Button>
        <Button
          variant="default"
          leftSection={<Icon name="mirror" size={16} />}
          aria-pressed={state.mirrored}
          onClick={() => change({ mirrored: !state.mirrored })}
        >
          {state.mirrored ? "Not mirrored" : "Mirrored, as seen from below"}
        </Button>
      </div>
      {target === "piece" ? (
        <p className={styles.quiet}>
          {ends.datum} is at the left of the picture
          {state.size === null ? "" : `, ${format(state.size.length, "length")} from ${ends.far}`}.
        </p>
      ) : (
        <CheckField
          label="Put the piece in the middle of the bay"
          value={state.centre}
          choose={(centre) => change({ centre })}
        />
      )}
    </Section>
  );
}

function Outcome({ made }: { readonly made: Extract<Made, { readonly ok: true }> }) {
  const format = useFormat();
  const { outline, unusable } = made;
  const parts =
    made.target === "piece"
      ? [made.holes.length === 0 ? "no holes" : `${counted(made.holes.length, "hole")} as keep-off zones`]
      : [counted(made.obstacles.length, "obstacle"), counted(made.noFootZones.length, "no-foot zone")];
  return (
    <>
      <p>
        An outline of {counted(outline.polygon.length, "corner")}, {parts.join(", ")}.
      </p>
      {outline.dropped > 0 && (
        <p className={styles.quiet}>
          The drawing’s own {(outline.polygon.length + outline.dropped).toLocaleString("en")} corners are more than a
          plan takes: thinned, and nowhere off by more than {format(outline.within, "length")}.
        </p>
      )}
      {unusable > 0 && (
        <p className={styles.quiet}>
          {counted(unusable, "loop")} that {unusable === 1 ? "crosses itself is" : "cross themselves are"} left out.
        </p>
      )}
    </>
  );
}
