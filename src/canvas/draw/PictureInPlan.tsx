/** The picture that is traced, dimmed, as it lies in the bay. */

import { memo, useMemo } from "react";
import { pictureToBay, useDrafting } from "../../store";
import type { PlanMap } from "../camera";
import { type Paper, Sketch } from "../sketch";

export const PictureInPlan = memo(function PictureInPlan({ map }: { readonly map: PlanMap }) {
  const picture = useDrafting((state) => state.picture);
  const draw = useMemo(() => {
    if (picture === null || !picture.shown) return null;
    return (paper: Paper) => {
      const { width, height } = picture;
      const origin = map.bay(pictureToBay(picture, [0, height]));
      const right = map.bay(pictureToBay(picture, [width, height]));
      const down = map.bay(pictureToBay(picture, [0, 0]));
      // Canvas units of the picture's own pixels, from its upper left corner.
      paper.transform(
        (right[0] - origin[0]) / width,
        (right[1] - origin[1]) / width,
        (down[0] - origin[0]) / height,
        (down[1] - origin[1]) / height,
        origin[0],
        origin[1],
      );
      paper.globalAlpha = picture.strength;
      paper.imageSmoothingQuality = "high";
      paper.drawImage(picture.image, 0, 0, width, height);
    };
  }, [picture, map]);
  return draw === null ? null : <Sketch draw={draw} />;
});
