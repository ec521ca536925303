/** Keys by name: `Mod` is Ctrl, or Cmd on a Mac. No DOM here: any event-like object will do. */

export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** The name of a key press: `Mod+Shift+Z`, `ArrowLeft`, `?`. Shift is named only where it does not make the sign. */
export function keyName({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyPress): string {
  const letter = key.length === 1 && /\p{L}/u.test(key);
  const sign = key.length === 1 && !letter && key !== " ";
  const base = letter ? key.toUpperCase() : key === " " ? "Space" : key;
  const parts = [ctrlKey || metaKey ? "Mod" : "", altKey ? "Alt" : "", shiftKey && !sign ? "Shift" : "", base];
  return parts.filter((part) => part !== "").join("+");
}
