/**
 * How plan files of older versions become files of the current one. Each version that is left behind gets an entry
 * here and keeps a file in tests/plan/versions.
 */

export interface Migration {
  /** What it changes, in a few words. */
  readonly name: string;
  /** A file of one version as the next version has it. Keys that it does not know it leaves for the reader to refuse. */
  migrate(file: Readonly<Record<string, unknown>>): Record<string, unknown>;
}

/** The migration from version n stands at index n − 1. */
export const migrations: readonly Migration[] = [];

/** The file brought from its version to the one after the last migration. */
export function migrated(
  file: Readonly<Record<string, unknown>>,
  version: number,
  steps: readonly Migration[] = migrations,
): Readonly<Record<string, unknown>> {
  return steps
    .slice(version - 1)
    .reduce((older, step, index) => ({ ...step.migrate(older), version: version + index + 1 }), file);
}
