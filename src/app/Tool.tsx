/** A button that is only an icon, with its words in a tooltip and for screen readers. */

import { ActionIcon, Tooltip } from "@mantine/core";
import { Icon, type IconName } from "../ui";

export interface ToolProps {
  readonly icon: IconName;
  readonly label: string;
  readonly disabled?: boolean;
  /** For a button that stays pressed. */
  readonly pressed?: boolean;
  readonly className?: string | undefined;
  readonly onClick: () => void;
}

export function Tool({ icon, label, disabled = false, pressed, className, onClick }: ToolProps) {
  return (
    <Tooltip label={label} openDelay={500} withinPortal>
      <ActionIcon
        variant="subtle"
        size={36}
        className={className}
        aria-label={label}
        aria-pressed={pressed}
        disabled={disabled}
        onClick={onClick}
      >
        <Icon name={icon} />
      </ActionIcon>
    </Tooltip>
  );
}
