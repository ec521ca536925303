/** Saving as one goes: one write in flight, the newest waiting; what lies between is never written. */

export type AutosaveState =
  | { readonly status: "saved" }
  | { readonly status: "saving" }
  /** The last write went wrong; the next change tries again. */
  | { readonly status: "failed"; readonly why: string };

export interface Autosave<Document> {
  /** Writes a document, now or as soon as the write in flight has ended. */
  readonly save: (document: Document) => void;
  /** Resolves when nothing is in flight or waiting. */
  readonly settled: () => Promise<void>;
}

/** `write` resolves once its document is kept for good. */
export function createAutosave<Document>(
  write: (document: Document) => Promise<void>,
  tell: (state: AutosaveState) => void,
): Autosave<Document> {
  let waiting: { readonly document: Document } | null = null;
  let running: Promise<void> | null = null;

  async function run(): Promise<void> {
    tell({ status: "saving" });
    let state: AutosaveState = { status: "saved" };
    while (waiting !== null) {
      const { document } = waiting;
      waiting = null;
      try {
        await write(document);
        state = { status: "saved" };
      } catch (error) {
        state = { status: "failed", why: error instanceof Error ? error.message : String(error) };
      }
    }
    running = null;
    tell(state);
  }

  return {
    save: (document) => {
      waiting = { document };
      running ??= run();
    },
    settled: async () => {
      while (running !== null) await running;
    },
  };
}
