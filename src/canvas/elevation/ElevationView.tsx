/** The elevation with the diagrams beneath it, on one stage. */

import { memo, useLayoutEffect, useMemo, useRef, useState } from "react";
import { Layer, Stage } from "react-konva/lib/ReactKonvaCore";
import type { VerdictSoFar } from "../../checks";
import type { Plan } from "../../plan";
import {
  layoutInView,
  levelInView,
  selectedStands,
  shown,
  standIdsInView,
  stepInView,
  useEditor,
  useEditorList,
} from "../../store";
import { settleTime } from "../../ui";
import type { ElevationMap } from "../camera";
import { JointSpotsInElevation } from "../growing/JointSpots";
import { SignsInElevation } from "../growing/StepSigns";
import type { Look } from "../look";
import { reactionVerdict } from "../verdicts";
import { Diagrams, Reading } from "./Diagrams";
import { PieceInElevation } from "./PieceInElevation";
import { between, factorFor, floorUnder, type Profile, profileOf } from "./profile";
import { Reactions } from "./Reactions";
import { FloorInElevation, GapsInElevation, StandsInElevation } from "./StandsInElevation";

interface ViewProps {
  readonly map: ElevationMap;
  /** Height of the diagrams beneath the elevation, px. */
  readonly diagrams: number;
  readonly look: Look;
}

export const ElevationView = memo(function ElevationView({ map, diagrams, look }: ViewProps) {
  const { width, height } = map.size;
  // What belongs together goes down together: the stage draws its children by itself.
  const plan = useEditor(shown);
  const profile = useProfile(map.scale);
  return (
    <Stage width={width} height={height + diagrams} listening={false}>
      <Layer listening={false}>
        <Floor map={map} look={look} />
      </Layer>
      <Layer listening={false}>
        <Stands plan={plan} profile={profile} map={map} look={look} />
        <Piece plan={plan} profile={profile} map={map} look={look} />
        <Signs plan={plan} profile={profile} map={map} look={look} />
        <Gaps plan={plan} profile={profile} map={map} look={look} />
        <ReactionNumbers profile={profile} map={map} look={look} />
        {diagrams > 0 ? <DiagramLanes top={height} height={diagrams} map={map} look={look} /> : null}
      </Layer>
      <Layer listening={false}>
        <JointSpotsInElevation map={map} look={look} />
        <ReadingLine top={height} height={diagrams} map={map} look={look} />
      </Layer>
    </Stage>
  );
});

/** The profile of the step in view; keeps the factor it draws with while that serves. */
function useProfile(scale: number): Profile {
  const plan = useEditor(shown);
  const step = useEditor(stepInView);
  const layout = useEditor(layoutInView);
  const level = useEditor(levelInView);
  const factor = useRef(1);
  const profile = useMemo(() => {
    const height = Math.max(0, ...layout.placements.map((placement) => placement.height));
    const made = profileOf(plan, step, level, layout.placements, (departure) =>
      factorFor(departure, scale, height, factor.current),
    );
    factor.current = made.times;
    return made;
  }, [plan, step, level, layout, scale]);
  const gesture = useEditor((state) => state.gesture !== null);
  const entry = useEditor((state) => state.history.entries[state.history.at]?.id);
  return useSettling(profile, gesture ? "gesture" : `entry ${entry}`);
}

/** A change that no hand makes on the drawing settles into place; one under the hand follows at once. */
function useSettling(profile: Profile, cause: string): Profile {
  const [moving, setMoving] = useState<Profile | null>(null);
  const last = useRef({ profile, cause });
  useLayoutEffect(() => {
    const { profile: before, cause: was } = last.current;
    last.current = { profile, cause };
    const byHand = cause === "gesture" || was === "gesture";
    if (byHand || cause === was || window.matchMedia("(prefers-reduced-motion: reduce)").matches) {
      setMoving(null);
      return;
    }
    setMoving(between(before, profile, 0));
    const start = performance.now();
    const draw = (now: number): void => {
      const share = Math.min(1, Math.max(0, (now - start) / settleTime));
      if (share === 1) {
        setMoving(null);
        return;
      }
      setMoving(between(before, profile, 1 - (1 - share) ** 3));
      frame = requestAnimationFrame(draw);
    };
    let frame = requestAnimationFrame(draw);
    return () => cancelAnimationFrame(frame);
  }, [profile, cause]);
  // Another plan may have been opened while the last one was settling.
  return moving !== null && sameStands(moving, profile) ? moving : profile;
}

const sameStands = (a: Profile, b: Profile): boolean =>
  a.stands.length === b.stands.length &&
  a.stands.every(({ placement }, index) => placement.stand === b.stands[index]!.placement.stand);

interface Common {
  readonly map: ElevationMap;
  readonly look: Look;
}

interface OfPlan extends Common {
  readonly plan: Plan;
  /** Of that plan. */
  readonly profile: Profile;
}

const Floor = memo(function Floor({ map, look }: Common) {
  const bay = useEditor((state) => shown(state).bay);
  const piece = useEditor((state) => shown(state).piece);
  const floor = useMemo(() => floorUnder({ bay, piece }), [bay, piece]);
  return <FloorInElevation floor={floor} map={map} look={look} />;
});

const Stands = memo(function Stands({ plan, profile, map, look }: OfPlan) {
  const selected = useEditor(selectedStands);
  return <StandsInElevation plan={plan} profile={profile} selected={selected} map={map} look={look} />;
});

const Piece = memo(function Piece({ plan, profile, map, look }: OfPlan) {
  const step = useEditor(stepInView);
  const level = useEditor(levelInView);
  const selected = useEditor((state) => state.selection.kind === "piece");
  const masses = useEditor((state) => state.view.overlays.masses);
  return (
    <PieceInElevation
      plan={plan}
      step={step}
      level={level}
      profile={profile}
      selected={selected}
      masses={masses}
      map={map}
      look={look}
    />
  );
});

const Signs = memo(function Signs({ plan, profile, map, look }: OfPlan) {
  const step = useEditor(stepInView);
  const level = useEditor(levelInView);
  return <SignsInElevation plan={plan} step={step} level={level} profile={profile} map={map} look={look} />;
});

const Gaps = memo(function Gaps({ plan, profile, map, look }: OfPlan) {
  return <GapsInElevation plan={plan} profile={profile} map={map} look={look} />;
});

const ReactionNumbers = memo(function ReactionNumbers({ profile, map, look }: Common & { readonly profile: Profile }) {
  const level = useEditor(levelInView);
  const selected = useEditor(selectedStands);
  const verdicts = useEditorList<VerdictSoFar | null>((state) =>
    standIdsInView(state).map((stand) => reactionVerdict(state, stand)),
  );
  return <Reactions level={level} verdicts={verdicts} profile={profile} selected={selected} map={map} look={look} />;
});

const DiagramLanes = memo(function DiagramLanes({
  top,
  height,
  map,
  look,
}: Common & { readonly top: number; readonly height: number }) {
  const level = useEditor(levelInView);
  return <Diagrams level={level} top={top} height={height} map={map} look={look} />;
});

const ReadingLine = memo(function ReadingLine({
  top,
  height,
  map,
  look,
}: Common & { readonly top: number; readonly height: number }) {
  const level = useEditor(levelInView);
  const at = useEditor((state) => state.view.reading);
  return at === null || height === 0 ? null : (
    <Reading at={at} from={0} level={level} top={top} height={height} map={map} look={look} />
  );
});
