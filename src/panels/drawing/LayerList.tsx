/** The layers of a drawing, each with its picture: ticked for a piece, given a part for a bay. */

import { SegmentedControl } from "@mantine/core";
import { boundingBox } from "../../geometry";
import { CheckField, ChoiceField, Section } from "../../ui";
import { counted } from "../words";
import styles from "./drawing.module.css";
import type { DrawingLayer } from "./source";
import type { ImportState, Role, Target } from "./useImport";

const roles: readonly { readonly value: Role; readonly label: string }[] = [
  { value: "none", label: "left out" },
  { value: "outline", label: "the bay’s outline" },
  { value: "obstacles", label: "obstacles" },
  { value: "noFoot", label: "no-foot zones" },
];

export function LayerList({ state }: { readonly state: ImportState }) {
  const { drawing, target, change } = state;
  const { least, most } = boundingBox(drawing.layers.flatMap((layer) => [layer.least, layer.most]));
  const [width, height] = [most[0] - least[0] || 1, most[1] - least[1] || 1];
  const viewBox = `${least[0]} ${-most[1]} ${width} ${height}`;
  const setRole = (name: string, role: Role): void => {
    change({ roles: new Map([...state.roles, [name, role]]), outer: 0 });
  };
  return (
    <>
      <Section title="What it is">
        <SegmentedControl
          aria-label="What it is"
          data={[
            { value: "piece", label: "Outline of the piece" },
            { value: "bay", label: "The bay" },
          ]}
          value={target}
          onChange={(value) => change({ target: value as Target, quarterTurns: 0 })}
        />
      </Section>
      <Section title={`${counted(drawing.layers.length, "layer")}`}>
        <ul className={styles.layers}>
          {drawing.layers.map((layer) => (
            <li key={layer.name} className={styles.layer} data-on={(state.roles.get(layer.name) ?? "none") !== "none"}>
              <LayerPicture layer={layer} viewBox={viewBox} />
              {target === "piece" ? (
                <CheckField
                  label={layer.name}
                  description={counted(layer.count, "line")}
                  value={state.roles.get(layer.name) === "outline"}
                  choose={(on) => setRole(layer.name, on ? "outline" : "none")}
                />
              ) : (
                <ChoiceField
                  label={layer.name}
                  value={state.roles.get(layer.name) ?? "none"}
                  choices={roles}
                  choose={(role) => setRole(layer.name, role)}
                />
              )}
            </li>
          ))}
        </ul>
        {drawing.leftOut.length > 0 && (
          <p className={styles.quiet}>Without an outline, and left out: {drawing.leftOut.join(", ")}.</p>
        )}
      </Section>
    </>
  );
}

function LayerPicture({ layer, viewBox }: { readonly layer: DrawingLayer; readonly viewBox: string }) {
  return (
    <svg className={styles.layerPicture} viewBox={viewBox} aria-hidden="true">
      <path d={layer.picture} transform="scale(1 -1)" />
    </svg>
  );
}
