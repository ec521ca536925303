/** What is computed behind the page's back: how far it has come, and its stop. */

import { createContext, useContext, useEffect, useState, useSyncExternalStore } from "react";

export type BackgroundProgress =
  | { readonly status: "done" }
  | { readonly status: "working"; readonly answered: number; readonly of: number }
  | { readonly status: "stopped" };

/** The page hands it in. */
export interface Background {
  /** Calls the listener whenever the progress is another; answers with the end of that. */
  readonly subscribe: (listener: () => void) => () => void;
  readonly progress: () => BackgroundProgress;
  readonly stop: () => void;
  readonly goOn: () => void;
}

const done: BackgroundProgress = { status: "done" };
const nothing: Background = { subscribe: () => () => {}, progress: () => done, stop: () => {}, goOn: () => {} };
export const BackgroundContext = createContext<Background>(nothing);

/** What takes less is not spoken of, ms. */
const patience = 1000;

/** The progress once the work has gone on for a second, and what can be done about it. */
export function useBackground(): Pick<Background, "stop" | "goOn"> & { readonly progress: BackgroundProgress } {
  const { subscribe, progress: read, stop, goOn } = useContext(BackgroundContext);
  const progress = useSyncExternalStore(subscribe, read);
  const working = progress.status === "working";
  const [long, setLong] = useState(false);
  useEffect(() => {
    setLong(false);
    if (!working) return;
    const timer = setTimeout(() => setLong(true), patience);
    return () => clearTimeout(timer);
  }, [working]);
  return { progress: working && !long ? done : progress, stop, goOn };
}
