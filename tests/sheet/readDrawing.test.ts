/** Drawings written out group by group, with outlines whose areas and places follow from plane geometry. */
import { describe, expect, it } from "vitest";
import { polygonArea } from "../../src/geometry";
import { type Drawing, joinLoops, readDrawing } from "../../src/sheet";

type Groups = readonly (readonly [number, string | number])[];

function file(entities: Groups, { header = [], blocks = [] }: { header?: Groups; blocks?: Groups } = {}): string {
  const section = (name: string, groups: Groups): Groups => [[0, "SECTION"], [2, name], ...groups, [0, "ENDSEC"]];
  return [
    ...section("HEADER", header),
    ...section("BLOCKS", blocks),
    ...section("ENTITIES", entities),
    [0, "EOF"] as const,
  ]
    .map(([code, value]) => `${code}\n${value}`)
    .join("\n");
}
const bytes = (text: string) => new TextEncoder().encode(text);
function drawingOf(text: string | Uint8Array): Drawing {
  const reading = readDrawing(typeof text === "string" ? bytes(text) : text);
  if (!reading.ok) throw new Error(reading.message);
  return reading.drawing;
}
const allPaths = (drawing: Drawing) => drawing.layers.flatMap(({ paths }) => paths);

const line = (x1: number, y1: number, x2: number, y2: number, layer = "0"): Groups => [
  [0, "LINE"],
  [8, layer],
  [10, x1],
  [20, y1],
  [11, x2],
  [21, y2],
];
const polyline = (points: readonly (readonly [number, number, number?])[], more: Groups = [], layer = "0"): Groups => [
  [0, "LWPOLYLINE"],
  [8, layer],
  [90, points.length],
  [70, 1],
  ...more,
  // Newer files put an identifier (group 91) behind each vertex.
  ...points.flatMap(
    ([x, y, bulge = 0]): Groups => [
      [10, x],
      [20, y],
      [42, bulge],
      [91, 0],
    ],
  ),
];
const insert = (name: string, x: number, y: number, more: Groups = [], layer = "0"): Groups => [
  [0, "INSERT"],
  [8, layer],
  [2, name],
  [10, x],
  [20, y],
  [30, 0],
  ...more,
];
const block = (name: string, entities: Groups, base: readonly [number, number] = [0, 0]): Groups => [
  [0, "BLOCK"],
  [8, "0"],
  [2, name],
  [70, 0],
  [10, base[0]],
  [20, base[1]],
  [30, 0],
  [3, name],
  ...entities,
  [0, "ENDBLK"],
];

