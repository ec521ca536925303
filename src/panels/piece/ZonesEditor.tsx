/** Where the piece may rest, where it may not, and what must be kept clear for work. */

import { ActionIcon } from "@mantine/core";
import type { ReactNode } from "react";
import { type NamedPolygon, type Piece, type Point, pieceLength, type WorkWindow } from "../../plan";
import type { ShapeKind } from "../../store";
import { Disclosure, Icon, QuantityField, Section, TextField } from "../../ui";
import { attempt } from "../connect";
import { ChangeButton, DrawButton } from "../drawing/DrawMenu";
import styles from "../panels.module.css";
import { AddButton, OutlineEditor, rectangle } from "./OutlineEditor";

const pieceAxes = ["Along", "Across"] as const;

export function ZonesEditor({ piece }: { readonly piece: Piece }) {
  const change = (keys: Parameters<typeof attempt<"piece.change">>[1]["change"], label: string) =>
    attempt("piece.change", { change: keys, label });
  const rest = piece.restZones ?? [];
  return (
    <>
      <Section
        title="Bearing areas"
        level={3}
        actions={
          <>
            <DrawButton kind="restZone" />
            <AddButton onClick={() => change({ restZones: [...rest, startZone(piece)] }, "Add a bearing area")}>
              Add
            </AddButton>
          </>
        }
      >
        {rest.length === 0 && <p className={styles.quiet}>None drawn: it may rest anywhere within its outline.</p>}
        {rest.map((polygon, index) => (
          <Disclosure key={index} summary={`Bearing area ${index + 1}`}>
            <ChangeButton kind="restZone" index={index} />
            <OutlineEditor
              caption={`Corners of bearing area ${index + 1}`}
              axes={pieceAxes}
              polygon={polygon}
              commit={(after) =>
                change({ restZones: rest.map((old, at) => (at === index ? after : old)) }, "Change a bearing area")
              }
            />
            <RemoveZone
              name={`bearing area ${index + 1}`}
              remove={() => {
                const kept = rest.filter((_, at) => at !== index);
                change({ restZones: kept.length === 0 ? null : kept }, "Remove a bearing area");
              }}
            />
          </Disclosure>
        ))}
      </Section>
      <NamedZones
        title="Keep off"
        kind="noRestZone"
        zones={piece.noRestZones}
        add={() =>
          change(
            { noRestZones: [...piece.noRestZones, { name: "keep off", polygon: startZone(piece) }] },
            "Add a keep-off zone",
          )
        }
        commit={(zones) => change({ noRestZones: zones }, "Change a keep-off zone")}
      />
      <NamedZones<WorkWindow>
        title="Keep clear for work"
        kind="workWindow"
        zones={piece.workWindows}
        add={() =>
          change(
            { workWindows: [...piece.workWindows, { name: "work", polygon: startZone(piece), clearance: 0.3 }] },
            "Add a zone to keep clear",
          )
        }
        commit={(zones) => change({ workWindows: zones }, "Change a zone to keep clear")}
        more={(zone, replace) => (
          <QuantityField
            label="Clearance"
            kind="length"
            value={zone.clearance}
            commit={(clearance) => replace({ ...zone, clearance })}
          />
        )}
      />
    </>
  );
}

interface NamedZonesProps<Zone extends NamedPolygon> {
  readonly title: string;
  readonly kind: ShapeKind;
  readonly zones: readonly Zone[];
  readonly add: () => void;
  readonly commit: (zones: readonly Zone[]) => string | null;
  /** What the two coordinates are called. */
  readonly axes?: readonly [string, string];
  readonly more?: (zone: Zone, replace: (zone: Zone) => string | null) => ReactNode;
}

/** Named polygons of the piece or the bay: each folds out to its name and corners. */
export function NamedZones<Zone extends NamedPolygon>(props: NamedZonesProps<Zone>) {
  const { title, kind, zones, add, commit, axes = pieceAxes, more } = props;
  return (
    <Section
      title={title}
      level={3}
      actions={
        <>
          <DrawButton kind={kind} />
          <AddButton onClick={add}>Add</AddButton>
        </>
      }
    >
      {zones.length === 0 && <p className={styles.quiet}>None.</p>}
      {zones.map((zone, index) => {
        const replace = (after: Zone) => commit(zones.map((old, at) => (at === index ? after : old)));
        return (
          <Disclosure key={index} summary={zone.name}>
            <ChangeButton kind={kind} index={index} />
            <div className={styles.fields}>
              <TextField label="Name" value={zone.name} commit={(name) => replace({ ...zone, name })} />
              {more?.(zone, replace)}
            </div>
            <OutlineEditor
              caption={`Corners of ${zone.name}`}
              axes={axes}
              polygon={zone.polygon}
              commit={(polygon) => replace({ ...zone, polygon })}
            />
            <RemoveZone name={zone.name} remove={() => commit(zones.filter((_, at) => at !== index))} />
          </Disclosure>
        );
      })}
    </Section>
  );
}

function RemoveZone({ name, remove }: { readonly name: string; readonly remove: () => void }) {
  return (
    <ActionIcon variant="subtle" aria-label={`Remove ${name}`} title={`Remove ${name}`} onClick={remove}>
      <Icon name="bin" />
    </ActionIcon>
  );
}

/** A tenth of the length in the middle, over the whole width. */
function startZone(piece: Piece): readonly Point[] {
  const length = pieceLength(piece);
  const across = piece.outline.map(([, t]) => t);
  return rectangle([length * 0.45, Math.min(...across)], [length * 0.55, Math.max(...across)]);
}
