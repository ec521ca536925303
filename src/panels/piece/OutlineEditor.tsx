/** A polygon as a table of points: corners in order, added, removed and typed. */

import { ActionIcon, Button } from "@mantine/core";
import { useState } from "react";
import type { Point, Polygon } from "../../plan";
import { Icon, QuantityField } from "../../ui";
import styles from "../panels.module.css";
import pieceStyles from "./piece.module.css";

export interface OutlineEditorProps {
  readonly caption: string;
  readonly polygon: Polygon;
  /** What the two coordinates are called. */
  readonly axes: readonly [string, string];
  readonly commit: (polygon: Polygon) => string | null;
}

/** So many corners are in the table at once: an outline from a drawing may have thousands. */
const rowsAtOnce = 40;

export function OutlineEditor({ caption, polygon, axes, commit }: OutlineEditorProps) {
  const replaced = (index: number, point: Point) => commit(polygon.map((old, at) => (at === index ? point : old)));
  const remove = (index: number) => commit(polygon.filter((_, at) => at !== index));
  /** A new corner in the middle of the edge that follows. */
  const insert = (index: number) => {
    const [a, b] = [polygon[index]!, polygon[(index + 1) % polygon.length]!];
    return commit([
      ...polygon.slice(0, index + 1),
      [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2],
      ...polygon.slice(index + 1),
    ]);
  };
  const [from, setFrom] = useState(0);
  const first = Math.min(from, Math.max(0, polygon.length - 1));
  const page = polygon.slice(first, first + rowsAtOnce);
  return (
    <>
      {polygon.length > rowsAtOnce && (
        <div className={styles.actions}>
          <Button
            size="compact-md"
            variant="default"
            disabled={first === 0}
            onClick={() => setFrom(Math.max(0, first - rowsAtOnce))}
          >
            Corners before
          </Button>
          <span>
            {first + 1} to {first + page.length} of {polygon.length}
          </span>
          <Button
            size="compact-md"
            variant="default"
            disabled={first + rowsAtOnce >= polygon.length}
            onClick={() => setFrom(first + rowsAtOnce)}
          >
            Next corners
          </Button>
        </div>
      )}
      <table className={pieceStyles.points}>
        <caption className={styles.hiddenWords}>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Corner</th>
            <th scope="col">{axes[0]}</th>
            <th scope="col">{axes[1]}</th>
            <th scope="col">
              <span className={styles.hiddenWords}>Change</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {page.map((point, row) => {
            const index = first + row;
            return (
              <tr key={index}>
                <th scope="row">{index + 1}</th>
                {([0, 1] as const).map((axis) => (
                  <td key={axes[axis]}>
                    <QuantityField
                      bare
                      label={`Corner ${index + 1}, ${axes[axis].toLowerCase()}`}
                      kind="length"
                      value={point[axis]}
                      commit={(value) => replaced(index, axis === 0 ? [value, point[1]] : [point[0], value])}
                    />
                  </td>
                ))}
                <td className={styles.rowActions}>
                  <ActionIcon
                    variant="subtle"
                    aria-label={`Add a corner after ${index + 1}`}
                    onClick={() => insert(index)}
                  >
                    <Icon name="add" />
                  </ActionIcon>
                  <ActionIcon
                    variant="subtle"
                    aria-label={`Remove corner ${index + 1}`}
                    disabled={polygon.length <= 3}
                    onClick={() => remove(index)}
                  >
                    <Icon name="bin" />
                  </ActionIcon>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </>
  );
}

/** A rectangle to start a zone from. */
export function rectangle(from: Point, to: Point): Polygon {
  return [
    [from[0], from[1]],
    [to[0], from[1]],
    [to[0], to[1]],
    [from[0], to[1]],
  ];
}

/** "Add" under a list of things. */
export function AddButton({ children, onClick }: { readonly children: string; readonly onClick: () => void }) {
  return (
    <Button size="compact-md" variant="default" leftSection={<Icon name="add" size={16} />} onClick={onClick}>
      {children}
    </Button>
  );
}