describe("a drawing", () => {
  it("keeps forty layers apart", () => {
    const drawing = drawingOf(file(Array.from({ length: 40 }, (_, i) => line(0, i, 1, i, `L${i + 10}`)).flat()));
    expect(drawing.layers.map(({ name }) => name)).toEqual(Array.from({ length: 40 }, (_, i) => `L${i + 10}`));
    expect(drawing.layers.map(({ paths }) => paths[0]?.points)).toEqual(
      Array.from({ length: 40 }, (_, i) => [
        [0, i],
        [1, i],
      ]),
    );
  });

  it("says its unit where the file does, and asks where it does not", () => {
    expect(
      drawingOf(
        file(line(0, 0, 1, 0), {
          header: [
            [9, "$INSUNITS"],
            [70, 4],
          ],
        }),
      ).metresAUnit,
    ).toBe(0.001);
    expect(
      drawingOf(
        file(line(0, 0, 1, 0), {
          header: [
            [9, "$INSUNITS"],
            [70, 1],
          ],
        }),
      ).metresAUnit,
    ).toBe(0.0254);
    expect(
      drawingOf(
        file(line(0, 0, 1, 0), {
          header: [
            [9, "$INSUNITS"],
            [70, 0],
          ],
        }),
      ).metresAUnit,
    ).toBeNull();
    expect(drawingOf(file(line(0, 0, 1, 0))).metresAUnit).toBeNull();
  });

  it("puts a block within a mirrored and turned block where it belongs", () => {
    // A mark from (0, 0) to (1, 0) in `inner`; `outer` holds it at (2, 0) turned by 90°: (2, 0) to (2, 1).
    // The page holds `outer` at (10, 0) mirrored in x and turned by 90°: (x, y) → (10 − y, −x): (10, −2) to (9, −2).
    const blocks = [...block("inner", line(5, 5, 6, 5), [5, 5]), ...block("outer", insert("inner", 2, 0, [[50, 90]]))];
    const drawing = drawingOf(
      file(
        insert(
          "outer",
          10,
          0,
          [
            [41, -1],
            [50, 90],
          ],
          "steel",
        ),
        { blocks },
      ),
    );
    expect(drawing.layers.map(({ name }) => name)).toEqual(["steel"]);
    const [from, to] = allPaths(drawing)[0]?.points ?? [];
    expect(from?.[0]).toBeCloseTo(10, 12);
    expect(from?.[1]).toBeCloseTo(-2, 12);
    expect(to?.[0]).toBeCloseTo(9, 12);
    expect(to?.[1]).toBeCloseTo(-2, 12);
  });

  it("turns round what was drawn from below: polyline, circle, arc and insert", () => {
    const below: Groups = [
      [210, 0],
      [220, 0],
      [230, -1],
    ];
    const circle: Groups = [[0, "CIRCLE"], [8, "0"], [10, 3], [20, 1], [40, 0.5], ...below];
    const arc: Groups = [[0, "ARC"], [8, "0"], [10, 3], [20, 1], [40, 1], [50, 0], [51, 90], ...below];
    const paths = allPaths(
      drawingOf(
        file(
          [
            ...polyline(
              [
                [0, 0],
                [2, 0],
                [2, 1],
              ],
              below,
            ),
            ...circle,
            ...arc,
            ...insert("mark", 4, 0, below),
          ],
          {
            blocks: block("mark", line(0, 0, 1, 0)),
          },
        ),
      ),
    );
    expect(paths[0]?.points.slice(0, 3)).toEqual(
      [
        [-0, 0],
        [-2, 0],
        [-2, 1],
      ].map(([x, y]) => [expect.closeTo(x!), y]),
    );
    const xs = paths[1]?.points.map(([x]) => x) ?? [];
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([expect.closeTo(-3.5, 3), expect.closeTo(-2.5, 3)]);
    // Drawn from (4, 1) to (3, 2) about (3, 1); turned round from (−4, 1) to (−3, 2).
    expect(paths[2]?.points[0]).toEqual([expect.closeTo(-4), expect.closeTo(1)]);
    expect(paths[2]?.points.at(-1)).toEqual([expect.closeTo(-3), expect.closeTo(2)]);
    expect(paths[3]?.points).toEqual(
      [
        [-4, 0],
        [-5, 0],
      ].map(([x, y]) => [expect.closeTo(x!), expect.closeTo(y!)]),
    );
  });

  it("follows bulges: two half circles make a disc", () => {
    const [path] = allPaths(
      drawingOf(
        file(
          polyline([
            [-1, 0, 1],
            [1, 0, 1],
          ]),
        ),
      ),
    );
    // Chords inscribed in a circle of radius 1 with n chords: ½·n·sin(2π/n).
    const chords = (path?.points.length ?? 0) - 1;
    expect(polygonArea(path?.points.slice(0, -1) ?? [])).toBeCloseTo(
      0.5 * chords * Math.sin((2 * Math.PI) / chords),
      12,
    );
    expect(polygonArea(path?.points.slice(0, -1) ?? [])).toBeCloseTo(Math.PI, 2);
    // Positive bulge turns counter-clockwise: from (−1, 0) by way of (0, −1) to (1, 0).
    expect(Math.min(...(path?.points.map(([, y]) => y) ?? []))).toBeCloseTo(-1, 2);
  });

  it("reads names in the code page of its time, and escaped characters", () => {
    const header: Groups = [
      [9, "$ACADVER"],
      [1, "AC1015"],
      [9, "$DWGCODEPAGE"],
      [3, "ANSI_1251"],
    ];
    const text = file([...line(0, 0, 1, 0, "LAYER"), ...line(0, 0, 1, 0, "\\U+00DCberlauf")], { header });
    const encoded = bytes(text.replace("LAYER", "@@"));
    const at = encoded.indexOf("@".charCodeAt(0));
    encoded.set([0xc1, 0xe0], at); // windows-1251: Б, а
    expect(
      drawingOf(encoded)
        .layers.map(({ name }) => name)
        .sort(),
    ).toEqual(["Überlauf", "Ба"]);
  });

  it("repeats an insert in rows and columns", () => {
    const array: Groups = [
      [70, 3],
      [71, 2],
      [44, 2],
      [45, 5],
    ];
    const paths = allPaths(drawingOf(file(insert("mark", 0, 0, array), { blocks: block("mark", line(0, 0, 1, 0)) })));
    expect(paths.map(({ points }) => points[0])).toEqual([
      [0, 0],
      [2, 0],
      [4, 0],
      [0, 5],
      [2, 5],
      [4, 5],
    ]);
  });

  it("comes to an end where a block holds itself", () => {
    const drawing = drawingOf(
      file([...insert("loop", 0, 0)], { blocks: block("loop", [...line(0, 0, 1, 0), ...insert("loop", 1, 0)]) }),
    );
    expect(drawing.leftOut).toEqual(["block loop"]);
    expect(allPaths(drawing).length).toBeGreaterThan(1);
  });

  it.each([
    ["nothing at all", ""],
    ["a picture", "\u0089PNG\r\n\u001a\n\u0000\u0000"],
    ["a drawing cut off", file(line(0, 0, 1, 0)).slice(0, 60)],
    ["a drawing without lines", file([])],
  ])("is refused with one sentence: %s", (_, text) => {
    const reading = readDrawing(bytes(text));
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.message).toMatch(/^[A-Z][^\n]*\.$/);
  });
});

