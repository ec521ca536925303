/** Small drawings to choose by. */

import { genericStands, type PieceKind } from "../../library";
import { StandPicture } from "../stands/StandPicture";
import { wholeType } from "../stands/wholeType";
import newPlanStyles from "./newPlan.module.css";

/** The piece in a slanting view: a beam, a block, a sheet. */
export function KindPicture({ kind }: { readonly kind: PieceKind }) {
  return (
    <svg className={newPlanStyles.choicePicture} viewBox="0 0 64 36" aria-hidden="true">
      <path className={newPlanStyles.choiceLine} d={kindPaths[kind]} />
    </svg>
  );
}

const kindPaths: Readonly<Record<PieceKind, string>> = {
  member: "M4 14h46l10-5H14zM4 14v3h46v-3M50 14l10-5v3l-10 5M8 17v6M46 17v6M4 23h46v3H4zM50 23l10-5v3l-10 5M50 17v6",
  die: "M10 14h32l12-7H22zM10 14v16h32V14M42 30l12-7V7M16 22h8v8M30 22h6v8",
  plate: "M4 22h36l20-12H24zM4 22v2.5h36V22M40 24.5l20-12V10",
};

/** So many stands under a piece, from the side. */
export function CountPicture({ count }: { readonly count: number }) {
  const at = Array.from({ length: count }, (_, index) => 4 + ((index + 0.5) / count) * 56);
  return (
    <svg className={newPlanStyles.choicePicture} viewBox="0 0 64 36" aria-hidden="true">
      <path
        className={newPlanStyles.choiceLine}
        d={`M4 9h56v6H4z ${at.map((x) => `M${x - 3} 15h6M${x - 2} 15l-2 13M${x + 2} 15l2 13`).join(" ")} M2 28h60`}
      />
    </svg>
  );
}

/** A generic stand, true to scale. */
export function StandKindPicture({ id }: { readonly id: string }) {
  const generic = genericStands.find(({ type }) => type.id === id);
  return generic === undefined ? null : <StandPicture type={wholeType(generic.type)} height={generic.height} small />;
}
