/** Work that may wait until the page has shown what was asked for first, done in slices between two frames. */

/** A piece of work; true where there is more of it to do. */
export type Work = () => boolean;

export interface Queue {
  /** Puts work in place of all that still waits under the same name. */
  put(name: string, work: Work): void;
}

/** A slice leaves most of a frame of 16 ms to the page. */
const SLICE_MS = 8;

/** A queue that runs after the next frame. */
export function openQueue(window: Window): Queue {
  const waiting = new Map<string, Work>();
  let isRunning = false;
  const run = () => {
    const end = performance.now() + SLICE_MS;
    for (const [name, work] of waiting) {
      waiting.delete(name);
      if (work() && !waiting.has(name)) waiting.set(name, work);
      if (performance.now() >= end) break;
    }
    isRunning = waiting.size > 0;
    if (isRunning) later();
  };
  // A hidden page has no frames, but its work should be done.
  const later = () =>
    document.hidden ? setTimeout(run) : window.requestAnimationFrame(() => setTimeout(run));
  return {
    put: (name, work) => {
      waiting.delete(name);
      waiting.set(name, work);
      if (isRunning) return;
      isRunning = true;
      later();
    },
  };
}
