/** The next corner by numbers: from the frame's own zero, or from the last corner. Enter sets it. */

import { NativeSelect, TextInput } from "@mantine/core";
import { type KeyboardEvent, useRef, useState } from "react";
import { type Point, parseQuantity } from "../../plan";
import { theDrafting } from "../../store";
import { useDisplay, useFormat } from "../../ui";
import { BarButton } from "./BarButton";
import styles from "./drawing.module.css";

export interface CornerFieldsProps {
  readonly axes: readonly [string, string];
  /** The corner before; null = none yet. */
  readonly last: Point | null;
  readonly add: (point: Point) => void;
}

type Origin = "zero" | "last";

export function CornerFields({ axes, last, add }: CornerFieldsProps) {
  const display = useDisplay();
  const format = useFormat();
  const [texts, setTexts] = useState<readonly [string, string]>(["", ""]);
  const [origin, setOrigin] = useState<Origin>("zero");
  const first = useRef<HTMLInputElement>(null);
  const from: Point = origin === "last" && last !== null ? last : [0, 0];

  const submit = (): void => {
    const drafting = theDrafting();
    if (texts.every((text) => text.trim() === "")) {
      const { tool } = drafting.state();
      if (tool.kind === "draw" && tool.points.length > 0) drafting.close();
      return;
    }
    const read = texts.map((text) =>
      text.trim() === "" && origin === "last"
        ? ({ ok: true, value: 0 } as const)
        : parseQuantity(text, "length", display),
    );
    const wrong = read.findIndex(({ ok }) => !ok);
    const refused = read[wrong];
    if (refused !== undefined && !refused.ok) {
      drafting.refuse(`${axes[wrong === 0 ? 0 : 1]}: ${refused.message}`);
      return;
    }
    const [p, q] = read.map((quantity) => (quantity.ok ? quantity.value : 0)) as [number, number];
    add([from[0] + p, from[1] + q]);
    if (drafting.state().refusal !== null) return;
    setTexts(["", ""]);
    first.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    submit();
  };

  return (
    <div className={styles.corner}>
      {axes.map((axis, index) => (
        <TextInput
          key={axis}
          ref={index === 0 ? first : undefined}
          className={styles.cornerField}
          label={axis}
          autoComplete="off"
          spellCheck={false}
          placeholder={last === null || origin === "last" ? "" : format(last[index as 0 | 1], "length")}
          value={texts[index as 0 | 1]}
          onChange={(event) => {
            const text = event.currentTarget.value;
            setTexts((before) => (index === 0 ? [text, before[1]] : [before[0], text]));
          }}
          onKeyDown={onKeyDown}
        />
      ))}
      <NativeSelect
        className={styles.cornerFrom}
        label="from"
        value={origin}
        data={[
          { value: "zero", label: "zero" },
          { value: "last", label: "last corner", disabled: last === null },
        ]}
        onChange={(event) => setOrigin(event.currentTarget.value as Origin)}
      />
      <BarButton icon="add" onClick={submit}>
        Set corner
      </BarButton>
    </div>
  );
}
