/**
 * One piece of work a frame, the newest of those handed in; the drawing shows it in the frame after.
 *
 * What a task changes is drawn by a request of the drawing's own, made when the views have followed the change. The next
 * task must come behind that drawing: ahead of it, it would be drawn in place of the last, and only every other frame
 * would show something new. So a frame is asked for when the views have followed.
 */
export function oncePerFrame(): (task: () => void) => void {
  let waiting: (() => void) | null = null;
  let asked = false;
  const run = (): void => {
    const task = waiting;
    waiting = null;
    if (task === null) {
      asked = false;
      return;
    }
    task();
    void behindTheViews().then(() => requestAnimationFrame(run));
  };
  return (task) => {
    waiting = task;
    if (asked) return;
    asked = true;
    requestAnimationFrame(run);
  };
}

/** Views follow a change of state in microtasks, the drawing those of the page: so many turns are more than enough. */
const turns = 8;

async function behindTheViews(): Promise<void> {
  for (let turn = 0; turn < turns; turn += 1) await undefined;
}
