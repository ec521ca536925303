/** All that can be done, with its keys: type a few letters, Enter does it. The same table as menus and keys read. */

import { TextInput } from "@mantine/core";
import { type KeyboardEvent, useId, useState } from "react";
import { type Action, actions, theEditor } from "../../store";
import { Dialog, Icon } from "../../ui";
import styles from "../panels.module.css";
import helpStyles from "./help.module.css";
import { keyWords, matching } from "./keyWords";

export interface Command {
  readonly id: string;
  readonly label: string;
  readonly keys: readonly string[];
  readonly enabled: boolean;
  readonly run: () => void;
}

export interface CommandsDialogProps {
  readonly opened: boolean;
  readonly onClose: () => void;
  /** What the page itself offers besides the actions on the plan: files, a new plan. */
  readonly more?: readonly Command[];
}

export function CommandsDialog({ opened, onClose, more = [] }: CommandsDialogProps) {
  return (
    <Dialog opened={opened} onClose={onClose} title="What can be done, and its keys">
      {opened && <CommandList more={more} close={onClose} />}
    </Dialog>
  );
}

function asCommand(action: Action): Command {
  const editor = theEditor();
  return {
    id: action.id,
    label: action.label,
    keys: action.keys,
    enabled: action.enabled(editor.state()),
    run: () => action.run(editor),
  };
}

function CommandList({ more, close }: { readonly more: readonly Command[]; readonly close: () => void }) {
  const [typed, setTyped] = useState("");
  const [at, setAt] = useState(0);
  const list = useId();
  const found = matching([...more, ...actions.map(asCommand)], typed);
  const chosen = found[Math.min(at, found.length - 1)];
  const mac = /Mac|iPhone|iPad/.test(navigator.userAgent);
  const run = (command: Command | undefined) => {
    if (command === undefined || !command.enabled) return;
    close();
    command.run();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    switch (event.key) {
      case "ArrowDown":
      case "ArrowUp":
        event.preventDefault();
        setAt((before) => Math.max(0, Math.min(found.length - 1, before + (event.key === "ArrowDown" ? 1 : -1))));
        break;
      case "Enter":
        run(chosen);
        break;
      default:
    }
  };
  return (
    <>
      <TextInput
        data-autofocus
        label="Type what you want to do"
        leftSection={<Icon name="search" size={16} />}
        value={typed}
        onChange={(event) => {
          setTyped(event.currentTarget.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
        role="combobox"
        aria-expanded
        aria-controls={list}
        aria-activedescendant={chosen === undefined ? undefined : `${list} ${chosen.id}`}
      />
      <div id={list} role="listbox" aria-label="What can be done" className={helpStyles.commands}>
        {found.map((command) => (
          // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus and names the chosen option
          <div
            key={command.id}
            id={`${list} ${command.id}`}
            role="option"
            aria-selected={command.id === chosen?.id}
            aria-disabled={!command.enabled}
            className={helpStyles.command}
            onClick={() => run(command)}
            onKeyDown={undefined}
          >
            <span>{command.label}</span>
            <span className={helpStyles.commandKeys}>
              {command.keys.map((key) => (
                <kbd key={key}>{keyWords(key, mac)}</kbd>
              ))}
            </span>
          </div>
        ))}
      </div>
      {found.length === 0 && <p className={styles.quiet}>Nothing of that name.</p>}
    </>
  );
}
