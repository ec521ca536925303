/** The header: what the plan is called, going back and forward, files, units, theme. */

import { ActionIcon, Menu, Tooltip, useComputedColorScheme } from "@mantine/core";
import { UnitsMenu } from "../panels";
import { mayRedo, mayUndo, theEditor, useEditor } from "../store";
import { Icon, type IconName } from "../ui";
import styles from "./app.module.css";
import type { Session } from "./session";

interface HeaderProps {
  readonly session: Session;
  readonly create: () => void;
}

export function Header({ session, create }: HeaderProps) {
  const title = useEditor((state) => state.document.title);
  return (
    <header className={styles.header}>
      <h1 className={styles.title} title={title}>
        {title === "" ? "Untitled plan" : title}
      </h1>
      <SavedMark />
      <div className={styles.tools} role="toolbar" aria-label="Plan">
        <HistoryButtons />
        <span className={styles.divider} />
        <Tool icon="fit" label="Show all" onClick={() => theEditor().look({ camera: null })} />
        <span className={styles.wide}>
          <UnitsMenu />
        </span>
        <ThemeButton />
        <PlanMenu session={session} create={create} />
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

function ThemeButton() {
  const scheme = useComputedColorScheme("light");
  const other = scheme === "dark" ? "light" : "dark";
  return (
    <Tool
      icon={scheme === "dark" ? "sun" : "moon"}
      label={other === "dark" ? "Dark theme" : "Light theme"}
      onClick={() => theEditor().look({ theme: other })}
    />
  );
}

function PlanMenu({ session, create }: HeaderProps) {
  return (
    <Menu position="bottom-end" withinPortal>
      <Menu.Target>
        <ActionIcon variant="subtle" size={36} aria-label="Plan file">
          <Icon name="menu" />
        </ActionIcon>
      </Menu.Target>
      <Menu.Dropdown>
        <Menu.Item leftSection={<Icon name="add" />} onClick={create}>
          My piece: a new plan
        </Menu.Item>
        <Menu.Item leftSection={<Icon name="open" />} onClick={() => void session.openFile()}>
          Open a plan file
        </Menu.Item>
        <Menu.Item leftSection={<Icon name="save" />} onClick={() => void session.saveFile()}>
          Save to a plan file
        </Menu.Item>
      </Menu.Dropdown>
    </Menu>
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

interface ToolProps {
  readonly icon: IconName;
  readonly label: string;
  readonly disabled?: boolean;
  readonly onClick: () => void;
}

function Tool({ icon, label, disabled = false, onClick }: ToolProps) {
  return (
    <Tooltip label={label} openDelay={500} withinPortal>
      <ActionIcon variant="subtle" size={36} aria-label={label} disabled={disabled} onClick={onClick}>
        <Icon name={icon} />
      </ActionIcon>
    </Tooltip>
  );
}
