/** The import dialog's reader: a worker that is started with the first drawing and stopped with the dialog. */

import type { DrawingAnswer, DrawingSource, JoinedLoops } from "../../panels";
import type { DrawingReply, DrawingRequest } from "./worker";

export function createDrawingSource(): DrawingSource {
  let worker: Worker | null = null;
  let requests = 0;
  const waiting = new Map<number, (answer: DrawingReply["answer"]) => void>();

  function start(): Worker {
    const started = new Worker(new URL("./worker.ts", import.meta.url), { type: "module", name: "drawing" });
    started.onmessage = ({ data }: MessageEvent<DrawingReply>): void => {
      waiting.get(data.id)?.(data.answer);
      waiting.delete(data.id);
    };
    return started;
  }

  type Asked = DrawingRequest extends infer One ? (One extends DrawingRequest ? Omit<One, "id"> : never) : never;

  function ask<Answer extends DrawingReply["answer"]>(request: Asked, transfer: Transferable[] = []): Promise<Answer> {
    worker ??= start();
    requests += 1;
    const id = requests;
    worker.postMessage({ ...request, id }, transfer);
    return new Promise((resolve) => waiting.set(id, resolve as (answer: DrawingReply["answer"]) => void));
  }

  return {
    read: (bytes) => ask<DrawingAnswer>({ kind: "read", bytes }),
    join: (layers, tolerance) => ask<JoinedLoops>({ kind: "join", layers, tolerance }),
    stop: () => {
      worker?.terminate();
      worker = null;
      waiting.clear();
    },
  };
}