describe("loops", () => {
  it("close from lines in any order and direction, the greatest first", () => {
    const rectangle = [...line(4, 0, 0, 0), ...line(4, 2, 4, 0), ...line(0, 2, 4, 2), ...line(0, 2, 0, 0)];
    const hole = polyline([
      [1, 0.5],
      [2, 0.5],
      [2, 1],
    ]);
    const { loops, gaps } = joinLoops(allPaths(drawingOf(file([...hole, ...rectangle]))), 1e-6);
    expect(gaps).toEqual([]);
    expect(loops.map((loop) => polygonArea(loop))).toEqual([8, 0.25]);
  });

  it("that do not close name both ends and how wide the gap is", () => {
    const almost = [...line(0, 0, 4, 0), ...line(4, 0, 4, 2), ...line(4, 2, 0, 2), ...line(0, 2, 0, 0.03)];
    const paths = allPaths(drawingOf(file(almost)));
    const { loops, gaps } = joinLoops(paths, 0.001);
    expect(loops).toEqual([]);
    expect(gaps.map(({ distance }) => distance)).toEqual([expect.closeTo(0.03), expect.closeTo(0.03)]);
    expect(gaps.map(({ at }) => at)).toContainEqual([0, 0]);
    expect(gaps.map(({ at }) => at)).toContainEqual([0, 0.03]);
    expect(joinLoops(paths, 0.05).loops.map((loop) => polygonArea(loop))).toEqual([expect.closeTo(8, 1)]);
  });

  it("keep the points of a fine curve, however far apart ends may lie to be joined", () => {
    // A circle of radius 10 in 20 000 chords, each 0.003 long, open by 0.5.
    const count = 20_000;
    const open = Array.from({ length: count }, (_, k): readonly [number, number] => {
      const angle = 0.05 + ((2 * Math.PI - 0.05) * k) / (count - 1);
      return [10 * Math.cos(angle), 10 * Math.sin(angle)];
    });
    const path = { layer: "0", points: open, closed: false };
    expect(joinLoops([path], 0.1).gaps.map(({ distance }) => distance)).toEqual([
      expect.closeTo(20 * Math.sin(0.025), 9),
      expect.closeTo(20 * Math.sin(0.025), 9),
    ]);
    const [loop] = joinLoops([path], 1).loops;
    // The circle less the sliver that the chord of 0.05 rad cuts off: r²(φ − sin φ)/2.
    expect(polygonArea(loop!)).toBeCloseTo(100 * Math.PI - 50 * (0.05 - Math.sin(0.05)), 4);
  });

  it("are looked for among a hundred thousand ends as well", () => {
    const strokes = Array.from({ length: 50_000 }, (_, k) => {
      const [x, y] = [(k % 500) * 3, Math.floor(k / 500) * 3];
      return {
        layer: "0",
        points: [
          [x, y],
          [x + 1, y],
        ] as const,
        closed: false,
      };
    });
    const { loops, gaps } = joinLoops(strokes, 0.01);
    expect(loops).toEqual([]);
    expect(gaps).toHaveLength(100_000);
    // Along its own stroke the other end is 1 away, to the next stroke it is 2.
    expect(gaps.every(({ distance }) => distance === 1)).toBe(true);
  });
});
