/** Has a photo worked on: by a worker, or in slices between which the page can answer. */
import { scriptLoader } from "../../ui/load-script.ts";

/** What work on a photo tells while it goes on. */
export type PhotoStep<Done> =
  | { readonly kind: "part"; readonly part: number }
  | { readonly kind: "done"; readonly done: Done };

/** The script that works; what it is asked is sent to it as it is. */
export interface AsideWork<Asked, Done> {
  /** The address that the page's scripts lie beside. */
  readonly own: string;
  readonly script: string;
  readonly asked: Asked;
  /** Its steps in the page itself, once the script is loaded there. */
  readonly steps: (asked: Asked) => Iterable<PhotoStep<Done>> | undefined;
}

export interface Aside<Done> {
  /** Rejects where the script that works cannot be loaded. */
  readonly done: Promise<Done>;
  /** Nothing comes of it from then on. */
  cancel(): void;
}

/** `tell` hears now and then what part of the work is done. */
export function runAside<Asked, Done>(
  work: AsideWork<Asked, Done>,
  tell: (part: number) => void,
): Aside<Done> {
  return location.protocol === "file:" ? runHere(work, tell) : runInWorker(work, tell);
}

function runInWorker<Asked, Done>(
  { own, script, asked }: AsideWork<Asked, Done>,
  tell: (part: number) => void,
): Aside<Done> {
  const worker = new Worker(new URL(script, own));
  const done = new Promise<Done>((resolve, reject) => {
    worker.addEventListener("message", ({ data }: MessageEvent<PhotoStep<Done>>) => {
      if (data.kind === "part") return tell(data.part);
      worker.terminate();
      resolve(data.done);
    });
    worker.addEventListener("error", () => {
      worker.terminate();
      reject(new Error(`${script} cannot be run aside`));
    });
  });
  worker.postMessage(asked);
  return { done, cancel: () => worker.terminate() };
}

function runHere<Asked, Done>(
  { own, script, asked, steps }: AsideWork<Asked, Done>,
  tell: (part: number) => void,
): Aside<Done> {
  let isCancelled = false;
  const run = async (): Promise<Done> => {
    await scriptLoader(own)(script);
    const going = steps(asked);
    if (!going) throw new Error(`${script} is not what was expected`);
    for (const step of going) {
      if (step.kind === "done") return step.done;
      tell(step.part);
      await pause();
      // A promise that nobody waits for any more is let go with its page.
      if (isCancelled) await new Promise(() => {});
    }
    throw new Error(`${script} has no end`);
  };
  return { done: run(), cancel: () => (isCancelled = true) };
}

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
