/** Drawing files written out group by group, as a drafting program would export them. */

type Groups = readonly (readonly [number, string | number])[];
type Corner = readonly [number, number];

export interface DxfLayer {
  readonly name: string;
  /** Closed outlines. */
  readonly rings?: readonly (readonly Corner[])[];
  /** Lines, one entity each. */
  readonly lines?: readonly (readonly [Corner, Corner])[];
  readonly circles?: readonly { readonly at: Corner; readonly radius: number }[];
}

function entitiesOf({ name, rings = [], lines = [], circles = [] }: DxfLayer): Groups {
  return [
    ...rings.flatMap(
      (ring): Groups => [
        [0, "LWPOLYLINE"],
        [8, name],
        [90, ring.length],
        [70, 1],
        ...ring.flatMap(
          ([x, y]): Groups => [
            [10, x],
            [20, y],
          ],
        ),
      ],
    ),
    ...lines.flatMap(
      ([[x1, y1], [x2, y2]]): Groups => [
        [0, "LINE"],
        [8, name],
        [10, x1],
        [20, y1],
        [11, x2],
        [21, y2],
      ],
    ),
    ...circles.flatMap(
      ({ at: [x, y], radius }): Groups => [
        [0, "CIRCLE"],
        [8, name],
        [10, x],
        [20, y],
        [40, radius],
      ],
    ),
  ];
}

/** A DXF file; `units` is $INSUNITS (4: millimetres, 1: inches, 6: metres), left out where the file does not say. */
export function dxf(layers: readonly DxfLayer[], units: number | null = null): string {
  const groups: Groups = [
    [0, "SECTION"],
    [2, "HEADER"],
    [9, "$ACADVER"],
    [1, "AC1027"],
    ...(units === null
      ? []
      : ([
          [9, "$INSUNITS"],
          [70, units],
        ] as const)),
    [0, "ENDSEC"],
    [0, "SECTION"],
    [2, "ENTITIES"],
    ...layers.flatMap(entitiesOf),
    [0, "ENDSEC"],
    [0, "EOF"],
  ];
  return groups.map(([code, value]) => `${code}\n${value}`).join("\n");
}

/** The edges of a rectangle as four lines, the last one `gap` short of its end. */
export function openRectangle([x1, y1]: Corner, [x2, y2]: Corner, gap: number): readonly (readonly [Corner, Corner])[] {
  return [
    [
      [x1, y1],
      [x2, y1],
    ],
    [
      [x2, y1],
      [x2, y2],
    ],
    [
      [x2, y2],
      [x1, y2],
    ],
    [
      [x1, y2],
      [x1, y1 + gap],
    ],
  ];
}

/**
 * A die, 1200 across and 3000 long, drawn upright in millimetres, with a gap of 3 in its outline, two holes, and
 * layers of dimensions and notes that are not wanted.
 */
export const die = (units: number | null): string =>
  dxf(
    [
      { name: "OUTLINE", lines: openRectangle([100, 200], [1300, 3200], 3) },
      {
        name: "HOLES",
        circles: [{ at: [700, 900], radius: 150 }],
        rings: [
          [
            [400, 2400],
            [1000, 2400],
            [1000, 2700],
            [400, 2700],
          ],
        ],
      },
      {
        name: "DIM",
        lines: [
          [
            [0, 200],
            [0, 3200],
          ],
        ],
      },
      ...Array.from({ length: 37 }, (_, index) => ({
        name: `NOTE-${index + 1}`,
        lines: [
          [
            [1500, index * 80],
            [1900, index * 80],
          ],
        ] as const,
      })),
    ],
    units,
  );

/** A bay of 20 m by 9 m in metres, with two columns, a trench and furniture that is left out. */
export const hall = dxf(
  [
    {
      name: "WALLS",
      rings: [
        [
          [5, 5],
          [25, 5],
          [25, 14],
          [5, 14],
        ],
      ],
    },
    {
      name: "COLUMNS",
      rings: [
        [
          [10, 13],
          [10.4, 13],
          [10.4, 13.4],
          [10, 13.4],
        ],
        [
          [20, 13],
          [20.4, 13],
          [20.4, 13.4],
          [20, 13.4],
        ],
      ],
    },
    {
      name: "TRENCH",
      rings: [
        [
          [8, 5.5],
          [22, 5.5],
          [22, 6],
          [8, 6],
        ],
      ],
    },
    {
      name: "BENCHES",
      rings: [
        [
          [6, 12],
          [8, 12],
          [8, 13],
          [6, 13],
        ],
      ],
    },
  ],
  6,
);
