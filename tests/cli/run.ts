/** Runs the command line as it is built. */

import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** The built file, in a folder of its own. */
export async function builtCommand(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "trestleboard-cli-"));
  await build({ configFile: "vite.cli.config.ts", logLevel: "silent", build: { outDir: folder, emptyOutDir: true } });
  return join(folder, "main.js");
}

export function run(command: string, words: readonly string[], folder?: string): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...words], {
    encoding: "utf8",
    ...(folder === undefined ? {} : { cwd: folder }),
    maxBuffer: 1e9,
  });
  return { status, out: stdout, err: stderr };
}

/** A folder that is gone after the tests. */
export function workFolder(): {
  readonly folder: string;
  readonly write: (name: string, content: string | Uint8Array) => string;
  readonly remove: () => void;
} {
  const folder = mkdtempSync(join(tmpdir(), "trestleboard-plans-"));
  return {
    folder,
    write: (name, content) => {
      const path = join(folder, name);
      writeFileSync(path, content);
      return path;
    },
    remove: () => rmSync(folder, { recursive: true }),
  };
}
