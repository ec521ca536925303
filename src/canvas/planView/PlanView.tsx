/** The plan view: three layers, the floor, the objects, and what lies over them. */

import { memo } from "react";
import { Layer, Stage } from "react-konva/lib/ReactKonvaCore";
import { knownValue, type StepStanding } from "../../checks";
import {
  type EditorState,
  layoutInView,
  levelInView,
  reportInView,
  selectedStands,
  shown,
  standIdsInView,
  stepInView,
  useEditor,
  useEditorList,
} from "../../store";
import type { PlanMap } from "../camera";
import { DraftInPlan } from "../draw/DraftInPlan";
import { PictureInPlan } from "../draw/PictureInPlan";
import { JointSpotsInPlan } from "../growing/JointSpots";
import { LoadsInPlan } from "../growing/StepSigns";
import type { Look } from "../look";
import { SpotInPlan, StandingInPlan } from "../standing/StandingInPlan";
import { WalkwaysInPlan } from "../walkways/WalkwaysInPlan";
import { BayInPlan } from "./BayInPlan";
import { Dimensions } from "./Dimensions";
import { Handles, Snaps } from "./Handles";
import { Names } from "./Names";
import { PieceInPlan } from "./PieceInPlan";
import { StandInPlan, StandMark } from "./StandInPlan";
import { TripZoneInPlan } from "./TripZones";
import { MassesInPlan, TippingInPlan } from "./Weights";

interface ViewProps {
  readonly map: PlanMap;
  readonly look: Look;
}

export const PlanView = memo(function PlanView({ map, look }: ViewProps) {
  const stands = useEditorList(standIdsInView);
  const tripZones = useEditor((state) => state.view.overlays.tripZones);
  const bay = useEditor((state) => shown(state).bay);
  return (
    <Stage width={map.size.width} height={map.size.height} listening={false}>
      <Layer listening={false}>
        {bay === null ? null : <BayInPlan bay={bay} map={map} look={look} />}
        <PictureInPlan map={map} look={look} />
      </Layer>
      <Layer listening={false}>
        {/* They lie on the floor, but move with the stands: the floor is not drawn again for them. */}
        {tripZones ? stands.map((id) => <TripZoneInPlan key={id} stand={id} map={map} look={look} />) : null}
        {stands.map((id) => (
          <StandInPlan key={id} stand={id} map={map} look={look} />
        ))}
        <Standing map={map} look={look} />
        <Piece map={map} look={look} />
        <Masses map={map} look={look} />
        <Loads map={map} look={look} />
      </Layer>
      <Layer listening={false}>
        <Tipping map={map} look={look} />
        {stands.map((id) => (
          <StandMark key={id} stand={id} map={map} look={look} />
        ))}
        <WalkwaysInPlan map={map} look={look} />
        <Names map={map} look={look} />
        <RunningDimensions map={map} look={look} />
        <JointSpotsInPlan map={map} look={look} />
        <Spot map={map} look={look} />
        <Snaps map={map} look={look} />
        <Handles map={map} look={look} />
        <DraftInPlan map={map} look={look} />
      </Layer>
    </Stage>
  );
});

/** The map that is to be seen: that of an earlier plan while another is on its way; null where none is. */
const standingSeen = (state: EditorState): StepStanding | null => {
  if (!state.view.overlays.standing) return null;
  const { standing } = reportInView(state);
  return standing.status === "pending" ? standing.last : knownValue(standing);
};

const Standing = memo(function Standing({ map, look }: ViewProps) {
  const standing = useEditor(standingSeen);
  const dimmed = useEditor((state) => reportInView(state).standing.status !== "known");
  const tipping = useEditor((state) => knownValue(reportInView(state).tipping));
  return standing === null ? null : (
    <StandingInPlan standing={standing} dimmed={dimmed} tipping={tipping} map={map} look={look} />
  );
});

const Spot = memo(function Spot({ map, look }: ViewProps) {
  const spot = useEditor((state) => (state.view.overlays.standing ? state.view.spot : null));
  return spot === null ? null : <SpotInPlan spot={spot} map={map} look={look} />;
});

const Piece = memo(function Piece({ map, look }: ViewProps) {
  const piece = useEditor((state) => shown(state).piece);
  const step = useEditor(stepInView);
  const zones = useEditor((state) => state.view.overlays.zones);
  const standing = useEditor((state) => standingSeen(state) !== null);
  const selected = useEditor((state) => state.selection.kind === "piece");
  return (
    <PieceInPlan piece={piece} step={step} zones={zones} bare={standing} selected={selected} map={map} look={look} />
  );
});

const Masses = memo(function Masses({ map, look }: ViewProps) {
  const piece = useEditor((state) => shown(state).piece);
  const step = useEditor(stepInView);
  const on = useEditor((state) => state.view.overlays.masses);
  const chosen = useEditor((state) => (state.selection.kind === "mass" ? state.selection.id : null));
  return on ? <MassesInPlan piece={piece} step={step} chosen={chosen} map={map} look={look} /> : null;
});

const Loads = memo(function Loads({ map, look }: ViewProps) {
  const step = useEditor(stepInView);
  return <LoadsInPlan step={step} map={map} look={look} />;
});

const Tipping = memo(function Tipping({ map, look }: ViewProps) {
  const tipping = useEditor((state) => knownValue(reportInView(state).tipping));
  const level = useEditor(levelInView);
  const on = useEditor((state) => state.view.overlays.tipping);
  return on ? <TippingInPlan tipping={tipping} level={level} map={map} look={look} /> : null;
});

const RunningDimensions = memo(function RunningDimensions({ map, look }: ViewProps) {
  const layout = useEditor(layoutInView);
  const piece = useEditor((state) => shown(state).piece);
  const selected = useEditor(selectedStands);
  const on = useEditor((state) => state.view.overlays.dimensions);
  return on ? <Dimensions layout={layout} piece={piece} selected={selected} map={map} look={look} /> : null;
});
