import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { oncePerFrame } from "../../src/canvas/frames";

let frames: (() => void)[] = [];
let commits: (() => void)[] = [];
/** What is done as soon as a task has ended, as views follow a change of state. */
const settle = () => {
  for (const commit of commits.splice(0)) commit();
};
/** A frame: what has been asked for up to now runs in order; timeouts run after it. */
const frame = () => {
  for (const task of frames.splice(0)) {
    task();
    settle();
  }
  vi.runAllTimers();
};

beforeEach(() => {
  frames = [];
  commits = [];
  vi.useFakeTimers();
  vi.stubGlobal("requestAnimationFrame", (task: () => void) => frames.push(task));
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

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

test("every frame draws something new, with a drawing that asks for its frame when it has been changed", () => {
  const run = oncePerFrame();
  let value = 0;
  let asked = false;
  const shown: number[] = [];
  /** As the drawing does it: one request however many changes, made when the views have followed. */
  const change = (to: number) => {
    value = to;
    commits.push(() => {
      if (asked) return;
      asked = true;
      requestAnimationFrame(() => {
        asked = false;
        shown.push(value);
      });
    });
  };
  for (let round = 0; round < 40; round += 1) {
    for (let task = 0; task < 2; task += 1) {
      const to = round * 2 + task;
      run(() => change(to));
      settle();
    }
    frame();
  }
  expect(new Set(shown).size).toBeGreaterThanOrEqual(37);
});
