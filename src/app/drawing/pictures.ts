/** Pictures to trace: PNG and JPEG by the browser itself, pages of a PDF by a reader that comes when it is asked for. */

import type { OpenedPicture, PictureSource } from "../../panels";
import { readyToDraw } from "./readyToDraw";

/** The longer side of what is drawn, px: lines of a large sheet stay legible, and a phone can still hold it. */
const longestSide = 3200;

export const pictureSource: PictureSource = {
  open: async (file) => {
    const isPdf = file.type === "application/pdf" || file.name.toLowerCase().endsWith(".pdf");
    if (!isPdf) return openImage(file);
    const { openPdf } = await import("./pdfPages");
    return openPdf(file, longestSide);
  },
};

async function openImage(file: File): Promise<OpenedPicture | string> {
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (bitmap === null) return `${file.name} is not a picture that this browser can show; take a PNG or a JPEG file.`;
  const canvas = drawnOn(bitmap);
  bitmap.close();
  return { name: file.name, pages: 1, page: async () => readyToDraw(file.name, canvas), close: () => {} };
}

/** A picture on a canvas, made smaller where it is larger than it need be. */
function drawnOn(image: ImageBitmap): HTMLCanvasElement {
  const scale = Math.min(1, longestSide / Math.max(image.width, image.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(image.width * scale));
  canvas.height = Math.max(1, Math.round(image.height * scale));
  canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas;
}
