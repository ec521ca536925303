import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { complete, read } from "../../../src/plan";
import { type Migration, migrated, migrations } from "../../../src/plan/file/migrations";
import { currentVersion } from "../../../src/plan/file/schema";

const versions = new URL("../versions/", import.meta.url);

describe("versions of the plan file", () => {
  it("each but the current one has a migration with a name of its own", () => {
    expect(migrations).toHaveLength(currentVersion - 1);
    expect(new Set(migrations.map(({ name }) => name)).size).toBe(migrations.length);
  });

  it("each has a stored file, which is still read", () => {
    const stored = readdirSync(versions).sort();
    expect(stored).toEqual(Array.from({ length: currentVersion }, (_, index) => `${index + 1}.json`));
    for (const name of stored) {
      const answer = read(readFileSync(new URL(name, versions)));
      expect(answer).toMatchObject({ ok: true });
      if (answer.ok) expect(complete(answer.document)).toMatchObject({ version: currentVersion });
    }
  });

  it("an older file goes through every migration from its version on, in order", () => {
    const said: Migration[] = [
      { name: "girth becomes width", migrate: ({ girth, ...file }) => ({ ...file, width: girth }) },
      { name: "width in metres", migrate: (file) => ({ ...file, width: (file.width as number) / 1000 }) },
    ];
    expect(migrated({ version: 1, girth: 200, kept: "as it was" }, 1, said)).toEqual({
      version: 3,
      width: 0.2,
      kept: "as it was",
    });
    expect(migrated({ version: 2, width: 200 }, 2, said)).toEqual({ version: 3, width: 0.2 });
    expect(migrated({ version: 3, width: 0.2 }, 3, said)).toEqual({ version: 3, width: 0.2 });
  });
});
