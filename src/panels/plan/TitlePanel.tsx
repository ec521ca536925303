/** The title block: what the plan is called, its revision, its notes. */

import { Section, TextBlock, TextField } from "../../ui";
import { attempt, usePlan } from "../connect";

export function TitlePanel() {
  const { title, notes } = usePlan();
  return (
    <Section title="Plan">
      <TextField label="Title" value={title} commit={(text) => attempt("plan.title", { title: text })} />
      <TextBlock label="Notes" value={notes} commit={(text) => attempt("plan.notes", { notes: text })} />
    </Section>
  );
}
