/** A picture made ready for both themes: a drawing on white paper gets a negative, a photograph stays what it is. */

import type { ReadPicture } from "../../panels";

/** A picture lighter than this on the whole is a drawing on white paper, not a photograph. */
const paperWhite = 0.75;

/** The picture with its negative, where it is a drawing on white. */
export function readyToDraw(name: string, canvas: HTMLCanvasElement): ReadPicture {
  const { width, height } = canvas;
  return { name, image: canvas, negative: lightness(canvas) >= paperWhite ? negativeOf(canvas) : null, width, height };
}

/** How light a picture is on the whole: 0 black, 1 white. */
function lightness(canvas: HTMLCanvasElement): number {
  const sample = document.createElement("canvas");
  sample.width = 32;
  sample.height = 32;
  const paper = sample.getContext("2d", { willReadFrequently: true });
  if (paper === null) return 0;
  paper.fillStyle = "#ffffff";
  paper.fillRect(0, 0, 32, 32);
  paper.drawImage(canvas, 0, 0, 32, 32);
  const { data } = paper.getImageData(0, 0, 32, 32);
  let sum = 0;
  for (let at = 0; at < data.length; at += 4) sum += data[at]! + data[at + 1]! + data[at + 2]!;
  return sum / (3 * 255 * 32 * 32);
}

function negativeOf(canvas: HTMLCanvasElement): HTMLCanvasElement {
  const negative = document.createElement("canvas");
  negative.width = canvas.width;
  negative.height = canvas.height;
  const paper = negative.getContext("2d");
  if (paper === null) return canvas;
  paper.fillStyle = "#ffffff";
  paper.fillRect(0, 0, canvas.width, canvas.height);
  paper.globalCompositeOperation = "difference";
  paper.drawImage(canvas, 0, 0);
  return negative;
}
