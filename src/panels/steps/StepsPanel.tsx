/** The job's steps in order, each with its verdict; the chosen one is in view and open for changes. */

import { ActionIcon, Button } from "@mantine/core";
import type { VerdictSoFar } from "../../checks";
import type { LayoutId, MassId, Plan, Step, StepDocument, StepId } from "../../plan";
import { freeId, stepInView, theEditor } from "../../store";
import { CheckField, ChoiceField, Disclosure, Icon, QuantityField, Section, TextField, VerdictMark } from "../../ui";
import { attempt, useCalm, usePlan } from "../connect";
import styles from "../panels.module.css";
import { counted } from "../words";
import { LayoutsPanel } from "./LayoutsPanel";
import { LoadsEditor } from "./LoadsEditor";
import { PartsEditor } from "./PartsEditor";
import stepsStyles from "./steps.module.css";

type StepChange = { readonly [Key in keyof Omit<StepDocument, "id">]?: StepDocument[Key] | undefined };

export default function StepsPanel() {
  const plan = usePlan();
  const step = useCalm(stepInView);
  const reports = useCalm((state) => state.answers.report.steps);
  const verdictOf = (id: StepId): VerdictSoFar => reports.find((report) => report.step === id)?.verdict ?? "pending";
  return (
    <>
      <Section
        title="Steps of the job"
        actions={
          <Button
            size="compact-md"
            variant="default"
            leftSection={<Icon name="add" size={16} />}
            onClick={() => addStep(plan, step)}
          >
            Add after this one
          </Button>
        }
      >
        <StepList steps={plan.steps} inView={step.id} verdictOf={verdictOf} />
      </Section>
      <StepEditor plan={plan} step={step} verdict={verdictOf(step.id)} />
      <LayoutsPanel />
    </>
  );
}

interface ListProps {
  readonly steps: readonly Step[];
  readonly inView: StepId;
  readonly verdictOf: (step: StepId) => VerdictSoFar;
}

export function StepList({ steps, inView, verdictOf }: ListProps) {
  return (
    <ol className={stepsStyles.stepList}>
      {steps.map((step, index) => (
        <li key={step.id}>
          <button
            type="button"
            className={stepsStyles.stepButton}
            aria-current={step.id === inView ? "step" : undefined}
            onClick={() => theEditor().look({ step: step.id })}
          >
            <span className={stepsStyles.stepNumber}>{index + 1}</span>
            <span className={stepsStyles.stepName}>{step.name}</span>
            <VerdictMark verdict={verdictOf(step.id)} />
          </button>
        </li>
      ))}
    </ol>
  );
}

function addStep(plan: Plan, after: Step): void {
  const id = freeId(plan.steps, "step") as StepId;
  const step: StepDocument = { ...after, id, name: `Step ${plan.steps.length + 1}`, setDown: false, readings: [] };
  if (attempt("step.add", { step, after: after.id }) === null) theEditor().look({ step: id });
}

interface EditorProps {
  readonly plan: Plan;
  readonly step: Step;
  readonly verdict: VerdictSoFar;
}

export function StepEditor({ plan, step, verdict }: EditorProps) {
  const change = (keys: StepChange) => attempt("step.change", { step: step.id, change: keys });
  const index = plan.steps.findIndex(({ id }) => id === step.id);
  const order = (to: number) => attempt("step.order", { step: step.id, to });
  return (
    <Section
      title={`Step ${index + 1}`}
      actions={
        <>
          <VerdictMark verdict={verdict} />
          <ActionIcon
            variant="subtle"
            aria-label="Earlier"
            title="Earlier"
            disabled={index === 0}
            onClick={() => order(index - 1)}
          >
            <Icon name="up" />
          </ActionIcon>
          <ActionIcon
            variant="subtle"
            aria-label="Later"
            title="Later"
            disabled={index === plan.steps.length - 1}
            onClick={() => order(index + 1)}
          >
            <Icon name="down" />
          </ActionIcon>
          <ActionIcon
            variant="subtle"
            aria-label={`Remove step ${step.name}`}
            title="Remove this step"
            disabled={plan.steps.length === 1}
            onClick={() => attempt("step.remove", { step: step.id })}
          >
            <Icon name="bin" />
          </ActionIcon>
        </>
      }
    >
      <div className={styles.fields}>
        <TextField label="Name" required value={step.name} commit={(name) => change({ name })} />
        <ChoiceField
          label="Layout"
          value={step.layout as string}
          choices={plan.layouts.map(({ id, name }) => ({ value: id as string, label: name }))}
          choose={(layout) => change({ layout: layout as LayoutId })}
        />
      </div>
      <div className={styles.checks}>
        <CheckField
          label="The piece is set down in this step"
          description="The set-down factor is on every reaction."
          value={step.setDown}
          choose={(setDown) => change({ setDown })}
        />
        <CheckField
          label="People work under it"
          value={step.peopleUnder}
          choose={(peopleUnder) => change({ peopleUnder })}
        />
        <CheckField
          label="The crane still holds it"
          description="Nobody may be under it."
          value={step.craneHolds}
          choose={(craneHolds) => change({ craneHolds })}
        />
        <CheckField
          label="Kept from sliding on its tops"
          description="By chocks that somebody has designed."
          value={step.chocked}
          choose={(chocked) => change({ chocked })}
        />
        <CheckField
          label="Kept from rolling over"
          description="By bracing that somebody has designed."
          value={step.braced}
          choose={(braced) => change({ braced })}
        />
      </div>
      <AbsentMasses plan={plan} step={step} change={change} />
      <PartsEditor plan={plan} step={step} />
      <Disclosure summary="Loads on it" aside={step.loads.length === 0 ? "none" : counted(step.loads.length, "load")}>
        <LoadsEditor plan={plan} step={step} />
      </Disclosure>
      <div className={styles.fields}>
        <QuantityField
          label="Bow within ±"
          placeholder="as the plan"
          kind="length"
          step={0}
          value={step.bow}
          commit={(bow) => change({ bow })}
          clear={() => change({ bow: null })}
        />
      </div>
    </Section>
  );
}

function AbsentMasses({
  plan,
  step,
  change,
}: {
  readonly plan: Plan;
  readonly step: Step;
  readonly change: (keys: StepChange) => string | null;
}) {
  const absent = new Set<MassId>(step.absent);
  if (plan.piece.masses.length === 0) return null;
  return (
    <Disclosure
      summary="Weights that are there"
      aside={`${plan.piece.masses.length - absent.size} of ${plan.piece.masses.length}`}
    >
      <div className={styles.checks}>
        {plan.piece.masses.map((mass) => (
          <CheckField
            key={mass.id}
            label={mass.name}
            value={!absent.has(mass.id)}
            choose={(there) =>
              change({
                absent: there ? step.absent.filter((id) => id !== mass.id) : [...step.absent, mass.id],
              })
            }
          />
        ))}
      </div>
    </Disclosure>
  );
}
