/** Plan files on the person's own disk: with the browser's file pickers where it has them, else upload and download. */

/** What the File System Access API adds to a window, as far as it is used here. */
interface Pickers {
  readonly showOpenFilePicker?: (options: object) => Promise<readonly FileSystemFileHandle[]>;
  readonly showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
}

export interface OpenedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** To save to the same file again; null where it was uploaded. */
  readonly handle: FileSystemFileHandle | null;
}

export interface SavedFile {
  readonly name: string;
  readonly handle: FileSystemFileHandle | null;
}

const kinds = [{ description: "Plan of a set-down", accept: { "application/json": [".json"] } }];

/** A file is larger than any plan may be: it is not read at all. */
export const largestFile = 16_000_000;

/** Asks for a file to open; null where the person changes their mind. */
export async function openFile(): Promise<OpenedFile | null> {
  const { showOpenFilePicker } = window as unknown as Pickers;
  if (showOpenFilePicker === undefined) return upload();
  const handles = await pick(() => showOpenFilePicker.call(window, { types: kinds }));
  const handle = handles?.[0];
  return handle === undefined ? null : readFile(await handle.getFile(), handle);
}

/** A file that was dropped or uploaded. A file too large to be a plan comes cut off behind the limit, and is refused. */
export async function readFile(file: File, handle: FileSystemFileHandle | null = null): Promise<OpenedFile> {
  const bytes = new Uint8Array(await file.slice(0, largestFile + 1).arrayBuffer());
  return { name: file.name, bytes, handle };
}

/** Writes a file: to `handle`, or to where the person says, or as a download. null where they change their mind. */
export async function saveFile(
  text: string,
  name: string,
  handle: FileSystemFileHandle | null,
): Promise<SavedFile | null> {
  const { showSaveFilePicker } = window as unknown as Pickers;
  if (handle === null && showSaveFilePicker === undefined) return download(text, name);
  const to = handle ?? (await pick(() => showSaveFilePicker!.call(window, { suggestedName: name, types: kinds })));
  if (to === null) return null;
  const stream = await to.createWritable();
  await stream.write(text);
  await stream.close();
  return { name: to.name, handle: to };
}

/** A file name that says what is in it: the title with what no file system takes left out. */
export function fileNameFor(title: string): string {
  const plain = title
    .normalize("NFKC")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${plain === "" ? "plan" : plain}.json`;
}

async function pick<Handle>(ask: () => Promise<Handle>): Promise<Handle | null> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") return null;
    throw error;
  }
}

function upload(): Promise<OpenedFile | null> {
  return new Promise((resolve, reject) => {
    const input = document.createElement("input");
    input.type = "file";
    input.accept = ".json,application/json";
    input.addEventListener("cancel", () => resolve(null));
    input.addEventListener("change", () => {
      const file = input.files?.[0];
      if (file === undefined) resolve(null);
      else readFile(file).then(resolve, reject);
    });
    input.click();
  });
}

function download(text: string, name: string): SavedFile {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
  return { name, handle: null };
}
