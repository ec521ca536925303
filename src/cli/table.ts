/** Plain text tables: columns aligned, numbers to the right. */

export type Align = "left" | "right";

/** Rows of cells as lines, columns as wide as their widest cell, two spaces between; no spaces at the ends of lines. */
export function tableLines(rows: readonly (readonly string[])[], align: readonly Align[]): string[] {
  const widths: number[] = [];
  for (const row of rows)
    for (const [column, cell] of row.entries()) widths[column] = Math.max(widths[column] ?? 0, cell.length);
  return rows.map((row) =>
    row
      .map((cell, column) =>
        align[column] === "right" ? cell.padStart(widths[column]!) : cell.padEnd(widths[column]!),
      )
      .join("  ")
      .trimEnd(),
  );
}

/** Text broken at spaces into lines of at most `width` characters; a longer word stays whole. */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else {
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  return line === "" ? lines : [...lines, line];
}
