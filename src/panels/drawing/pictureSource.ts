/** What tracing asks of the reader of pictures; the app passes one in. */

/** A picture ready to be drawn. */
export interface ReadPicture {
  readonly name: string;
  readonly image: CanvasImageSource;
  readonly negative: CanvasImageSource | null;
  readonly width: number;
  readonly height: number;
}

export interface OpenedPicture {
  readonly name: string;
  /** 1 for a picture, the number of pages of a PDF. */
  readonly pages: number;
  /** The picture, or the page of that number counted from 1; a sentence where it cannot be drawn. */
  readonly page: (number: number) => Promise<ReadPicture | string>;
  readonly close: () => void;
}

export interface PictureSource {
  /** The file, or one sentence that says why not. */
  readonly open: (file: File) => Promise<OpenedPicture | string>;
}
