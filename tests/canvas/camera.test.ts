import { describe, expect, test } from "vitest";
import {
  divided,
  elevationMap,
  extentInBay,
  extentOf,
  fitted,
  onPaper,
  planMap,
  scaleLimits,
  shiftAlong,
  zoomed,
} from "../../src/canvas/camera";
import { complete, type Point } from "../../src/plan";
import { beam } from "../store/plans";

const sheet = { width: 1000, plan: 400, elevation: 260, diagrams: 200 };
const camera = { scale: 80, s: 6, t: 0.1, z: 0.7 };
const size = { width: 1000, height: 400 };
const nowhere = { x: 0, y: 0, heading: 0 };

const expectNear = (a: Point, b: Point) => {
  expect(a[0]).toBeCloseTo(b[0], 9);
  expect(a[1]).toBeCloseTo(b[1], 9);
};

describe("camera", () => {
  test("both drawings have one scale and one place along the piece", () => {
    const plan = planMap(camera, size, nowhere, nowhere);
    const elevation = elevationMap(camera, { width: 1000, height: 260 }, 0);
    for (const s of [-1, 0, 3.7, 12]) expect(plan.piece([s, 0])[0]).toBeCloseTo(elevation.x(s), 9);
    expect(plan.piece([7, 0])[0] - plan.piece([6, 0])[0]).toBeCloseTo(80, 9);
    expect(elevation.y(0) - elevation.y(1)).toBeCloseTo(80, 9);
  });

  test("the point under the pointer stays there when zooming, up to the limits of the scale", () => {
    for (const factor of [0.3, 0.9, 1.1, 7, 1e9, 1e-9]) {
      const about = { s: 2.3, t: -0.4 };
      const after = zoomed(camera, factor, about);
      const before = planMap(camera, size, nowhere, nowhere).piece([about.s, about.t]);
      expectNear(planMap(after, size, nowhere, nowhere).piece([about.s, about.t]), before);
      expect(after.scale).toBeGreaterThanOrEqual(scaleLimits.least);
      expect(after.scale).toBeLessThanOrEqual(scaleLimits.most);
    }
  });

  test("the fit shows the whole piece and the tops in both drawings", () => {
    for (const width of [390, 700, 1000, 2500]) {
      const extent = extentOf(complete(beam));
      const fit = fitted(extent, { ...sheet, width });
      const plan = planMap(fit, { width, height: sheet.plan }, nowhere, nowhere);
      const elevation = elevationMap(fit, { width, height: sheet.elevation }, 0);
      expect(plan.piece([0, 0])[0]).toBeGreaterThan(0);
      expect(plan.piece([12, 0])[0]).toBeLessThan(width);
      expect(plan.piece([0, 0.75])[1]).toBeGreaterThan(0);
      expect(plan.piece([0, -0.75])[1]).toBeLessThan(sheet.plan);
      expect(elevation.y(0)).toBeLessThan(sheet.elevation);
      expect(elevation.y(0.762 + 0.6)).toBeGreaterThan(0);
    }
  });

  test("pixels and places are each other's inverse, in the piece frame and in the bay, whatever the pose", () => {
    const level = { x: 3, y: 4, heading: 30 };
    const shown = { x: 3.5, y: 4.2, heading: 75 };
    const map = planMap(camera, size, level, shown);
    for (const point of [
      [0, 0],
      [3.2, -0.7],
      [12, 0.2],
    ] as const) {
      expectNear(map.toPiece(map.piece(point)), point);
      expectNear(map.toBay(map.bay(point)), point);
    }
  });

  test("the sheet lies along the piece: s to the right, and the bay is turned under it", () => {
    const pose = { x: 10, y: 2, heading: 90 };
    const map = planMap(camera, size, pose, pose);
    expect(map.piece([1, 0])[0] - map.piece([0, 0])[0]).toBeCloseTo(80, 9);
    // One metre along the piece is one metre along y in the bay.
    expectNear(map.bay([10, 3]), map.piece([1, 0]));
  });

  test("while the piece is moved the elevation moves along with it", () => {
    const level = { x: 1, y: 1, heading: 90 };
    expect(shiftAlong(level, { x: 1.25, y: 1.5, heading: 90 })).toBeCloseTo(0.5, 12);
    expect(shiftAlong(level, level)).toBe(0);
  });
});

describe("the sheet", () => {
  test("its drawings fill the height, whatever the size", () => {
    const extent = extentOf(complete(beam));
    for (const width of [360, 390, 684, 1020, 1900])
      for (const height of [200, 386, 640, 820, 1300])
        for (const diagrams of [true, false]) {
          const { plan, elevation, diagrams: lanes } = divided(width, height, extent, diagrams);
          expect(plan + elevation + lanes).toBe(height);
          expect(Math.min(plan, elevation)).toBeGreaterThan(0);
          expect(lanes === 0 || lanes >= 150).toBe(true);
          if (!diagrams) expect(lanes).toBe(0);
        }
  });
});

describe("the bay in sight", () => {
  // A bay of 30 m by 10 m with its corner at the origin; the piece lies in it from (4, 3), turned by a quarter.
  const inBay = complete({
    ...beam,
    piece: { ...beam.piece, pose: { x: 4, y: 3, heading: 90 } },
    bay: {
      floor: { slope: [0, 0] },
      outline: [
        [0, 0],
        [30, 0],
        [30, 10],
        [0, 10],
      ],
      obstacles: [],
      walkways: [{ name: "way", from: [1, -2], to: [29, -2], width: 0.8 }],
    },
  });

  test("the extent with the bay holds its corners and its walkways, in the piece frame", () => {
    // (x, y) → (s, t) = (y − 3, 4 − x).
    const { s, t } = extentInBay(inBay);
    expect(s[0]).toBeCloseTo(-5, 9);
    expect(s[1]).toBeCloseTo(12, 9);
    expect(t[0]).toBeCloseTo(-26, 9);
    expect(t[1]).toBeCloseTo(4, 9);
    expect(extentInBay({ ...inBay, bay: null })).toEqual(extentOf(inBay));
  });

  test("fitted to the bay, all of it lies on the paper; fitted to the piece, some does not", () => {
    const corners: readonly Point[] = [
      [-3, 4],
      [7, 4],
      [7, -26],
      [-3, -26],
    ];
    const around = fitted(extentInBay(inBay), sheet);
    expect(corners.every((corner) => onPaper(around, sheet, corner))).toBe(true);
    const close = fitted(extentOf(inBay), sheet);
    expect(corners.every((corner) => onPaper(close, sheet, corner))).toBe(false);
  });
});
