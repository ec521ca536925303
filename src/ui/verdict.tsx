/** A verdict by word, icon, shape and colour: any one of them is enough to read it. */

import type { VerdictFace } from "./tokens";
import styles from "./ui.module.css";

/** The word on the screen. */
export const verdictWords: Readonly<Record<VerdictFace, string>> = {
  holds: "holds",
  close: "close",
  unknown: "unknown",
  fails: "fails",
  pending: "computing",
};

/** Outline and inner sign, on a 20 px grid. The outlines differ: circle, diamond, dashed square, octagon, dotted circle. */
export const verdictShapes: Readonly<Record<VerdictFace, { readonly outline: string; readonly sign: string }>> = {
  holds: { outline: "M10 2a8 8 0 1 0 0 16 8 8 0 0 0 0-16z", sign: "M6.2 10.4l2.7 2.7 5-5.6" },
  close: { outline: "M10 1.4L18.6 10 10 18.6 1.4 10z", sign: "M6.2 10h4.8M9 7.8l2.2 2.2L9 12.2M13.4 7.2v5.6" },
  unknown: { outline: "M2.8 2.8h14.4v14.4H2.8z", sign: "M7.8 8.1a2.2 2.2 0 1 1 3.3 1.9c-.8.5-1.1.9-1.1 1.7M10 14v.2" },
  fails: { outline: "M6.6 1.8h6.8l4.8 4.8v6.8l-4.8 4.8H6.6l-4.8-4.8V6.6z", sign: "M6.8 6.8l6.4 6.4M13.2 6.8l-6.4 6.4" },
  pending: { outline: "M10 2a8 8 0 1 0 0 16 8 8 0 0 0 0-16z", sign: "M6.4 10h.01M10 10h.01M13.6 10h.01" },
};

const outlineDash: Readonly<Partial<Record<VerdictFace, string>>> = { unknown: "3 2", pending: "1 2.6" };

/** The shape alone; give `label` where no word stands beside it. */
export function VerdictShape({
  verdict,
  size = 18,
  label,
}: {
  readonly verdict: VerdictFace;
  readonly size?: number;
  readonly label?: string;
}) {
  const { outline, sign } = verdictShapes[verdict];
  return (
    <svg
      aria-hidden={label === undefined}
      role="img"
      aria-label={label ?? verdictWords[verdict]}
      className={styles.verdictShape}
      data-verdict={verdict}
      width={size}
      height={size}
      viewBox="0 0 20 20"
    >
      <path className={styles.verdictOutline} d={outline} strokeDasharray={outlineDash[verdict]} />
      <path className={styles.verdictSign} d={sign} />
    </svg>
  );
}

/** Shape and word. */
export function VerdictMark({
  verdict,
  size = "body",
  children,
}: {
  readonly verdict: VerdictFace;
  readonly size?: "body" | "title";
  /** Words in place of the verdict's own, as "holds, 3 not checked". */
  readonly children?: React.ReactNode;
}) {
  return (
    <span className={styles.verdictMark} data-verdict={verdict} data-size={size}>
      <VerdictShape verdict={verdict} size={size === "title" ? 24 : 18} />
      <span>{children ?? verdictWords[verdict]}</span>
    </span>
  );
}
