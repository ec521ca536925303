import { describe, expect, test } from "vitest";
import { type AutosaveState, createAutosave } from "../../src/storage";

/** A disk whose writes end when they are told to. */
function slowDisk() {
  const written: string[] = [];
  const ends: ((error?: Error) => void)[] = [];
  let inFlight = 0;
  let most = 0;
  return {
    written,
    most: () => most,
    write: (document: string) =>
      new Promise<void>((resolve, reject) => {
        inFlight += 1;
        most = Math.max(most, inFlight);
        ends.push((error) => {
          inFlight -= 1;
          if (error !== undefined) reject(error);
          else {
            written.push(document);
            resolve();
          }
        });
      }),
    end: async (error?: Error) => {
      ends.shift()?.(error);
      await new Promise((resolve) => setTimeout(resolve));
    },
  };
}

describe("autosave", () => {
  test("one write is in flight, the newest waits, what lies between is never written", async () => {
    const disk = slowDisk();
    const states: AutosaveState[] = [];
    const autosave = createAutosave(disk.write, (state) => states.push(state));
    for (const document of ["a", "b", "c", "d"]) autosave.save(document);
    await disk.end();
    expect(disk.written).toEqual(["a"]);
    autosave.save("e");
    await disk.end();
    await disk.end();
    await autosave.settled();
    expect(disk.written).toEqual(["a", "d", "e"]);
    expect(disk.most()).toBe(1);
    expect(states).toEqual([{ status: "saving" }, { status: "saved" }]);
  });

  test("a write that fails is said, and the next change is written", async () => {
    const disk = slowDisk();
    const states: AutosaveState[] = [];
    const autosave = createAutosave(disk.write, (state) => states.push(state));
    autosave.save("a");
    await disk.end(new Error("disk full"));
    expect(states.at(-1)).toEqual({ status: "failed", why: "disk full" });
    autosave.save("b");
    await disk.end();
    await autosave.settled();
    expect(disk.written).toEqual(["b"]);
    expect(states.at(-1)).toEqual({ status: "saved" });
  });

  test("a newer document that waits is written after a failure, and then all is well", async () => {
    const disk = slowDisk();
    const states: AutosaveState[] = [];
    const autosave = createAutosave(disk.write, (state) => states.push(state));
    autosave.save("a");
    autosave.save("b");
    await disk.end(new Error("busy"));
    await disk.end();
    await autosave.settled();
    expect(disk.written).toEqual(["b"]);
    expect(states.at(-1)).toEqual({ status: "saved" });
  });
});
