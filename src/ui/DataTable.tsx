/** A plain table with a caption for screen readers; it scrolls sideways by itself where it is wider than the page. */

import type { ReactNode } from "react";
import styles from "./ui.module.css";

export interface Column<Row> {
  readonly key: string;
  readonly heading: ReactNode;
  /** Numbers stand flush right. */
  readonly numeric?: boolean;
  readonly cell: (row: Row) => ReactNode;
}

export interface DataTableProps<Row> {
  readonly caption: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row, index: number) => string;
  /** Which column names the row. */
  readonly rowHeading: string;
  readonly chosen?: (row: Row) => boolean;
  readonly empty?: string;
}

export function DataTable<Row>(props: DataTableProps<Row>) {
  const { caption, columns, rows, rowKey, rowHeading, chosen, empty } = props;
  if (rows.length === 0 && empty !== undefined) return <p className={styles.quiet}>{empty}</p>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section data-scrolls="across" aria-label={`${caption}: table`} tabIndex={0}>
      <table className={styles.table}>
        <caption className={styles.hiddenWords}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col" data-numeric={column.numeric}>
                {column.heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={rowKey(row, index)} data-chosen={chosen?.(row)}>
              {columns.map((column) =>
                column.key === rowHeading ? (
                  <th key={column.key} scope="row">
                    {column.cell(row)}
                  </th>
                ) : (
                  <td key={column.key} data-numeric={column.numeric}>
                    {column.cell(row)}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
