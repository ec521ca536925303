/** The header: what the plan is called, going back and forward, files, units, theme. */

import { ActionIcon, Menu, useComputedColorScheme } from "@mantine/core";
import { UnitsMenu } from "../panels";
import { mayRedo, mayUndo, theEditor, useEditor } from "../store";
import { Icon } from "../ui";
import styles from "./app.module.css";
import type { PageCommand } from "./commands";
import { Tool } from "./Tool";

interface HeaderProps {
  readonly commands: readonly PageCommand[];
}

export function Header({ commands }: HeaderProps) {
  const title = useEditor((state) => state.document.title);
  return (
    <header className={styles.header}>
      <h1 className={styles.title} title={title}>
        {title === "" ? "Untitled plan" : title}
      </h1>
      <SavedMark />
      <div className={styles.tools} role="toolbar" aria-label="Plan">
        <HistoryButtons />
        <UnitsMenu />
        <PlanMenu commands={commands} />
      </div>
    </header>
  );
}

function HistoryButtons() {
  const undo = useEditor(mayUndo);
  const redo = useEditor(mayRedo);
  const undoes = useEditor((state) => state.history.entries[state.history.at]?.label ?? "");
  const redoes = useEditor((state) => state.history.entries[state.history.at + 1]?.label ?? "");
  return (
    <>
      <Tool icon="undo" label={undo ? `Undo: ${undoes}` : "Undo"} disabled={!undo} onClick={() => theEditor().undo()} />
      <Tool icon="redo" label={redo ? `Redo: ${redoes}` : "Redo"} disabled={!redo} onClick={() => theEditor().redo()} />
    </>
  );
}

function PlanMenu({ commands }: HeaderProps) {
  return (
    <Menu position="bottom-end" withinPortal>
      <Menu.Target>
        <ActionIcon variant="subtle" size={36} aria-label="Plan file">
          <Icon name="menu" />
        </ActionIcon>
      </Menu.Target>
      <Menu.Dropdown>
        {commands.map(({ id, icon, label, enabled, run }) => (
          <Menu.Item key={id} leftSection={<Icon name={icon} />} disabled={!enabled} onClick={run}>
            {label}
          </Menu.Item>
        ))}
        <Menu.Divider />
        <ThemeItem />
      </Menu.Dropdown>
    </Menu>
  );
}

function ThemeItem() {
  const scheme = useComputedColorScheme("light");
  const other = scheme === "dark" ? "light" : "dark";
  return (
    <Menu.Item
      leftSection={<Icon name={other === "dark" ? "moon" : "sun"} />}
      onClick={() => theEditor().look({ theme: other })}
    >
      {other === "dark" ? "Dark theme" : "Light theme"}
    </Menu.Item>
  );
}

function SavedMark() {
  const status = useEditor((state) => state.saving.status);
  const file = useEditor((state) => state.origin.file);
  const text = status === "saved" ? "Kept" : status === "saving" ? "Keeping" : "Not kept";
  return (
    <span className={styles.saved} data-status={status}>
      {text}
      {file === null ? "" : ` · ${file}`}
    </span>
  );
}
