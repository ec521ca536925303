/** A button of the drawing bar: icon and word, the word left out where there is no room for it. */

import { Button } from "@mantine/core";
import { Icon, type IconName } from "../../ui";
import styles from "./drawing.module.css";

export interface BarButtonProps {
  readonly icon: IconName;
  readonly strong?: boolean;
  readonly disabled?: boolean;
  readonly onClick: () => void;
  readonly children: string;
}

export function BarButton({ icon, strong = false, disabled = false, onClick, children }: BarButtonProps) {
  return (
    <Button
      className={styles.barButton}
      size="compact-md"
      variant={strong ? "filled" : "default"}
      leftSection={<Icon name={icon} size={16} />}
      aria-label={children}
      title={children}
      data-strong={strong}
      disabled={disabled}
      onClick={onClick}
    >
      <span className={styles.barWord}>{children}</span>
    </Button>
  );
}
