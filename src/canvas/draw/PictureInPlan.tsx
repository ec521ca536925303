/** The picture that is traced, dimmed, as it lies in the bay. */

import { memo, useMemo } from "react";
import { pictureToBay, useDrafting } from "../../store";
import { colours } from "../../ui";
import type { PlanMap } from "../camera";
import type { Look } from "../look";
import { type Paper, Sketch } from "../sketch";

export const PictureInPlan = memo(function PictureInPlan({
  map,
  look,
}: {
  readonly map: PlanMap;
  readonly look: Look;
}) {
  const onDark = look.colours === colours.dark;
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
      // Of a drawing only its lines are laid over the sheet, whatever the theme; a photograph covers it.
      const lines = picture.negative === null ? null : onDark ? "screen" : "multiply";
      if (lines !== null) paper.globalCompositeOperation = lines;
      paper.drawImage(onDark ? (picture.negative ?? picture.image) : picture.image, 0, 0, width, height);
    };
  }, [picture, map, onDark]);
  return draw === null ? null : <Sketch draw={draw} />;
});
