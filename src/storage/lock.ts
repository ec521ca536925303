/** One writer a plan: the window that holds the lock of a record saves it, the others wait for it. */

export interface PlanLock {
  /** Whether this window writes the record. */
  readonly held: () => boolean;
  /** Gives it up, or stops waiting for it. */
  readonly release: () => void;
}

/**
 * Asks for the lock of a record. `acquired` is called once this window holds it: at once with `waited` false, or later,
 * when the window that held it has gone. Resolves when the first answer is there. Browsers without locks: always held.
 */
export async function lockPlan(record: string, acquired: (waited: boolean) => void): Promise<PlanLock> {
  if (navigator.locks === undefined) {
    acquired(false);
    return { held: () => true, release: () => {} };
  }
  const name = `trestleboard plan ${record}`;
  let held = false;
  let release = (): void => {};
  const untilReleased = new Promise<void>((resolve) => {
    release = resolve;
  });
  const hold = (waited: boolean): Promise<void> => {
    held = true;
    acquired(waited);
    return untilReleased.then(() => {
      held = false;
    });
  };
  const giveUp = new AbortController();
  const free = await new Promise<boolean>((answer) => {
    void navigator.locks.request(name, { ifAvailable: true }, (lock) => {
      answer(lock !== null);
      return lock === null ? undefined : hold(false);
    });
  });
  if (!free)
    navigator.locks
      .request(name, { signal: giveUp.signal }, () => hold(true))
      .catch(() => {
        held = false;
      });
  return {
    held: () => held,
    release: () => {
      giveUp.abort();
      release();
    },
  };
}
