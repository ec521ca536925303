/**
 * The two drawings, one above the other to one scale along the piece. Konva paints; the pointers are our own, on the
 * elements that hold the stages.
 */

import Konva from "konva/lib/Core";
import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { complete, type Plan } from "../plan";
import { type Camera, shown, theEditor, useDrafting, useEditor, type View } from "../store";
import { useColours } from "../ui";
import {
  divided,
  type Extent,
  elevationMap,
  extentInBay,
  extentOf,
  fitted,
  planMap,
  type Sheet,
  shiftAlong,
} from "./camera";
import styles from "./canvas.module.css";
import { drawingHost } from "./draw/host";
import { useDraftCamera } from "./draw/useDraftCamera";
import { useDraftKeys } from "./draw/useDraftKeys";
import { ElevationView } from "./elevation/ElevationView";
import { ReadingWords } from "./elevation/ReadingWords";
import { oncePerFrame } from "./frames";
import { CarriedStand } from "./hand/CarriedStand";
import { elevationHand, planHand } from "./hand/hands";
import type { Drawn, HandOptions } from "./hand/hosts";
import { listen } from "./hand/pointers";
import type { Box } from "./labels";
import type { Look } from "./look";
import { PlanView } from "./planView/PlanView";
import { forgetWidths } from "./sketch";
import { type TouchedDimension, TypedDimension } from "./TypedDimension";
import { useBayInSight } from "./useBayInSight";
import { WalkwaysInWords } from "./walkways/WalkwaysInWords";

