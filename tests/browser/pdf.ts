/** A small PDF file written out by hand: one rectangle of black lines a page. */

/** `pages`: the rectangle of each page, [x, y, width, height] in points on a sheet of 842 by 595 (A4 lying). */
export function pdf(pages: readonly (readonly [number, number, number, number])[]): Buffer {
  const objects: string[] = [];
  const kids = pages.map((_, index) => `${3 + 2 * index} 0 R`).join(" ");
  objects.push("<< /Type /Catalog /Pages 2 0 R >>", `<< /Type /Pages /Kids [${kids}] /Count ${pages.length} >>`);
  for (const [index, [x, y, width, height]] of pages.entries()) {
    const content = `4 w ${x} ${y} ${width} ${height} re S`;
    objects.push(
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 842 595] /Contents ${4 + 2 * index} 0 R >>`,
      `<< /Length ${content.length} >>\nstream\n${content}\nendstream`,
    );
  }
  let text = "%PDF-1.4\n";
  const places = objects.map((object, index) => {
    const at = text.length;
    text += `${index + 1} 0 obj\n${object}\nendobj\n`;
    return at;
  });
  const table = text.length;
  text += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n`;
  text += places.map((at) => `${String(at).padStart(10, "0")} 00000 n \n`).join("");
  text += `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${table}\n%%EOF\n`;
  return Buffer.from(text, "latin1");
}
