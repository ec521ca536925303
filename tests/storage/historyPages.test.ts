import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applied, differenceOf } from "../../src/storage/difference";
import {
  type HistoryRow,
  type KeptRows,
  nothingKept,
  type Past,
  packed,
  pageLength,
  unpacked,
} from "../../src/storage/historyPages";

interface Sheet {
  readonly title: string;
  readonly stands: readonly { readonly id: string; readonly s: number }[];
  readonly note?: string;
}

const first: Sheet = {
  title: "Beam",
  stands: Array.from({ length: 40 }, (_, index) => ({ id: `H-${index}`, s: index / 10 })),
};
const moved = (sheet: Sheet, index: number, s: number): Sheet => ({
  ...sheet,
  stands: sheet.stands.map((stand, at) => (at === index ? { ...stand, s } : stand)),
});

/** A store of rows as the database is one. */
function shelf() {
  const rows = new Map<number, HistoryRow>();
  let kept: KeptRows<Sheet> = nothingKept;
  return {
    keep: (past: Past<Sheet>, most?: number) => {
      const out = packed("plan", past, kept, most);
      for (const id of out.remove) rows.delete(id);
      for (const row of out.write) rows.set(row.id, row);
      kept = out.kept;
      return out;
    },
    rows: () => [...rows.values()],
  };
}

/** So many moves of one stand after the first sheet. */
function past(moves: number): Past<Sheet> {
  let document = first;
  const entries = [{ id: 0, label: "Opened", time: 0, burst: null, document }];
  for (let id = 1; id <= moves; id += 1) {
    document = moved(document, id % 40, id);
    entries.push({ id, label: `Move ${id}`, time: id, burst: null, document });
  }
  return { entries, at: moves };
}

describe("differences", () => {
  test("whatever two values are, the one with the difference is the other", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (a, b) => {
        // As it is read again: JSON knows no −0.
        const [before, after] = [JSON.parse(JSON.stringify(a)), JSON.parse(JSON.stringify(b))];
        const difference = JSON.parse(JSON.stringify(differenceOf(before, after)));
        expect(applied(before, difference)).toEqual(after);
      }),
      { seed: 20261125 },
    );
  });

  test("one number changed in a document of forty stands is one number, and the rest stays the same objects", () => {
    const after = moved(first, 7, 3.25);
    const difference = differenceOf(first, after);
    expect(difference).toEqual({ keys: { stands: { items: { 7: { keys: { s: { to: 3.25 } } } } } } });
    const again = applied(first, difference) as Sheet;
    expect(again).toEqual(after);
    expect(again.stands[6]).toBe(first.stands[6]);
  });

  test("keys that come and go, and values of another kind", () => {
    expect(differenceOf({ a: 1 }, { b: 1 })).toEqual({ keys: { b: { to: 1 } }, gone: ["a"] });
    expect(differenceOf([1, 2], [1, 2, 3])).toEqual({ to: [1, 2, 3] });
    expect(differenceOf({ a: 1 }, { a: 1 })).toBeNull();
    expect(applied({ a: { c: null } }, differenceOf({ a: { c: null } }, { a: [] }))).toEqual({ a: [] });
    expect(() => applied(3, { keys: {} })).toThrow();
  });
});

describe("pages of a history", () => {
  test("come back entry by entry, after one keeping or many", () => {
    const whole = past(100);
    const [at_once, one_by_one] = [shelf(), shelf()];
    at_once.keep(whole);
    for (let at = 0; at <= 100; at += 1) one_by_one.keep({ entries: whole.entries.slice(0, at + 1), at });
    for (const { rows } of [at_once, one_by_one]) expect(unpacked<Sheet>(rows())).toEqual(whole.entries);
    expect(at_once.rows().filter((row) => row.whole)).toHaveLength(Math.ceil(101 / pageLength));
  });

  test("a further entry writes one row, an undo none, and what is done after an undo takes the undone out", () => {
    const store = shelf();
    const three = past(3);
    store.keep(three);
    const four = past(4);
    expect(store.keep({ entries: [...three.entries, four.entries[4]!], at: 4 }).write.map(({ id }) => id)).toEqual([4]);
    expect(store.keep({ entries: [...three.entries, four.entries[4]!], at: 1 }).write).toEqual([]);
    const other = { ...four.entries[2]!, label: "Other", document: { ...first, note: "other" } };
    const out = store.keep({ entries: [...three.entries.slice(0, 2), other], at: 2 });
    expect(out.write.map(({ id }) => id)).toEqual([2]);
    expect([...out.remove].sort()).toEqual([3, 4]);
    expect(unpacked<Sheet>(store.rows()).map(({ label }) => label)).toEqual(["Opened", "Move 1", "Other"]);
  });

  test("past the limit the oldest pages go and do not come back; the page that is open stays", () => {
    const store = shelf();
    const whole = past(200);
    const most = 6000;
    store.keep(whole, most);
    const kept = unpacked<Sheet>(store.rows());
    expect(kept.at(-1)).toEqual(whole.entries.at(-1));
    expect(kept[0]!.id % pageLength).toBe(0);
    expect(kept[0]!.id).toBeGreaterThan(0);
    const size = store.rows().reduce((sum, { text, label }) => sum + text.length + label.length, 0);
    expect(size).toBeLessThanOrEqual(most);
    const again = past(201);
    store.keep({ entries: [...whole.entries, again.entries[201]!], at: 201 }, most);
    expect(unpacked<Sheet>(store.rows())[0]!.id).toBeGreaterThanOrEqual(kept[0]!.id);

    const early = shelf();
    early.keep({ ...whole, at: 3 }, most);
    expect(unpacked<Sheet>(early.rows())[0]!.id).toBe(0);
  });

  test("a row that cannot be read costs what comes before the next whole one", () => {
    const store = shelf();
    store.keep(past(70));
    const spoilt = store.rows().map((row) => (row.id === 40 ? { ...row, text: "{" } : row));
    expect(unpacked<Sheet>(spoilt).map(({ id }) => id)).toEqual([64, 65, 66, 67, 68, 69, 70]);
    const missing = store.rows().filter(({ id }) => id !== 66);
    expect(unpacked<Sheet>(missing)).toEqual([]);
  });
});
