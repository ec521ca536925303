/** Drawing by hand on the page: the menu, and the dialogs that it opens. */

import { useState } from "react";
import { DrawMenu, ImportDialog } from "../panels";
import styles from "./app.module.css";
import { createDrawingSource } from "./drawing/source";

/** Its worker starts with the first drawing. */
const drawings = createDrawingSource();

export function DrawingTools() {
  const [open, setOpen] = useState<"import" | "trace" | null>(null);
  return (
    <div className={styles.drawingTools}>
      <DrawMenu importDrawing={() => setOpen("import")} tracePicture={() => setOpen("trace")} />
      <ImportDialog opened={open === "import"} onClose={() => setOpen(null)} source={drawings} />
    </div>
  );
}
