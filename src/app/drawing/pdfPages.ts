/** Pages of a PDF drawn as pictures, by the reader of the browser's own makers; all of it comes from this site. */

import { GlobalWorkerOptions, getDocument } from "pdfjs-dist";
import workerAddress from "pdfjs-dist/build/pdf.worker.min.mjs?url";
import dingbats from "pdfjs-dist/standard_fonts/FoxitDingbats.pfb?url";
import symbols from "pdfjs-dist/standard_fonts/FoxitSymbol.pfb?url";
import jbig2 from "pdfjs-dist/wasm/jbig2.wasm?url";
import openjpeg from "pdfjs-dist/wasm/openjpeg.wasm?url";
import qcms from "pdfjs-dist/wasm/qcms_bg.wasm?url";
import type { OpenedPicture } from "../../panels";
import { readyToDraw } from "./readyToDraw";

GlobalWorkerOptions.workerSrc = workerAddress;

/** What the reader may ask for while it draws: decoders of scanned pages, and the two fonts that no system has. */
const parts: Readonly<Record<string, string>> = {
  "jbig2.wasm": jbig2,
  "openjpeg.wasm": openjpeg,
  "qcms_bg.wasm": qcms,
  "FoxitSymbol.pfb": symbols,
  "FoxitDingbats.pfb": dingbats,
};

class BundledParts {
  async fetch({ filename }: { readonly filename: string }): Promise<Uint8Array> {
    const address = parts[filename];
    if (address === undefined) throw new Error(`${filename} is not bundled`);
    const answer = await fetch(address);
    return new Uint8Array(await answer.arrayBuffer());
  }
}

/** Opens a PDF; one sentence where it is none, or is locked by a password. */
export async function openPdf(file: File, longestSide: number): Promise<OpenedPicture | string> {
  const task = getDocument({
    data: new Uint8Array(await file.arrayBuffer()),
    isEvalSupported: false,
    useWorkerFetch: false,
    BinaryDataFactory: BundledParts,
  });
  const pdf = await task.promise.catch((error: unknown) => error as Error);
  if (pdf instanceof Error) {
    const locked = pdf.name === "PasswordException";
    return locked
      ? `${file.name} is locked by a password; save it without one and choose it again.`
      : `${file.name} could not be read as a PDF; export it again, or take a picture of the page.`;
  }
  return {
    name: file.name,
    pages: pdf.numPages,
    page: async (number) => {
      const page = await pdf.getPage(number);
      const { width, height } = page.getViewport({ scale: 1 });
      const viewport = page.getViewport({ scale: longestSide / Math.max(width, height) });
      const canvas = document.createElement("canvas");
      canvas.width = Math.round(viewport.width);
      canvas.height = Math.round(viewport.height);
      const drawn = await page.render({ canvas, viewport, background: "#ffffff" }).promise.then(
        () => true,
        () => false,
      );
      page.cleanup();
      const title = pdf.numPages === 1 ? file.name : `${file.name}, page ${number}`;
      return drawn ? readyToDraw(title, canvas) : `Page ${number} of ${file.name} could not be drawn.`;
    },
    close: () => void task.destroy(),
  };
}
