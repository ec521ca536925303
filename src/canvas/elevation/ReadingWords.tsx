/** What the reading line says, for screen readers: once the pointer rests, so that not every place is spoken. */

import { useEffect, useState } from "react";
import { levelInView, shown, useEditor } from "../../store";
import styles from "../canvas.module.css";
import { readingWords } from "./readings";

/** ms. */
const rest = 250;

export function ReadingWords() {
  const at = useEditor((state) => (state.gesture === null ? state.view.reading : null));
  const level = useEditor(levelInView);
  const display = useEditor((state) => shown(state).display);
  const [words, setWords] = useState("");
  useEffect(() => {
    const said = setTimeout(
      () => setWords(at === null || level === null ? "" : readingWords(level, at, display)),
      rest,
    );
    return () => clearTimeout(said);
  }, [at, level, display]);
  return (
    <div className={styles.hiddenWords} role="status" data-testid="diagram-reading">
      {words}
    </div>
  );
}
