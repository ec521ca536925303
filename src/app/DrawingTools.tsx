/** Drawing by hand on the page: the menu, and the dialogs that it opens. */

import { useEffect, useState } from "react";
import { DrawMenu, ImportDialog, TraceDialog } from "../panels";
import { theEditor } from "../store";
import styles from "./app.module.css";
import { keepPicture } from "./drawing/keepPicture";
import { pictureSource } from "./drawing/pictures";
import { createDrawingSource } from "./drawing/source";

/** Its worker starts with the first drawing. */
const drawings = createDrawingSource();

export function DrawingTools() {
  const [open, setOpen] = useState<"import" | "trace" | null>(null);
  useEffect(() => keepPicture(theEditor()), []);
  return (
    <div className={styles.drawingTools}>
      <DrawMenu importDrawing={() => setOpen("import")} tracePicture={() => setOpen("trace")} />
      <ImportDialog opened={open === "import"} onClose={() => setOpen(null)} source={drawings} />
      <TraceDialog opened={open === "trace"} onClose={() => setOpen(null)} source={pictureSource} />
    </div>
  );
}
