/**
 * The widest path in random rooms against two methods that share nothing with it: a flooded raster, and the bay shrunk and
 * the barriers grown by the clipping library, just below and just above the width. Each failure names its seed.
 */

import { afterAll, describe, expect, it } from "vitest";
import { type Barrier, widestPath } from "../../src/geometry";
import type { Point } from "../../src/plan";
import { discGetsThrough, floodedWidth, plainClearance, type Room, randomRoom } from "../geometry/rooms";

/** The accuracy asked for, m. */
const exactTo = 0.002;
const shares = { blocked: 0, "start or end": 0, pinch: 0 };

afterAll(() => {
  const all = shares.blocked + shares["start or end"] + shares.pinch;
  const percent = Object.entries(shares).map(([what, count]) => `${what} ${((100 * count) / all).toFixed(0)} %`);
  console.log(`widest path, ${all} rooms from seed 0: ${percent.join(", ")}`);
  expect(shares.pinch / all).toBeGreaterThan(0.2);
  expect(shares.blocked / all).toBeGreaterThan(0.05);
});

function widthOf({ barriers, from, to }: Room) {
  return widestPath(barriers, from, to);
}

describe("widest path in random rooms", () => {
  it("a disc 2 mm smaller gets through and one 2 mm larger does not (1 000 rooms)", () => {
    for (let seed = 0; seed < 1000; seed++) {
      const room = randomRoom(seed);
      const { width } = widthOf(room);
      if (width > 2 * exactTo) expect(discGetsThrough(room, width - exactTo), `seed ${seed}`).toBe(true);
      expect(discGetsThrough(room, width + exactTo), `seed ${seed}`).toBe(false);
    }
  });

  it("there is just so much room where it is tightest, and 0 goes with null (2 000 rooms)", () => {
    for (let seed = 0; seed < 2000; seed++) {
      const room = randomRoom(seed);
      const { width, narrowestAt } = widthOf(room);
      if (narrowestAt === null) {
        expect(width, `seed ${seed}`).toBe(0);
        shares.blocked++;
        continue;
      }
      expect(2 * plainClearance(room.barriers, narrowestAt), `seed ${seed}`).toBeCloseTo(width, 9);
      shares[[room.from, room.to].includes(narrowestAt) ? "start or end" : "pinch"]++;
    }
  });

  it("half the width to either side across the pinch stands what makes it (500 rooms)", () => {
    let seen = 0;
    for (let seed = 0; seed < 500; seed++) {
      const room = randomRoom(seed);
      const { width, narrowestAt, across } = widthOf(room);
      if (narrowestAt === null || across === null) continue;
      seen++;
      for (const side of [-1, 1]) {
        const end = [0, 1].map((axis) => narrowestAt[axis]! + (side * across[axis]! * width) / 2) as [number, number];
        expect(plainClearance(room.barriers, end), `seed ${seed}`).toBeCloseTo(0, 8);
      }
    }
    expect(seen).toBeGreaterThan(100);
  });

  it("agrees with a flooded raster to the raster's own accuracy (60 rooms)", () => {
    const step = 0.05;
    for (let seed = 0; seed < 60; seed++) {
      const room = randomRoom(seed);
      const difference = Math.abs(floodedWidth(room, step) - widthOf(room).width);
      expect(difference, `seed ${seed}`).toBeLessThan(2 * step * Math.SQRT2);
    }
  });

  it("is the same there and back, turned, mirrored, far away and in other units (500 rooms)", () => {
    const turned = ([x, y]: Point): Point => [0.6 * x - 0.8 * y + 300, 0.8 * x + 0.6 * y - 700];
    const mirrored = ([x, y]: Point): Point => [-x, y];
    const inInches = ([x, y]: Point): Point => [x / 0.0254, y / 0.0254];
    for (let seed = 0; seed < 500; seed++) {
      const room = randomRoom(seed);
      const { width } = widthOf(room);
      expect(widthOf({ ...room, from: room.to, to: room.from }).width, `seed ${seed}`).toBeCloseTo(width, 9);
      expect(widthOf(moved(room, turned, 1)).width, `seed ${seed}`).toBeCloseTo(width, 9);
      expect(widthOf(moved(room, mirrored, 1)).width, `seed ${seed}`).toBeCloseTo(width, 9);
      expect(0.0254 * widthOf(moved(room, inInches, 1 / 0.0254)).width, `seed ${seed}`).toBeCloseTo(width, 8);
    }
  });

  it("never widens when a barrier is added (500 rooms)", () => {
    for (let seed = 0; seed < 500; seed++) {
      const room = randomRoom(seed);
      const fewer = { ...room, barriers: room.barriers.slice(0, -1) };
      expect(widthOf(room).width, `seed ${seed}`).toBeLessThanOrEqual(widthOf(fewer).width + 1e-12);
    }
  });
});

function moved({ barriers, from, to }: Room, move: (point: Point) => Point, scale: number): Room {
  return {
    barriers: barriers.map(
      ({ ring, solid, radius }): Barrier => ({ ring: ring.map(move), solid, radius: radius * scale }),
    ),
    from: move(from),
    to: move(to),
  };
}
