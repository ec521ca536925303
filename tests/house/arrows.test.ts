/** The linter holds the arrows between rooms: every import that DEVELOPERS.md forbids is planted once and must be caught. */
import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const engine = ["plan", "geometry", "statics", "floor", "checks", "placement"];
/** Room → the rooms that it may import (design of the house, "Which way arrows run"). */
const allowed: Record<string, readonly string[]> = {
  plan: [],
  geometry: ["plan"],
  statics: ["plan", "geometry"],
  floor: ["plan", "geometry"],
  checks: ["plan", "geometry", "statics", "floor"],
  placement: ["plan", "geometry", "statics", "floor", "checks"],
  library: ["plan"],
  ui: ["plan"],
  store: engine,
  canvas: [...engine, "store", "ui"],
  panels: [...engine, "store", "ui", "library"],
  worker: engine,
  storage: ["plan"],
  sheet: [...engine, "library"],
  cli: [...engine, "library", "sheet"],
  app: [...engine, "library", "store", "worker", "storage", "ui", "canvas", "panels", "sheet"],
};
const rooms = Object.keys(allowed);

/** Library → the rooms that alone may know it. */
const libraries: Record<string, readonly string[]> = {
  konva: ["canvas"],
  react: ["canvas", "panels", "ui", "app"],
  zustand: ["store"],
  "clipper2-ts": ["geometry"],
  idb: ["storage"],
  "node:fs": ["cli"],
};

interface Finding {
  readonly room: string;
  readonly line: number;
}

const root = join(import.meta.dirname, "..", "..");
let caught: readonly Finding[] = [];
let folder = "";

function specifiers(room: string): readonly string[] {
  const others = rooms.filter((other) => other !== room);
  return [...others.map((other) => `../${other}`), ...Object.keys(libraries), "../plan/types"];
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "arrows-"));
  copyFileSync(join(root, "biome.json"), join(folder, "biome.json"));
  for (const room of rooms) {
    mkdirSync(join(folder, "src", room), { recursive: true });
    const lines = specifiers(room).map((specifier) => `import "${specifier}";`);
    writeFileSync(join(folder, "src", room, "planted.ts"), `${lines.join("\n")}\n`);
  }
  const { stdout } = spawnSync(
    join(root, "node_modules", ".bin", "biome"),
    [
      "lint",
      "--vcs-enabled=false",
      "--only=style/noRestrictedImports",
      "--max-diagnostics=none",
      "--reporter=github",
      ".",
    ],
    { cwd: folder, encoding: "utf8", maxBuffer: 64 * 1024 * 1024 },
  );
  caught = [...stdout.matchAll(/file=[^,]*src\/(\w+)\/planted\.ts,line=(\d+)/g)].map(([, room, line]) => ({
    room: room ?? "",
    line: Number(line),
  }));
}, 60_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe.each(rooms)("imports of the room %s", (room) => {
  it("are refused exactly where the arrows forbid them", () => {
    const refused = specifiers(room).filter((_, index) =>
      caught.some((finding) => finding.room === room && finding.line === index + 1),
    );
    const forbiddenRooms = rooms.filter((other) => other !== room && !allowed[room]?.includes(other));
    const forbiddenLibraries = Object.entries(libraries).filter(([, owners]) => !owners.includes(room));
    expect(refused).toEqual(
      [
        ...forbiddenRooms.map((other) => `../${other}`),
        ...forbiddenLibraries.map(([library]) => library),
        // From inside the room `plan` the same words lead nowhere; everywhere else they go past a public face.
        "../plan/types",
      ].filter((specifier) => room !== "plan" || specifier !== "../plan/types"),
    );
  });
});
