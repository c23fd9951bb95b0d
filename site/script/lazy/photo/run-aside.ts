/** Has a photo counted: by a worker, or in slices between which the page can answer. */
import type { Grey } from "../../../../src/photo/grey.ts";
import { scriptLoader } from "../../ui/load-script.ts";
import type { CountingStep } from "../photo-count/photo-count-part.ts";

const SCRIPT = "photo-count.js";

export interface Counting {
  /** Rejects where the script that counts cannot be loaded. */
  readonly done: Promise<Extract<CountingStep, { readonly kind: "done" }>>;
  /** Nothing comes of it from then on. */
  cancel(): void;
}

/** `own` is the address that the page's scripts lie beside. */
export function countPhoto(own: string, photo: Grey, tell: (part: number) => void): Counting {
  return location.protocol === "file:" ? countHere(own, photo, tell) : countAside(own, photo, tell);
}

function countAside(own: string, photo: Grey, tell: (part: number) => void): Counting {
  const worker = new Worker(new URL(SCRIPT, own));
  const done = new Promise<Awaited<Counting["done"]>>((resolve, reject) => {
    worker.addEventListener("message", ({ data }: MessageEvent<CountingStep>) => {
      if (data.kind === "part") return tell(data.part);
      worker.terminate();
      resolve(data);
    });
    worker.addEventListener("error", () => {
      worker.terminate();
      reject(new Error(`${SCRIPT} cannot be run aside`));
    });
  });
  worker.postMessage(photo);
  return { done, cancel: () => worker.terminate() };
}

function countHere(own: string, photo: Grey, tell: (part: number) => void): Counting {
  let isCancelled = false;
  const run = async (): Promise<Awaited<Counting["done"]>> => {
    await scriptLoader(own)(SCRIPT);
    const part = window.spanbookPhotoCount;
    if (!part) throw new Error("the part that counts photos is not what was expected");
    for (const step of part.steps(photo)) {
      if (step.kind === "done") return step;
      tell(step.part);
      await pause();
      // A promise that nobody waits for any more is let go with its page.
      if (isCancelled) await new Promise(() => {});
    }
    throw new Error("counting has no end");
  };
  return { done: run(), cancel: () => (isCancelled = true) };
}

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
