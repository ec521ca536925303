/**
 * Opening the built page for the first time: when the first reaction stands on the canvas, and how much was loaded by then
 * and in the seconds after, compressed. Needs `npm run build` first.
 */

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser } from "playwright";
import { writeReport } from "./measure";
import { root, servePage } from "./servePage";

const runs = 5;
/** What is loaded without being asked for comes within this, ms. */
const settling = 6000;

/** In the page: notes when the first bold number with its unit is written on any canvas, ms from the start of loading. */
function watchFirstNumber(): void {
  const write = CanvasRenderingContext2D.prototype.fillText;
  CanvasRenderingContext2D.prototype.fillText = function (this: CanvasRenderingContext2D, text, ...place) {
    if (/^600 15px/.test(this.font) && /lb$/.test(text)) {
      (window as { firstNumber?: number }).firstNumber ??= performance.now();
    }
    write.call(this, text, ...place);
  };
}

async function open(browser: Browser, address: string): Promise<{ firstNumber: number; bytes: number }> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  const asked = new Set<string>();
  context.on("request", (request) => {
    if (request.url().startsWith(address)) asked.add(new URL(request.url()).pathname);
  });
  await page.addInitScript(watchFirstNumber);
  await page.goto(address);
  await page.waitForFunction("window.firstNumber !== undefined");
  const firstNumber = (await page.evaluate("window.firstNumber")) as number;
  await page.waitForTimeout(settling);
  await context.close();
  const sizes = [...asked].map((path) => {
    const content = readFileSync(join(root, "dist", path === "/" ? "index.html" : path));
    // Fonts are compressed as they are.
    return path.endsWith(".woff2") ? content.length : gzipSync(content).length;
  });
  return { firstNumber, bytes: sizes.reduce((sum, size) => sum + size, 0) };
}

const { browser, address } = await servePage();
const opened: { firstNumber: number; bytes: number }[] = [];
for (let run = 0; run < runs; run++) opened.push(await open(browser, address));
await browser.close();
const times = opened.map(({ firstNumber }) => firstNumber).sort((a, b) => a - b);
const figures = {
  firstNumberMedian: times[runs >> 1]!,
  firstNumberMost: times.at(-1)!,
  kilobytes: Math.max(...opened.map(({ bytes }) => bytes)) / 1000,
};
console.log(
  `first reaction on the canvas after ${figures.firstNumberMedian.toFixed(0)} ms (median of ${runs}; most ${figures.firstNumberMost.toFixed(0)} ms), of 1000 ms`,
);
console.log(`first download ${figures.kilobytes.toFixed(1)} kB compressed, of 450 kB`);
writeReport("bench-start", figures);
process.exit(0);
