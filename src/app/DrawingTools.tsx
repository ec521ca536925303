/** Drawing by hand on the page: the menu, and the dialogs that it opens. */

import { useEffect, useState } from "react";
import { DrawMenu, ImportDialog, type PictureSource, TraceDialog } from "../panels";
import { theEditor } from "../store";
import styles from "./app.module.css";
import { createDrawingSource } from "./drawing/source";

/** Its worker starts with the first drawing. */
const drawings = createDrawingSource();

/** The readers of pictures come with the first picture. */
const pictures: PictureSource = {
  open: async (file) => (await import("./drawing/pictures")).pictureSource.open(file),
};

export function DrawingTools() {
  const [open, setOpen] = useState<"import" | "trace" | null>(null);
  useEffect(() => {
    // The picture of the last visit may come after the first number.
    const keeping = import("./drawing/keepPicture").then(({ keepPicture }) => keepPicture(theEditor()));
    return () => void keeping.then((stop) => stop());
  }, []);
  return (
    <div className={styles.drawingTools}>
      <DrawMenu importDrawing={() => setOpen("import")} tracePicture={() => setOpen("trace")} />
      <ImportDialog opened={open === "import"} onClose={() => setOpen(null)} source={drawings} />
      <TraceDialog opened={open === "trace"} onClose={() => setOpen(null)} source={pictures} />
    </div>
  );
}
