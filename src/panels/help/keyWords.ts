/** Names of keys as they are printed on them. */

const printed: Readonly<Record<string, string>> = {
  ArrowLeft: "←",
  ArrowRight: "→",
  ArrowUp: "↑",
  ArrowDown: "↓",
  Escape: "Esc",
  Delete: "Del",
  PageUp: "Page up",
  PageDown: "Page down",
};

/** "Mod+Shift+Z" → "Ctrl + Shift + Z", with ⌘ on a Mac. */
export function keyWords(key: string, mac: boolean): string {
  // A plus at the end is the key itself, not what joins two.
  const names = key === "+" ? ["+"] : key.split("+");
  return names.map((name) => (name === "Mod" ? (mac ? "⌘" : "Ctrl") : (printed[name] ?? name))).join(" + ");
}

/** The actions whose words hold every word that was typed, in any order. */
export function matching<Item extends { readonly label: string }>(
  items: readonly Item[],
  typed: string,
): readonly Item[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return items.filter(({ label }) => words.every((word) => label.toLowerCase().includes(word)));
}