export function Drawings() {
  const holder = useRef<HTMLDivElement>(null);
  const planElement = useRef<HTMLDivElement>(null);
  const elevationElement = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<{ readonly width: number; readonly height: number } | null>(null);
  const [typed, setTyped] = useState<TouchedDimension | null>(null);
  const [box, setBox] = useState<BoxOn | null>(null);
  const pixelRatio = usePixelRatio();
  const look = useLook();
  const diagrams = useEditor((state) => state.view.overlays.diagrams);
  const wished = useEditor((state) => state.view.camera);
  const settled = useEditor((state) => complete(state.document));
  const pose = useEditor((state) => shown(state).piece.pose);

  useLayoutEffect(() => {
    const element = holder.current;
    if (element === null) return;
    const measure = (): void => {
      const { clientWidth: width, clientHeight: height } = element;
      setSize((before) => (before?.width === width && before.height === height ? before : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);

  const fit = useEditor((state) => state.view.fit);
  const extent = useExtent(settled, fit);
  const whole = useDrafting((state) => state.wholeSheet);
  const sheet = useMemo(() => {
    if (size === null) return null;
    const parts = divided(size.width, size.height, extent, diagrams);
    // Whoever draws has the whole sheet for the plan view; the elevation waits below its edge.
    return whole ? { ...parts, plan: size.height } : parts;
  }, [size, extent, diagrams, whole]);
  useDraftCamera(settled, sheet);
  useBayInSight(settled, sheet);
  const camera = useFittedCamera(extent, sheet, wished);
  const level = settled.piece.pose;
  const drawn = useMemo((): Drawn | null => {
    if (sheet === null || camera === null) return null;
    const planSize = { width: sheet.width, height: sheet.plan };
    const elevationSize = { width: sheet.width, height: sheet.elevation };
    return {
      camera,
      plan: planMap(camera, planSize, level, pose),
      elevation: elevationMap(camera, elevationSize, shiftAlong(level, pose)),
      look,
    };
  }, [sheet, camera, level, pose, look]);

  const latest = useRef<Drawn | null>(null);
  useLayoutEffect(() => {
    latest.current = drawn;
  }, [drawn]);
  const latestDrawn = useCallback(() => latest.current, []);
  const elements = useCallback(() => ({ plan: planElement.current, elevation: elevationElement.current }), []);
  useDraftKeys(latestDrawn);

  const ready = drawn !== null;
  useEffect(() => {
    const [plan, elevation] = [planElement.current, elevationElement.current];
    if (!ready || plan === null || elevation === null) return;
    const editor = theEditor();
    const onFrame = oncePerFrame();
    const options = (element: HTMLElement, drawing: BoxOn["drawing"]): HandOptions => ({
      editor,
      drawn: () => latest.current!,
      setCamera: (to) => onFrame(() => editor.look({ camera: to })),
      setCursor: (cursor) => {
        element.style.cursor = cursor;
      },
      showBox: (around) => setBox(around === null ? null : { drawing, ...around }),
      typeDimension: setTyped,
    });
    const stop = [
      listen(plan, drawingHost(planHand(options(plan, "plan")), options(plan, "plan"))),
      listen(elevation, elevationHand(options(elevation, "elevation"))),
    ];
    return () => {
      for (const end of stop) end();
    };
  }, [ready]);

  return (
    <div
      ref={holder}
      className={styles.drawings}
      data-scale={camera?.scale}
      data-s={camera?.s}
      data-t={camera?.t}
      data-z={camera?.z}
    >
      {drawn === null || sheet === null ? null : (
        <>
          <div
            ref={planElement}
            className={styles.drawing}
            data-drawing="plan"
            tabIndex={-1}
            style={{ height: sheet.plan }}
          >
            <PlanView key={pixelRatio} map={drawn.plan} look={look} />
            {box?.drawing === "plan" ? <SelectionBox {...box} /> : null}
          </div>
          <div
            ref={elevationElement}
            className={styles.drawing}
            data-drawing="elevation"
            data-lanes={sheet.diagrams}
            tabIndex={-1}
            style={{ height: sheet.elevation + sheet.diagrams }}
          >
            <ElevationView key={pixelRatio} map={drawn.elevation} diagrams={sheet.diagrams} look={look} />
            {box?.drawing === "elevation" ? <SelectionBox {...box} /> : null}
          </div>
          <CarriedStand elements={elements} drawn={latestDrawn} />
          <ReadingWords />
          <WalkwaysInWords />
          {typed === null ? null : <TypedDimension {...typed} close={() => setTyped(null)} />}
        </>
      )}
    </div>
  );
}

interface BoxOn extends Box {
  readonly drawing: "plan" | "elevation";
}

/** The box that selects the stands it touches. */
function SelectionBox({ left, top, right, bottom }: Box) {
  return <div className={styles.box} style={{ left, top, width: right - left, height: bottom - top }} />;
}

/** The extent of a plan: the same object for as long as it has the same numbers, so that other edits move nothing. */
function useExtent(plan: Plan, fit: View["fit"]): Extent {
  const now = useMemo(() => (fit === "bay" ? extentInBay(plan) : extentOf(plan)), [plan, fit]);
  const kept = useRef(now);
  const same = JSON.stringify(kept.current) === JSON.stringify(now);
  useLayoutEffect(() => {
    if (!same) kept.current = now;
  });
  return same ? kept.current : now;
}

/** The wished camera, or the one that fits the extent on the sheet. */
function useFittedCamera(extent: Extent, sheet: Sheet | null, wished: Camera | null): Camera | null {
  const fit = useMemo(() => (sheet === null ? null : fitted(extent, sheet)), [extent, sheet]);
  useEffect(() => {
    if (fit !== null) theEditor().look({ fitted: fit });
  }, [fit]);
  return wished ?? fit;
}

/** Colours and units as one object, another only when one of them is. */
function useLook(): Look {
  const { colours } = useColours();
  const display = useEditor((state) => shown(state).display);
  const [typeface, setTypeface] = useState(0);
  useEffect(() => {
    let gone = false;
    void document.fonts.ready.then(() => {
      forgetWidths();
      if (!gone) setTypeface(1);
    });
    return () => {
      gone = true;
    };
  }, []);
  return useMemo(() => ({ colours, display, typeface }), [colours, display, typeface]);
}

/** The screen's pixel ratio; Konva reads its own once, so the stages are made anew with another. */
function usePixelRatio(): number {
  const [ratio, setRatio] = useState(window.devicePixelRatio);
  Konva.pixelRatio = ratio;
  useEffect(() => {
    const query = window.matchMedia(`(resolution: ${ratio}dppx)`);
    const changed = (): void => setRatio(window.devicePixelRatio);
    query.addEventListener("change", changed);
    return () => query.removeEventListener("change", changed);
  }, [ratio]);
  return ratio;
}
