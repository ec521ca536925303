/**
 * Dragging one of five stands on the built page, all overlays on, pointer moves at 125 Hz not waited for: how many
 * frames a second show a new reaction, and how much script a frame takes (from a trace of the browser).
 * Needs `npm run build` first.
 */

import type { Browser } from "playwright";
import { demoBeam } from "../src/library";
import type { PlanDocument, StandId } from "../src/plan";
import { writeReport } from "./measure";
import { servePage } from "./servePage";

const seconds = 6;

/** The key that says not to snap, so that every move gives another reaction. */
const alt = 1;

/** The lifting beam on five stands, in three steps. */
const plan: PlanDocument = {
  ...demoBeam,
  stands: [...demoBeam.stands, { ...demoBeam.stands[0]!, id: "H-05" as StandId }],
  layouts: demoBeam.layouts.map((layout) => ({
    ...layout,
    placements: [...layout.placements, { ...layout.placements[0]!, stand: "H-05" as StandId, s: 6 }],
  })),
  steps: ["set-down", "weld", "inspect"].map((id) => ({ ...demoBeam.steps[0]!, id: id as never, name: id })),
};

interface Setting {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly ratio: number;
  /** A worker of the browser computes all the while. */
  readonly busy?: boolean;
}
const settings: readonly Setting[] = [
  { name: "1440 × 900, pixel ratio 1", width: 1440, height: 900, ratio: 1 },
  { name: "1440 × 900, pixel ratio 2", width: 1440, height: 900, ratio: 2 },
  { name: "390 × 844, pixel ratio 2", width: 390, height: 844, ratio: 2 },
  { name: "1440 × 900, pixel ratio 1, a worker busy", width: 1440, height: 900, ratio: 1, busy: true },
];

interface Figures {
  readonly setting: string;
  /** Frames a second whose reaction numbers differ from the frame before. */
  readonly newReactions: number;
  readonly framesPerSecond: number;
  /** Script of a frame, ms. */
  readonly median: number;
  readonly p95: number;
}

async function measure(browser: Browser, address: string, setting: Setting): Promise<Figures> {
  const { width, height, ratio } = setting;
  const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: ratio });
  // The compiler marks functions with their names by a helper that the page does not have.
  await page.addInitScript({ content: "globalThis.__name = (named) => named;" });
  await page.addInitScript(watchNumbers);
  await page.addInitScript(() => Object.assign(window, { showOpenFilePicker: undefined }));
  await page.goto(address);
  await page.locator("[data-scale]").waitFor();
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Plan file" }).click();
  await page.getByRole("menuitem", { name: "Open a plan file" }).click();
  await (await chooser).setFiles({
    name: "five.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(plan)),
  });
  await page.waitForTimeout(4000);
  if (setting.busy === true) await page.evaluate("new Worker('data:text/javascript,for(;;);')");

  const camera = await page
    .locator("[data-scale]")
    .evaluate(({ dataset }) => ({ scale: Number(dataset.scale), s: Number(dataset.s) }));
  const box = (await page.locator("[data-drawing=elevation]").boundingBox())!;
  const x = (s: number): number => box.x + box.width / 2 + (s - camera.s) * camera.scale;
  const lanes = Number(await page.locator("[data-drawing=elevation]").getAttribute("data-lanes"));
  const y = box.y + (box.height - lanes) * 0.62;
  const session = await page.context().newCDPSession(page);
  const mouse = (type: "mouseMoved" | "mousePressed" | "mouseReleased", at: number) =>
    session.send("Input.dispatchMouseEvent", {
      type,
      x: at,
      y,
      modifiers: alt,
      button: "left",
      buttons: 1,
      clickCount: 1,
    });

  /** To and fro over 2 m, so that each move gives another reaction; seconds that it took. */
  const dragAlong = async (): Promise<number> => {
    await mouse("mousePressed", x(7.6));
    const start = performance.now();
    const time = (): number => (performance.now() - start) / 1000;
    await new Promise<void>((resolve) => {
      const timer = setInterval(() => {
        if (time() <= seconds) {
          void mouse("mouseMoved", x(8.6 + 0.9 * Math.sin(time() * 2)));
          return;
        }
        clearInterval(timer);
        resolve();
      }, 8);
    });
    return time();
  };
  await page.evaluate("numbers.begin()");
  const elapsed = await dragAlong();
  const { changed, frames } = (await page.evaluate("numbers.end()")) as { changed: number; frames: number };
  await page.keyboard.press("Escape");
  await mouse("mouseReleased", x(7.6));
  await page.waitForTimeout(1000);

  // Once more with a trace, which costs frames itself.
  await browser.startTracing(page, { categories: ["devtools.timeline", "disabled-by-default-devtools.timeline"] });
  await dragAlong();
  const trace = JSON.parse((await browser.stopTracing()).toString()) as { readonly traceEvents: readonly TraceEvent[] };
  await page.close();
  const script = scriptByFrame(trace.traceEvents);
  return {
    setting: setting.name,
    newReactions: changed / elapsed,
    framesPerSecond: frames / elapsed,
    median: quantile(script, 0.5),
    p95: quantile(script, 0.95),
  };
}

