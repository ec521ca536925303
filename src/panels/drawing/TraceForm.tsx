/** A picture or a page of a PDF chosen, and put under the plan view. */

import { Button } from "@mantine/core";
import { useEffect, useRef, useState } from "react";
import { boundingBox, pieceFrame, toOuter } from "../../geometry";
import type { Plan } from "../../plan";
import { type PicturePlace, shown, theDrafting, theEditor, useDrafting } from "../../store";
import styles from "./drawing.module.css";
import { FilePicker } from "./FilePicker";
import type { OpenedPicture, PictureSource, ReadPicture } from "./pictureSource";

export interface TraceFormProps {
  readonly source: PictureSource;
  readonly done: () => void;
}

export default function TraceForm({ source, done }: TraceFormProps) {
  const has = useDrafting((state) => state.picture !== null);
  const [file, setFile] = useState<OpenedPicture | null>(null);
  const [page, setPage] = useState(1);
  const [picture, setPicture] = useState<ReadPicture | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const latest = useRef(0);
  useEffect(() => () => file?.close(), [file]);

  const show = async (opened: OpenedPicture, number: number): Promise<void> => {
    latest.current += 1;
    const own = latest.current;
    setPage(number);
    setBusy(true);
    const drawn = await opened.page(number);
    if (own !== latest.current) return;
    setBusy(false);
    setRefusal(typeof drawn === "string" ? drawn : null);
    setPicture(typeof drawn === "string" ? null : drawn);
  };
  const choose = async (chosen: File): Promise<void> => {
    latest.current += 1;
    const own = latest.current;
    setBusy(true);
    setRefusal(null);
    setPicture(null);
    const opened = await source.open(chosen);
    if (own !== latest.current) return;
    setBusy(false);
    if (typeof opened === "string") {
      setFile(null);
      setRefusal(opened);
      return;
    }
    setFile(opened);
    await show(opened, 1);
  };
  const put = (): void => {
    if (picture === null) return;
    const drafting = theDrafting();
    drafting.setPicture({
      ...picture,
      ...placeFor(picture, shown(theEditor().state())),
      strength: 0.5,
      shown: true,
      scaled: false,
    });
    done();
    drafting.setTool({ kind: "scale picture", points: [] });
  };

  return (
    <>
      <p className={styles.quiet}>
        It lies under the plan view, as a help for drawing. It stays on this device and is not part of the plan file.
      </p>
      <FilePicker
        accept="image/png,image/jpeg,application/pdf,.png,.jpg,.jpeg,.pdf"
        label={file === null ? "Choose a picture or a PDF" : "Choose another"}
        choose={(chosen) => void choose(chosen)}
      />
      {busy && <p className={styles.quiet}>Drawing the page</p>}
      {refusal !== null && (
        <p className={styles.refusal} role="alert">
          {refusal}
        </p>
      )}
      {file !== null && file.pages > 1 && (
        <div className={styles.pages}>
          <Button variant="default" disabled={page <= 1} onClick={() => void show(file, page - 1)}>
            Page before
          </Button>
          <span className={styles.pageNumber}>
            Page {page} of {file.pages}
          </span>
          <Button variant="default" disabled={page >= file.pages} onClick={() => void show(file, page + 1)}>
            Next page
          </Button>
        </div>
      )}
      {picture !== null && <Thumbnail picture={picture} />}
      <div className={styles.traceEnd}>
        {has && (
          <Button
            variant="subtle"
            onClick={() => {
              theDrafting().setTool({ kind: "move picture" });
              done();
            }}
          >
            Change the one that is there
          </Button>
        )}
        <Button size="md" disabled={picture === null || busy} onClick={put}>
          Put it under the plan
        </Button>
      </div>
    </>
  );
}

/** The picture on a small canvas. */
function Thumbnail({ picture }: { readonly picture: ReadPicture }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const scale = Math.min(1, 640 / picture.width, 420 / picture.height);
  const [width, height] = [Math.round(picture.width * scale), Math.round(picture.height * scale)];
  useEffect(() => {
    const paper = canvas.current?.getContext("2d");
    if (paper == null) return;
    paper.imageSmoothingQuality = "high";
    paper.drawImage(picture.image, 0, 0, width, height);
  }, [picture, width, height]);
  return <canvas ref={canvas} className={styles.thumbnail} width={width} height={height} aria-label={picture.name} />;
}

/** Room round the plan in a picture that nobody has scaled yet. */
const usualRoom = 1.2;

/** Before it is scaled a picture covers the bay, or the piece where there is none. */
function placeFor({ width, height }: ReadPicture, { bay, piece }: Plan): PicturePlace {
  const frame = pieceFrame(piece.pose);
  const { least, most } = boundingBox(bay?.outline ?? piece.outline.map((point) => toOuter(frame, point)));
  const metresAPixel = usualRoom * Math.max((most[0] - least[0]) / width, (most[1] - least[1]) / height);
  return {
    x: (least[0] + most[0] - width * metresAPixel) / 2,
    y: (least[1] + most[1] - height * metresAPixel) / 2,
    angle: 0,
    metresAPixel,
  };
}
