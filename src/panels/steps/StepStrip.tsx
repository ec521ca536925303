/** The steps over the drawings. */

import { theEditor } from "../../store";
import { VerdictShape, verdictWords } from "../../ui";
import { useCalm, usePlan } from "../connect";
import stepsStyles from "./steps.module.css";

/** The strip of steps over the drawing: numbers, names and verdicts in one line. */
export function StepStrip() {
  const steps = usePlan().steps;
  const inView = useCalm((state) => state.view.step);
  const reports = useCalm((state) => state.answers.report.steps);
  return (
    <nav className={stepsStyles.stepStrip} aria-label="Steps of the job">
      {steps.map((step, index) => {
        const verdict = reports.find((report) => report.step === step.id)?.verdict ?? "pending";
        return (
          <button
            key={step.id}
            type="button"
            className={stepsStyles.stepTab}
            aria-current={step.id === inView ? "step" : undefined}
            onClick={() => theEditor().look({ step: step.id })}
          >
            <span className={stepsStyles.stepNumber}>{index + 1}</span> {step.name}{" "}
            <VerdictShape verdict={verdict} size={16} label={verdictWords[verdict]} />
          </button>
        );
      })}
    </nav>
  );
}
