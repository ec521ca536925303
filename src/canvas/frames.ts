/**
 * One piece of work a frame: the first task runs at once (the browser hands out pointer moves just before it draws),
 * further ones wait for the next frame, the newest wins.
 *
 * A task that runs within a frame changes the drawing only for the next one. So it must run after what the last task
 * changed has been drawn, else that would never be seen and only every other frame would show something new: it asks for
 * its next frame when the drawing has asked for its own, in a task of its own behind the changes.
 */
export function oncePerFrame(): (task: () => void) => void {
  let waiting: (() => void) | null = null;
  let drawn = true;
  const next = (): void => {
    const task = waiting;
    waiting = null;
    if (task === null) {
      drawn = true;
      return;
    }
    setTimeout(() => requestAnimationFrame(next));
    task();
  };
  return (task) => {
    if (!drawn) {
      waiting = task;
      return;
    }
    drawn = false;
    requestAnimationFrame(next);
    task();
  };
}
