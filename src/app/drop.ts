/** A plan file dropped anywhere on the page is opened. */

import { useEffect, useState } from "react";
import { readFile } from "../storage";
import type { Session } from "./session";

/** True while a file is held over the page. */
export function useDrop(session: Session): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const holdsFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") === true;
    const onOver = (event: DragEvent): void => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const onLeave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const onDrop = (event: DragEvent): void => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) void readFile(file).then(session.openBytes);
    };
    window.addEventListener("dragover", onOver);
    window.addEventListener("dragleave", onLeave);
    window.addEventListener("drop", onDrop);
    return () => {
      window.removeEventListener("dragover", onOver);
      window.removeEventListener("dragleave", onLeave);
      window.removeEventListener("drop", onDrop);
    };
  }, [session]);
  return over;
}
