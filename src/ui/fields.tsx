/** Fields that commit once, when the person is done. */

import { Checkbox, NativeSelect, Textarea, TextInput } from "@mantine/core";
import { type ReactNode, useRef, useState } from "react";
import { type DraftOptions, useDraft } from "./draft";
import styles from "./ui.module.css";

interface Common {
  /** Always there for screen readers; on screen unless `bare`. */
  readonly label: string;
  readonly description?: ReactNode;
  /** Without label and frame, for the cell of a table. */
  readonly bare?: boolean;
  readonly disabled?: boolean;
  readonly placeholder?: string;
}

export interface DraftFieldProps<Value> extends Common, DraftOptions<Value> {
  readonly id?: string;
  readonly autoFocus?: boolean;
  /** What stands in the field while nobody is in it, where `text` is too exact to read. */
  readonly restText?: string;
}

/** What is said about a field stands under it, so that fields in a row keep one line. */
const wrapperOrder: ("label" | "input" | "description" | "error")[] = ["label", "input", "description", "error"];

/** A line of text that is read as a value. */
export function DraftField<Value>(props: DraftFieldProps<Value>) {
  const { label, description, bare = false, disabled, placeholder, id, autoFocus } = props;
  const draft = useDraft(props);
  const [focused, setFocused] = useState(false);
  const typed = useRef(false);
  const shown = !focused && props.restText !== undefined && draft.value === props.text ? props.restText : draft.value;
  return (
    <TextInput
      inputWrapperOrder={wrapperOrder}
      className={styles.field}
      wrapperProps={{ "data-bare": bare }}
      {...(bare ? { "aria-label": label } : { label })}
      {...(description === undefined ? {} : { description })}
      {...(id === undefined ? {} : { id })}
      {...(disabled === undefined ? {} : { disabled })}
      {...(placeholder === undefined ? {} : { placeholder })}
      {...(autoFocus ? { "data-autofocus": true } : {})}
      error={draft.error}
      value={shown}
      autoComplete="off"
      spellCheck={false}
      onFocus={(event) => {
        const input = event.currentTarget;
        setFocused(true);
        typed.current = false;
        // The text may change with the focus; it is chosen once that is drawn.
        requestAnimationFrame(() => {
          // Whoever types before the next frame keeps what is typed.
          if (document.activeElement === input && !typed.current) input.select();
        });
      }}
      onChange={(event) => {
        typed.current = true;
        draft.onChange(event.currentTarget.value);
      }}
      onBlur={() => {
        setFocused(false);
        draft.onBlur();
      }}
      onKeyDown={draft.onKeyDown}
    />
  );
}

/** Free text. */
export function TextField({
  value,
  commit,
  required = false,
  ...common
}: Common & {
  readonly value: string;
  readonly commit: (value: string) => string | null | undefined;
  /** An empty field is refused. */
  readonly required?: boolean;
}) {
  return (
    <DraftField
      {...common}
      text={value}
      read={(text) =>
        required && text.trim() === ""
          ? { ok: false, message: `${common.label}: type at least one character.` }
          : { ok: true, value: text.trim() }
      }
      commit={commit}
    />
  );
}

/** Free text of several lines; Enter makes a new line, leaving the field commits. */
export function TextBlock({
  label,
  description,
  value,
  commit,
}: Common & { readonly value: string; readonly commit: (value: string) => string | null | undefined }) {
  const draft = useDraft<string>({ text: value, read: (text) => ({ ok: true, value: text }), commit });
  return (
    <Textarea
      label={label}
      {...(description === undefined ? {} : { description })}
      autosize
      minRows={2}
      maxRows={12}
      error={draft.error}
      value={draft.value}
      onChange={(event) => draft.onChange(event.currentTarget.value)}
      onBlur={draft.onBlur}
      onKeyDown={(event) => {
        if (event.key !== "Enter") draft.onKeyDown(event);
      }}
    />
  );
}

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

/** One of a few words, with the system's own list: the surest thing under a glove. */
export function ChoiceField<Value extends string>({
  label,
  description,
  bare = false,
  disabled,
  value,
  choices,
  choose,
}: Common & {
  readonly value: Value;
  readonly choices: readonly Choice<Value>[];
  readonly choose: (value: Value) => void;
}) {
  return (
    <NativeSelect
      inputWrapperOrder={wrapperOrder}
      className={styles.field}
      wrapperProps={{ "data-bare": bare }}
      {...(bare ? { "aria-label": label } : { label })}
      {...(description === undefined ? {} : { description })}
      {...(disabled === undefined ? {} : { disabled })}
      value={value}
      data={choices.map((choice) => ({ value: choice.value, label: choice.label }))}
      onChange={(event) => choose(event.currentTarget.value as Value)}
    />
  );
}

/** Yes or no. */
export function CheckField({
  label,
  description,
  disabled,
  value,
  choose,
}: Common & { readonly value: boolean; readonly choose: (value: boolean) => void }) {
  return (
    <Checkbox
      label={label}
      {...(description === undefined ? {} : { description })}
      {...(disabled === undefined ? {} : { disabled })}
      checked={value}
      onChange={(event) => choose(event.currentTarget.checked)}
    />
  );
}

/** Yes, no or not known. */
export function MaybeField({
  label,
  description,
  bare,
  value,
  choose,
}: Common & { readonly value: boolean | null; readonly choose: (value: boolean | null) => void }) {
  return (
    <ChoiceField
      label={label}
      {...(description === undefined ? {} : { description })}
      {...(bare === undefined ? {} : { bare })}
      value={value === null ? "unknown" : value ? "yes" : "no"}
      choices={[
        { value: "unknown", label: "not known" },
        { value: "yes", label: "yes" },
        { value: "no", label: "no" },
      ]}
      choose={(word) => choose(word === "unknown" ? null : word === "yes")}
    />
  );
}
