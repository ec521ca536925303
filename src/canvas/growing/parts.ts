/** Half-built pieces as they are drawn: parts shortened at open joints, and the stretches that are not there. */

type Stretch = readonly [number, number];

/** Half the gap that is drawn at a joint that carries nothing, px. */
const halfGap = 3;

/** Parts nearer than this touch, m. */
const touching = 1e-6;

/** The parts, each shortened where it touches the next, so that the joint shows as a gap. */
export function shortened(parts: readonly Stretch[], scale: number): readonly Stretch[] {
  const by = halfGap / scale;
  return parts.map(([from, to], index) => {
    const before = parts[index - 1]?.[1] ?? Number.NEGATIVE_INFINITY;
    const after = parts[index + 1]?.[0] ?? Number.POSITIVE_INFINITY;
    const most = (to - from) / 4;
    return [
      from - before < touching ? from + Math.min(by, most) : from,
      after - to < touching ? to - Math.min(by, most) : to,
    ];
  });
}

/** The stretches of a length that no part covers, m. */
export function absentStretches(parts: readonly Stretch[], length: number): readonly Stretch[] {
  const starts = [0, ...parts.map(([, to]) => to)];
  const ends = [...parts.map(([from]) => from), length];
  return starts.flatMap((from, index): readonly Stretch[] => {
    const to = ends[index]!;
    return to - from > touching ? [[from, to]] : [];
  });
}
