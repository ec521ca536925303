/**
 * One piece of work a frame: the first task runs at once (the browser hands out pointer moves just before it draws),
 * further ones wait for the next frame, the newest wins.
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
    requestAnimationFrame(next);
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
