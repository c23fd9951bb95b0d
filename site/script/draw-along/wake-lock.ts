/** Keeps the screen on while someone draws beside it, where the device allows that. */

/** A switch: on keeps the screen awake, off lets it sleep. */
export function openWakeLock(window: Window): (isDrawing: boolean) => void {
  const { document, navigator } = window;
  let isWanted = false;
  let lock: WakeLockSentinel | undefined;
  const ask = async () => {
    try {
      lock = await navigator.wakeLock.request("screen");
      if (!isWanted) await lock.release();
    } catch {
      // An old browser or a low battery: the screen goes dark as it always does.
    }
  };
  // The device takes the lock back when the page is hidden.
  document.addEventListener("visibilitychange", () => {
    if (isWanted && document.visibilityState === "visible") ask();
  });
  return (isDrawing) => {
    if (isDrawing === isWanted) return;
    isWanted = isDrawing;
    if (isWanted) ask();
    else lock?.release();
  };
}
