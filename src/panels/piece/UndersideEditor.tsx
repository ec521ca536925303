/** Steps and camber of the underside: heights over the datum plane, straight between the ends of a stretch. */

import { ActionIcon } from "@mantine/core";
import { type Piece, pieceLength, type UndersideSegment } from "../../plan";
import { type Column, DataTable, Icon, QuantityField } from "../../ui";
import { attempt } from "../connect";
import styles from "../panels.module.css";
import { camber } from "./camber";
import { AddButton } from "./OutlineEditor";

export function UndersideEditor({ piece }: { readonly piece: Piece }) {
  const { underside } = piece;
  const commit = (segments: readonly UndersideSegment[]) =>
    attempt("piece.change", { change: { underside: segments }, label: "Change the underside" });
  const replaced = (index: number, keys: Partial<UndersideSegment>) =>
    commit(underside.map((old, at) => (at === index ? { ...old, ...keys } : old)));
  const indexOf = (segment: UndersideSegment) => underside.indexOf(segment);
  const field = (key: "from" | "to", label: string) => (segment: UndersideSegment) => (
    <QuantityField
      bare
      label={`Stretch ${indexOf(segment) + 1}, ${label}`}
      kind="length"
      value={segment[key]}
      commit={(value) => replaced(indexOf(segment), { [key]: value })}
    />
  );
  const height = (end: 0 | 1, label: string) => (segment: UndersideSegment) => (
    <QuantityField
      bare
      label={`Stretch ${indexOf(segment) + 1}, ${label}`}
      kind="length"
      value={segment.z[end]}
      commit={(value) => replaced(indexOf(segment), { z: end === 0 ? [value, segment.z[1]] : [segment.z[0], value] })}
    />
  );
  const columns: readonly Column<UndersideSegment>[] = [
    { key: "number", heading: "Stretch", cell: (segment) => indexOf(segment) + 1 },
    { key: "from", heading: "From", cell: field("from", "from") },
    { key: "to", heading: "To", cell: field("to", "to") },
    { key: "start", heading: "Height at start", cell: height(0, "height at its start") },
    { key: "end", heading: "Height at end", cell: height(1, "height at its end") },
    {
      key: "remove",
      heading: <span className={styles.hiddenWords}>Remove</span>,
      cell: (segment) => (
        <ActionIcon
          variant="subtle"
          aria-label={`Remove stretch ${indexOf(segment) + 1}`}
          onClick={() => commit(underside.filter((one) => one !== segment))}
        >
          <Icon name="bin" />
        </ActionIcon>
      ),
    },
  ];
  const length = pieceLength(piece);
  const end = underside.at(-1)?.to ?? 0;
  return (
    <>
      <p className={styles.quiet}>Flat at the datum plane where nothing is said..</p>
      <DataTable
        caption="Stretches of the underside"
        columns={columns}
        rows={underside}
        rowKey={(_, index) => String(index)}
        rowHeading="number"
        empty=""
      />
      <div className={styles.actions}>
        {end < length && (
          <AddButton onClick={() => commit([...underside, { from: end, to: length, z: [0, 0] }])}>A stretch</AddButton>
        )}
        {underside.length === 0 && (
          <AddButton onClick={() => commit(camber(length, 0.01))}>A camber of 10 mm</AddButton>
        )}
      </div>
    </>
  );
}
