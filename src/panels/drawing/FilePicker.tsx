/** A button that asks for a file of this device. */

import { Button } from "@mantine/core";
import { useId, useRef } from "react";
import { Icon } from "../../ui";
import styles from "./drawing.module.css";

export interface FilePickerProps {
  readonly label: string;
  /** Endings and media types, as the browser takes them. */
  readonly accept: string;
  readonly choose: (file: File) => void;
}

export function FilePicker({ label, accept, choose }: FilePickerProps) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        id={id}
        className={styles.hiddenInput}
        type="file"
        accept={accept}
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = "";
          if (file !== undefined) choose(file);
        }}
      />
      <Button variant="default" leftSection={<Icon name="open" size={18} />} onClick={() => input.current?.click()}>
        {label}
      </Button>
    </>
  );
}
