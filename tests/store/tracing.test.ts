/** A traced picture scaled by two points and a length: the first point stays, the distance becomes the length. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { Point } from "../../src/plan";
import { bayToPicture, type PicturePlace, pictureToBay, scaledPlace, turnedPlace } from "../../src/store";

const place: PicturePlace = { x: 2, y: 3, angle: 0, metresAPixel: 0.01 };

test("a pixel lies where the place says", () => {
  expect(pictureToBay(place, [100, 50])).toEqual([3, 3.5]);
  const [x, y] = pictureToBay({ ...place, angle: 90 }, [100, 50]);
  expect(x).toBeCloseTo(1.5, 12);
  expect(y).toBeCloseTo(4, 12);
});

test("twice the length makes it twice as large about the first point", () => {
  const scaled = scaledPlace(
    place,
    [
      [3, 3],
      [5, 3],
    ],
    4,
  );
  expect(scaled.metresAPixel).toBeCloseTo(0.02, 12);
  expect([scaled.x, scaled.y]).toEqual([1, 3]);
});

test("a line can be laid along an axis, by the least turn", () => {
  // From (0, 0) to (1, 1): 45°, laid along x by −45°, along y by 45°.
  expect(
    scaledPlace(
      place,
      [
        [0, 0],
        [1, 1],
      ],
      1,
      "along x",
    ).angle,
  ).toBeCloseTo(-45, 9);
  expect(
    scaledPlace(
      place,
      [
        [0, 0],
        [1, 1],
      ],
      1,
      "along y",
    ).angle,
  ).toBeCloseTo(45, 9);
  // 170° is nearer to −x than to +x: 10° suffice.
  const slanting: Point = [Math.cos((170 * Math.PI) / 180), Math.sin((170 * Math.PI) / 180)];
  expect(scaledPlace(place, [[0, 0], slanting], 1, "along x").angle).toBeCloseTo(10, 9);
});

test("whatever is scaled, the pixels under the two points come to lie that far apart, the first where it was", () => {
  const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
  const point = fc.tuple(number(-20, 20), number(-20, 20));
  fc.assert(
    fc.property(
      point,
      point,
      number(0.1, 50),
      number(-180, 180),
      fc.constantFrom("as it lies", "along x", "along y"),
      (first, second, length, angle, lineUp) => {
        fc.pre(Math.hypot(first[0] - second[0], first[1] - second[1]) > 0.01);
        const turned = { ...place, angle };
        const pixels = [first, second].map((at) => bayToPicture(turned, at));
        const scaled = scaledPlace(turned, [first, second], length, lineUp as "as it lies");
        const [a, b] = pixels.map((pixel) => pictureToBay(scaled, pixel)) as [Point, Point];
        expect(Math.hypot(a[0] - first[0], a[1] - first[1])).toBeLessThan(1e-6);
        expect(Math.hypot(b[0] - a[0], b[1] - a[1])).toBeCloseTo(length, 6);
        if (lineUp === "along x") expect(Math.abs(b[1] - a[1])).toBeLessThan(1e-6);
        if (lineUp === "along y") expect(Math.abs(b[0] - a[0])).toBeLessThan(1e-6);
      },
    ),
    { numRuns: 200, seed: 20261125 },
  );
});

test("a quarter turn leaves the middle where it is", () => {
  const picture = { ...place, width: 400, height: 200 } as Parameters<typeof turnedPlace>[0];
  const turned = turnedPlace(picture, 1);
  const [before, after] = [pictureToBay(picture, [200, 100]), pictureToBay(turned, [200, 100])];
  expect(after[0]).toBeCloseTo(before[0], 12);
  expect(after[1]).toBeCloseTo(before[1], 12);
  expect(turned.angle).toBe(90);
});
