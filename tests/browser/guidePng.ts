/** Makes a screenshot small: 256 colours, packed as tightly as PNG packs. */

import { crc32, deflateSync, inflateSync } from "node:zlib";

/** The chunks of a PNG after its signature, in order. */
function* chunksOf(png: Buffer): Generator<{ readonly kind: string; readonly data: Buffer }> {
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    yield { kind: png.toString("latin1", at + 4, at + 8), data: png.subarray(at + 8, at + 8 + length) };
    at += length + 12;
  }
}

/** The pixels of a PNG of 8 bits a channel, as 0xRRGGBB; PNG specification, section 9 (filters). */
function pixelsOf(png: Buffer): { width: number; height: number; pixels: Uint32Array } {
  const chunks = [...chunksOf(png)];
  const header = chunks[0]!.data;
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  const channels = header[9] === 6 ? 4 : 3;
  const raw = inflateSync(Buffer.concat(chunks.filter(({ kind }) => kind === "IDAT").map(({ data }) => data)));
  const stride = width * channels;
  const pixels = new Uint32Array(width * height);
  let above = new Uint8Array(stride);
  for (let y = 0; y < height; y += 1) {
    const filter = raw[y * (stride + 1)]!;
    const row = new Uint8Array(raw.subarray(y * (stride + 1) + 1, (y + 1) * (stride + 1)));
    for (let x = 0; x < stride; x += 1) {
      const [a, b, c] = [x < channels ? 0 : row[x - channels]!, above[x]!, x < channels ? 0 : above[x - channels]!];
      const p = a + b - c;
      const [pa, pb, pc] = [Math.abs(p - a), Math.abs(p - b), Math.abs(p - c)];
      const paeth = pa <= pb && pa <= pc ? a : pb <= pc ? b : c;
      row[x] = row[x]! + [0, a, b, (a + b) >> 1, paeth][filter]!;
    }
    for (let x = 0; x < width; x += 1)
      pixels[y * width + x] = (row[x * channels]! << 16) | (row[x * channels + 1]! << 8) | row[x * channels + 2]!;
    above = row;
  }
  return { width, height, pixels };
}

/** The 256 colours that are most used, and for every colour the nearest of them. */
function paletteOf(pixels: Uint32Array): { palette: readonly number[]; indexOf: Map<number, number> } {
  const counts = new Map<number, number>();
  for (const pixel of pixels) counts.set(pixel, (counts.get(pixel) ?? 0) + 1);
  const colours = [...counts].sort((a, b) => b[1] - a[1]).map(([colour]) => colour);
  const palette = colours.slice(0, 256);
  const apart = (a: number, b: number) =>
    ((a >> 16) - (b >> 16)) ** 2 + (((a >> 8) & 255) - ((b >> 8) & 255)) ** 2 + ((a & 255) - (b & 255)) ** 2;
  const indexOf = new Map(palette.map((colour, index) => [colour, index]));
  for (const colour of colours.slice(256)) {
    let nearest = 0;
    for (let index = 1; index < palette.length; index += 1)
      if (apart(colour, palette[index]!) < apart(colour, palette[nearest]!)) nearest = index;
    indexOf.set(colour, nearest);
  }
  return { palette, indexOf };
}

function chunk(kind: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(kind, "latin1"), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

/** The same picture in 256 colours. */
export function smallPng(png: Buffer): Buffer {
  const { width, height, pixels } = pixelsOf(png);
  const { palette, indexOf } = paletteOf(pixels);
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) rows[y * (width + 1) + 1 + x] = indexOf.get(pixels[y * width + x]!)!;
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 3, 0, 0, 0], 8);
  const colours = Buffer.from(palette.flatMap((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255]));
  return Buffer.concat([
    png.subarray(0, 8),
    chunk("IHDR", header),
    chunk("PLTE", colours),
    chunk("IDAT", deflateSync(rows, { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}
