/** Numbers with units on the page: shown and read in the plan's display units, kept in SI. */

import { createContext, type ReactNode, useCallback, useContext } from "react";
import { type Display, editQuantity, formatQuantity, parseQuantity, type QuantityKind } from "../plan";
import { DraftField } from "./fields";
import styles from "./ui.module.css";

const metric: Display = { units: "metric", length: null, force: null };
const DisplayContext = createContext<Display>(metric);

/** The display units of everything inside. */
export function DisplayUnits({ display, children }: { readonly display: Display; readonly children: ReactNode }) {
  return <DisplayContext value={display}>{children}</DisplayContext>;
}

export function useDisplay(): Display {
  return useContext(DisplayContext);
}

export type Format = (value: number | null, kind: QuantityKind) => string;

/** Writes a quantity in the display units; "–" where there is none. */
export function useFormat(): Format {
  const display = useDisplay();
  return useCallback((value, kind) => (value === null ? "–" : formatQuantity(value, kind, display)), [display]);
}

/** What one press of an arrow key adds, SI: in the units of the screen, a tenth of it with Shift. */
export function arrowStep(kind: QuantityKind, display: Display, fine: boolean): number {
  const us = display.units === "us";
  const coarse: Partial<Record<QuantityKind, number>> = {
    length: us ? 0.0254 : 0.01,
    angle: 1,
    force: us ? 444.82216152605 : 500,
    mass: us ? 45.359237 : 50,
    fraction: 0.01,
    ratio: 0.05,
  };
  return (coarse[kind] ?? 0) * (fine ? 0.1 : 1);
}

export interface QuantityFieldProps {
  readonly label: string;
  readonly kind: QuantityKind;
  /** SI; null = not known, shown empty. */
  readonly value: number | null;
  /** Takes the value in SI; a sentence is a refusal, and the text stays. */
  readonly commit: (value: number) => string | null | undefined;
  /** Takes an emptied field; left out = a value is required. */
  readonly clear?: () => string | null | undefined;
  readonly description?: ReactNode;
  readonly bare?: boolean;
  readonly disabled?: boolean;
  /** Stands in an empty field. */
  readonly placeholder?: string;
  readonly id?: string;
  readonly autoFocus?: boolean;
  /** What an arrow key adds, SI; 0 = arrows move the caret. */
  readonly step?: number;
}

/** A quantity as people write it: `12' 6-1/2"`, `3.2 m`, `4 t`, `2,500 lb`; a bare number is in the display units. */
export function QuantityField(props: QuantityFieldProps) {
  const { kind, value, commit, clear, step, ...common } = props;
  const display = useDisplay();
  const coarse = step ?? arrowStep(kind, display, false);
  const text = value === null ? "" : editQuantity(value, kind, display);
  return (
    <DraftField<number | null>
      {...common}
      text={text}
      {...(value !== null && isConverted(text, display) ? { restText: formatQuantity(value, kind, display) } : {})}
      read={(text) => {
        if (text.trim() === "" && clear !== undefined) return { ok: true, value: null };
        return parseQuantity(text, kind, display);
      }}
      commit={(read) => (read === null ? clear?.() : commit(read))}
      {...(coarse === 0
        ? {}
        : {
            stepped: (from: number | null, direction: 1 | -1, fine: boolean) =>
              rounded((from ?? 0) + direction * coarse * (fine ? 0.1 : 1)),
          })}
    />
  );
}

/** More than three decimals in US units were not typed but come from a metric size: they are shown rounded until edited. */
function isConverted(text: string, display: Display): boolean {
  return display.units === "us" && /\.\d{4,}/.test(text);
}

/** Keeps steps from gathering the last bits of binary fractions: to 1e-9 of the unit. */
function rounded(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

/** A quantity to be read, in figures of equal width. */
export function Quantity({ value, kind }: { readonly value: number | null; readonly kind: QuantityKind }) {
  const format = useFormat();
  return <span className={styles.figures}>{format(value, kind)}</span>;
}
