/** Drawing by hand on the page: the menu, and the dialogs that it opens, each loaded when it is first asked for. */

import { useState } from "react";
import { DrawMenu } from "../panels";
import styles from "./app.module.css";

export function DrawingTools() {
  const [, setOpen] = useState<"import" | "trace" | null>(null);
  return (
    <div className={styles.drawingTools}>
      <DrawMenu importDrawing={() => setOpen("import")} tracePicture={() => setOpen("trace")} />
    </div>
  );
}