/** In the page: notes the bold numbers written on any canvas, and counts the frames in which they are others. */
function watchNumbers(): void {
  let written = "";
  let shown = "";
  let changed = 0;
  let frames = 0;
  const write = CanvasRenderingContext2D.prototype.fillText;
  CanvasRenderingContext2D.prototype.fillText = function (this: CanvasRenderingContext2D, text, ...place) {
    if (/^600 15px/.test(this.font) && /lb$/.test(text)) written += `${text} `;
    write.call(this, text, ...place);
  };
  const frame = (): void => {
    frames += 1;
    if (written !== "" && written !== shown) {
      shown = written;
      changed += 1;
    }
    written = "";
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
  Object.assign(window, {
    numbers: {
      begin: () => {
        changed = 0;
        frames = 0;
      },
      end: () => ({ changed, frames }),
    },
  });
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** µs. */
  readonly ts: number;
  readonly dur?: number;
  /** Time that the thread itself worked, µs: what else the machine does is not in it. */
  readonly tdur?: number;
}

const scripted = new Set([
  "FunctionCall",
  "EventDispatch",
  "FireAnimationFrame",
  "RunMicrotasks",
  "TimerFire",
  "EvaluateScript",
]);

/** ms of script on the page's main thread in each frame that has any, garbage collection within it included. */
function scriptByFrame(events: readonly TraceEvent[]): readonly number[] {
  const counts = new Map<string, number>();
  const key = ({ pid, tid }: TraceEvent): string => `${pid} ${tid}`;
  for (const event of events)
    if (event.name === "FireAnimationFrame") counts.set(key(event), (counts.get(key(event)) ?? 0) + 1);
  const main = [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
  const own = events.filter((event) => key(event) === main).sort((a, b) => a.ts - b.ts);
  const starts = own.filter(({ name }) => name === "FireAnimationFrame").map(({ ts }) => ts);
  const script = starts.map(() => 0);
  let until = 0;
  let frame = 0;
  for (const { name, ph, ts, dur = 0, tdur = dur } of own) {
    if (ph !== "X" || !scripted.has(name) || ts < until) continue;
    until = ts + dur;
    while (frame + 1 < starts.length && starts[frame + 1]! <= ts) frame += 1;
    script[frame] = (script[frame] ?? 0) + tdur / 1000;
  }
  return script.slice(1, -1).filter((time) => time > 0.3);
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

const { browser, address } = await servePage();
const results: Figures[] = [];
for (const setting of settings) {
  const figures = await measure(browser, address, setting);
  results.push(figures);
  const { newReactions, framesPerSecond, median, p95 } = figures;
  console.log(
    `${figures.setting}: ${newReactions.toFixed(1)} new reactions a second in ${framesPerSecond.toFixed(1)} frames; script a frame ${median.toFixed(1)} ms (median), ${p95.toFixed(1)} ms (95 %)`,
  );
}
await browser.close();
writeReport("bench-drag", { results });
process.exit(0);
