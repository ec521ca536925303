/** True where what had the focus has gone: the next press of Tab would begin anywhere. */
export function focusIsLost(): boolean {
  return document.activeElement === null || document.activeElement === document.body;
}
