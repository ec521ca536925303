/** The band of a reaction: what is known, what is not, and how far the rating is. */

import { type BandNumbers, bandMarks, bandText } from "./band";
import styles from "./ui.module.css";

const percent = (fraction: number) => `${fraction * 100}%`;

/** Heights in the picture, px. */
const height = 30;
const middle = 15;
const bar = { top: 10, height: 10 };

export interface ReactionBandProps {
  readonly numbers: BandNumbers;
  /** The picture is of an earlier plan; the answer to this one is on its way. */
  readonly pending?: boolean;
  /** Says whose reaction it is, as "Stand H-07". */
  readonly label: string;
  readonly format: (force: number) => string;
}

/** A bar that ends at the rating, filled from lightest to heaviest, the as-planned value as a mark, the statics limits as a thin line. */
export function ReactionBand({ numbers, pending = false, label, format }: ReactionBandProps) {
  const marks = bandMarks(numbers);
  const text = `${label}: ${bandText(numbers, format)}${pending ? ", being computed" : ""}`;
  return (
    <svg className={styles.band} data-pending={pending} width="100%" height={height} role="img" aria-label={text}>
      <rect
        className={styles.bandTrack}
        data-open={marks.rating === null}
        x="0"
        y={bar.top}
        width={percent(marks.rating ?? 1)}
        height={bar.height}
      />
      {marks.statics && (
        <line
          className={styles.bandStatics}
          data-cut={marks.staticsCut}
          x1={percent(marks.statics[0])}
          x2={percent(marks.statics[1])}
          y1={middle}
          y2={middle}
        />
      )}
      {marks.statics?.map((end, side) =>
        side === 1 && marks.staticsCut ? null : (
          <line
            key={side === 0 ? "least" : "most"}
            className={styles.bandStatics}
            x1={percent(end)}
            x2={percent(end)}
            y1={middle - 4}
            y2={middle + 4}
          />
        ),
      )}
      {marks.span && (
        <rect
          className={styles.bandSpan}
          x={percent(marks.span[0])}
          y={bar.top + 2}
          width={percent(Math.max(0.004, marks.span[1] - marks.span[0]))}
          height={bar.height - 4}
        />
      )}
      {marks.over && (
        <rect
          className={styles.bandOver}
          x={percent(marks.over[0])}
          y={bar.top}
          width={percent(marks.over[1] - marks.over[0])}
          height={bar.height}
        />
      )}
      {marks.limit !== null && marks.rating !== null && marks.limit < marks.rating && (
        <line
          className={styles.bandLimit}
          x1={percent(marks.limit)}
          x2={percent(marks.limit)}
          y1={bar.top}
          y2={bar.top + bar.height}
        />
      )}
      {marks.rating !== null && (
        <line
          className={styles.bandRating}
          x1={percent(marks.rating)}
          x2={percent(marks.rating)}
          y1={bar.top - 5}
          y2={bar.top + bar.height + 5}
        />
      )}
      {marks.level !== null && (
        <line className={styles.bandLevel} x1={percent(marks.level)} x2={percent(marks.level)} y1={3} y2={height - 3} />
      )}
    </svg>
  );
}
