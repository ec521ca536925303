/** Keeps the traced picture of each plan in the browser's database, and brings it back with the plan. */

import { openPictures, type PictureDatabase } from "../../storage";
import { draftingOf, type Editor, type PicturePlace, type TracedPicture } from "../../store";
import { readyToDraw } from "./readyToDraw";

interface Place extends PicturePlace {
  readonly strength: number;
  readonly shown: boolean;
  readonly scaled: boolean;
}

/** How long after the last move the place is written, ms. */
const pause = 400;

const placeOf = ({ x, y, angle, metresAPixel, strength, shown, scaled }: TracedPicture): Place => ({
  x,
  y,
  angle,
  metresAPixel,
  strength,
  shown,
  scaled,
});

/** Begins to keep; gives the function that stops. A browser that keeps nothing keeps no picture either. */
export function keepPicture(editor: Editor): () => void {
  const drafting = draftingOf(editor);
  const database = openPictures<Place>().catch(() => null);
  let record = editor.state().origin.record;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** The image that is in the database, so that a move writes its place alone. */
  let kept: CanvasImageSource | null = null;
  /** While a picture is being brought back it is not written again. */
  let bringing = false;

  async function bringBack(plan: string | null): Promise<void> {
    bringing = true;
    drafting.setPicture(null);
    kept = null;
    const found = plan === null ? null : await (await database)?.load(plan).catch(() => null);
    const picture = found == null ? null : await pictureOf(found.name, found.file, found.place);
    if (plan === record && picture !== null) {
      kept = picture.image;
      drafting.setPicture(picture);
    }
    bringing = false;
  }

  async function write(plan: string, picture: TracedPicture | null, open: PictureDatabase<Place>): Promise<void> {
    if (picture === null) {
      kept = null;
      await open.remove(plan);
    } else if (picture.image === kept) await open.place(plan, placeOf(picture));
    else {
      const file = await fileOf(picture.image);
      if (file === null) return;
      kept = picture.image;
      await open.keep(plan, { name: picture.name, file, place: placeOf(picture) });
    }
  }

  const stops = [
    editor.store.subscribe(({ origin }) => {
      if (origin.record === record) return;
      record = origin.record;
      clearTimeout(timer);
      void bringBack(record);
    }),
    drafting.store.subscribe(({ picture }, before) => {
      if (picture === before.picture || bringing) return;
      clearTimeout(timer);
      const plan = record;
      timer = setTimeout(() => {
        void database.then(async (open) => {
          if (open !== null && plan !== null) await write(plan, picture, open).catch(() => {});
        });
      }, pause);
    }),
  ];
  void bringBack(record);
  return () => {
    for (const stop of stops) stop();
  };
}

async function pictureOf(name: string, file: Blob, place: Place): Promise<TracedPicture | null> {
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (bitmap === null) return null;
  const canvas = document.createElement("canvas");
  canvas.width = bitmap.width;
  canvas.height = bitmap.height;
  canvas.getContext("2d")?.drawImage(bitmap, 0, 0);
  bitmap.close();
  return { ...readyToDraw(name, canvas), ...place };
}

function fileOf(image: CanvasImageSource): Promise<Blob | null> {
  return new Promise((resolve) => {
    if (image instanceof HTMLCanvasElement) image.toBlob(resolve, "image/png");
    else resolve(null);
  });
}
