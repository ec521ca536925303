/** Reading a plan file from disk; never more of it than a plan may hold. */

import { closeSync, openSync, readSync, statSync } from "node:fs";
import { tooLarge } from "../plan";

export type FileRead =
  | { readonly kind: "read"; readonly bytes: Uint8Array }
  /** `why` is one sentence. */
  | { readonly kind: "refused"; readonly why: string };

/** The bytes of a regular file, or why they cannot be had. */
export function readFile(path: string): FileRead {
  try {
    // Asked before opening: opening a pipe that nobody writes to would wait for ever.
    const stat = statSync(path);
    if (stat.isDirectory()) return refused("This is a folder; name the plan file in it.");
    if (!stat.isFile()) return refused("This is not a regular file; save the plan to a file first.");
    const refusal = tooLarge(stat.size);
    if (refusal !== null) return refused(refusal.message);
    return { kind: "read", bytes: bytesOf(path, stat.size) };
  } catch (error) {
    return refused(whyNot(error));
  }
}

function bytesOf(path: string, size: number): Uint8Array {
  const descriptor = openSync(path, "r");
  try {
    const bytes = new Uint8Array(size);
    let filled = 0;
    while (filled < size) {
      const count = readSync(descriptor, bytes, filled, size - filled, filled);
      if (count === 0) break;
      filled += count;
    }
    return bytes.subarray(0, filled);
  } finally {
    closeSync(descriptor);
  }
}

function refused(why: string): FileRead {
  return { kind: "refused", why };
}

function whyNot(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  switch (code) {
    case "ENOENT":
      return "There is no such file; check its name and folder.";
    case "EACCES":
    case "EPERM":
      return "The file may not be read; ask for the permission to read it.";
    case "ENOTDIR":
      return "A part of the path is a file, not a folder; check the path.";
    case "ELOOP":
      return "The path runs in a circle of links; check the path.";
    case "ENAMETOOLONG":
      return "The path is too long to be one; check the path.";
    default:
      return `The file cannot be read (${code || "no reason given"}).`;
  }
}
