import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { oncePerFrame } from "../../src/canvas/frames";

let frames: (() => void)[] = [];
const frame = () => {
  for (const task of frames.splice(0)) task();
};

beforeEach(() => {
  frames = [];
  vi.stubGlobal("requestAnimationFrame", (task: () => void) => frames.push(task));
});
afterEach(() => vi.unstubAllGlobals());

test("the first task of a frame runs at once, of the others only the newest, in the next frame", () => {
  const ran: number[] = [];
  const run = oncePerFrame();
  for (const task of [1, 2, 3, 4]) run(() => ran.push(task));
  expect(ran).toEqual([1]);
  frame();
  expect(ran).toEqual([1, 4]);
  for (const task of [5, 6]) run(() => ran.push(task));
  expect(ran).toEqual([1, 4]);
  frame();
  expect(ran).toEqual([1, 4, 6]);
  frame();
  frame();
  run(() => ran.push(7));
  expect(ran).toEqual([1, 4, 6, 7]);
});

test("never more than one a frame, never the last one lost", () => {
  const run = oncePerFrame();
  let last = 0;
  for (let round = 0; round < 50; round += 1) {
    let thisFrame = 0;
    for (let task = 0; task < 3; task += 1) {
      const number = round * 3 + task;
      run(() => {
        thisFrame += 1;
        last = number;
      });
    }
    expect(thisFrame).toBeLessThanOrEqual(1);
    frame();
  }
  frame();
  frame();
  expect(last).toBe(149);
});
