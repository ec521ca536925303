/** Where the lines of a drawing do not close, and how far apart ends may lie to be joined. */

import { Button } from "@mantine/core";
import { laidPoint } from "../../geometry";
import { QuantityField, Section, useFormat } from "../../ui";
import { counted } from "../words";
import styles from "./drawing.module.css";
import type { ImportState } from "./useImport";

/** So many gaps are listed; more of them mean that the layers are the wrong ones. */
const mostListed = 12;

/** Just over a gap, so that its ends meet. */
const justOver = 1.001;

export function GapList({ state }: { readonly state: ImportState }) {
  const { joined, laying, metresAUnit, tolerance, change } = state;
  const format = useFormat();
  if (joined === null || laying === null || metresAUnit === null) return null;
  const gaps = [...joined.gaps].sort((a, b) => (a.distance ?? Infinity) - (b.distance ?? Infinity));
  const bridged = gaps.flatMap(({ distance }) => (distance === null ? [] : [distance])).slice(0, mostListed);
  const widest = bridged.at(-1);
  return (
    <Section title="Gaps">
      {gaps.length === 0 ? (
        <p className={styles.quiet}>None: every line closes.</p>
      ) : (
        <>
          <p className={styles.quiet}>
            {counted(gaps.length, "end")} meet no other{gaps.length > mostListed ? `; the ${mostListed} nearest:` : ":"}
          </p>
          <ol className={styles.gaps}>
            {gaps.slice(0, mostListed).map(({ at, distance }, index) => {
              const [x, y] = laidPoint(at, laying);
              return (
                <li key={`${at[0]} ${at[1]} ${index}`}>
                  at {format(x, "length")}, {format(y, "length")}:{" "}
                  {distance === null ? "no other end" : `${format(distance * metresAUnit, "length")} from the next end`}
                </li>
              );
            })}
          </ol>
        </>
      )}
      <div className={styles.importFields}>
        <QuantityField
          label="Join ends that lie within"
          kind="length"
          value={tolerance * metresAUnit}
          commit={(within) => {
            if (within <= 0) return "More than 0.";
            change({ tolerance: within / metresAUnit, outer: 0 });
            return null;
          }}
        />
        {widest !== undefined && (
          <Button variant="default" onClick={() => change({ tolerance: widest * justOver, outer: 0 })}>
            Join gaps up to {format(widest * metresAUnit, "length")}
          </Button>
        )}
      </div>
    </Section>
  );
}
