import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { oncePerFrame } from "../../src/canvas/frames";

let frames: (() => void)[] = [];
/** A frame: what has been asked for up to now runs in order, each with what it does behind itself. */
const frame = async () => {
  for (const task of frames.splice(0)) {
    task();
    for (let turn = 0; turn < 20; turn += 1) await undefined;
  }
};

beforeEach(() => {
  frames = [];
  vi.stubGlobal("requestAnimationFrame", (task: () => void) => frames.push(task));
});
afterEach(() => vi.unstubAllGlobals());

test("of what is handed in before a frame only the newest runs, in that frame", async () => {
  const ran: number[] = [];
  const run = oncePerFrame();
  for (const task of [1, 2, 3, 4]) run(() => ran.push(task));
  expect(ran).toEqual([]);
  await frame();
  expect(ran).toEqual([4]);
  for (const task of [5, 6]) run(() => ran.push(task));
  await frame();
  expect(ran).toEqual([4, 6]);
  await frame();
  await frame();
  run(() => ran.push(7));
  await frame();
  expect(ran).toEqual([4, 6, 7]);
});

test("nothing is asked for when there is nothing to do", async () => {
  const run = oncePerFrame();
  run(() => {});
  await frame();
  await frame();
  expect(frames).toEqual([]);
});

/** A drawing: one request however many changes, made when the views have followed the change. */
function drawing() {
  let value = 0;
  let asked = false;
  const shown: number[] = [];
  return {
    shown,
    change: (to: number) => {
      value = to;
      queueMicrotask(() => {
        if (asked) return;
        asked = true;
        requestAnimationFrame(() => {
          asked = false;
          shown.push(value);
        });
      });
    },
  };
}

test.each([
  ["one move a frame", [1]],
  ["two moves a frame", [2]],
  ["moves that come unevenly", [2, 1, 0, 1, 1, 2, 0, 0, 3, 1]],
])("%s: every frame with a move shows something new, in the frame after", async (_, moves) => {
  const run = oncePerFrame();
  const { change, shown } = drawing();
  let number = 0;
  let framesWithMoves = 0;
  for (let round = 0; round < 60; round += 1) {
    const count = moves[round % moves.length]!;
    if (count > 0) framesWithMoves += 1;
    for (let move = 0; move < count; move += 1) {
      number += 1;
      const to = number;
      run(() => change(to));
    }
    await frame();
  }
  await frame();
  expect(new Set(shown).size).toBe(framesWithMoves);
  expect(shown.at(-1)).toBe(number);
});
