/** What the step in view weighs, where its load centre is and what holds it up: numbers that can be asked about. */

import { lazy, Suspense } from "react";
import { Disclosure } from "../../ui";

/** Loaded when first opened. */
const Facts = lazy(() => import("./Facts"));

export function StepFacts() {
  return (
    <Disclosure summary="Weight, load centre, tipping">
      <Suspense>
        <Facts />
      </Suspense>
    </Disclosure>
  );
}
