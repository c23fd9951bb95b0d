/** From a file to what was found in it, with all that is shown on the way. */
import { sayPhotoFault } from "../../../../src/issue/words/say-photo.ts";
import { makeElement } from "../../ui/make-element.ts";
import { type OpenedPhoto, openPhoto } from "./open-photo.ts";
import { type AsideWork, runAside } from "./run-aside.ts";

type Opened = Extract<OpenedPhoto, { readonly ok: true }>;

/** What is looked for in a photo, and how that is told. */
export interface PhotoLook<Asked, Done> {
  /** The longer side of the copy that it is looked for in, in pixels. */
  readonly longest: number;
  /** Of a second copy, for where what was found in the first is not sure. */
  readonly finer?: { readonly longest: number; readonly isSure: (done: Done) => boolean };
  /** May somebody turn the photo? Else it is understood however it lies. */
  readonly turns: boolean;
  readonly words: Readonly<Record<"doing" | "stop" | "stopped" | "failed", string>>;
  asking(photo: Opened): AsideWork<Asked, Done>;
  show(photo: Opened, done: Done): PhotoShown;
}

export interface PhotoShown {
  readonly elements: readonly HTMLElement[];
  readonly buttons: readonly HTMLElement[];
}

interface Running<Asked, Done> {
  readonly look: PhotoLook<Asked, Done>;
  /** What is shown of this photo. */
  readonly result: HTMLElement;
  /** Looks another time, the photo turned. */
  readonly again: (file: Blob, quarters: number) => void;
}

/** Begins; what it gives back stops it, and nothing is shown from then on. */
export function runPhoto<Asked, Done>(
  file: Blob,
  quarters: number,
  { look, result, again }: Running<Asked, Done>,
): () => void {
  const { words } = look;
  const stop = new AbortController();
  const progress = makeElement("progress", { max: "1", value: "0", "aria-label": words.doing });
  const cancel = photoButton(words.stop, () => {
    stop.abort();
    result.replaceChildren(message(words.stopped));
  });
  result.replaceChildren(progress, makeElement("div", { class: "doing" }, cancel));
  cancel.focus();
  const found = foundIn(file, quarters, { look, signal: stop.signal, progress });
  const show = (elements: readonly HTMLElement[]) => {
    if (stop.signal.aborted) return;
    result.replaceChildren(...elements);
    result.querySelector<HTMLElement>("[tabindex]")?.focus();
  };
  const turn = photoButton("Turn the photo", () => again(file, (quarters + 1) % 4));
  const turns = look.turns ? [turn] : [];
  found.then(
    ({ elements, buttons }) =>
      show([
        ...elements,
        ...(buttons.length > 0
          ? [makeElement("div", { class: "doing" }, ...buttons, ...turns)]
          : []),
      ]),
    (error) => {
      console.error(error);
      show([message(words.failed, "fault")]);
    },
  );
  return () => stop.abort();
}

interface Finding<Asked, Done> {
  readonly look: PhotoLook<Asked, Done>;
  readonly signal: AbortSignal;
  readonly progress: HTMLProgressElement;
}

async function foundIn<Asked, Done>(
  file: Blob,
  quarters: number,
  { look, signal, progress }: Finding<Asked, Done>,
): Promise<PhotoShown> {
  const { longest, finer, ...rest } = look;
  const opened = await openPhoto(file, { quarters, longest });
  if (!opened.ok) {
    const { sentence, hint } = sayPhotoFault(opened.fault);
    return { elements: [message(`${sentence} ${hint}`, "fault")], buttons: [] };
  }
  if (signal.aborted) return { elements: [], buttons: [] };
  const work = runAside(look.asking(opened), (part) => (progress.value = part));
  signal.addEventListener("abort", work.cancel);
  const done = await work.done;
  if (!finer || !opened.isScaled || finer.isSure(done)) return look.show(opened, done);
  const again = { ...rest, longest: finer.longest };
  return foundIn(file, quarters, { look: again, signal, progress });
}

/** Words that the keyboard is led to, so that they are read out. */
function message(words: string, look = ""): HTMLElement {
  return makeElement("p", { tabindex: "-1", ...(look === "" ? {} : { class: look }) }, words);
}

export function photoButton(words: string, act: () => void): HTMLButtonElement {
  const element = makeElement("button", { type: "button" }, words);
  element.addEventListener("click", act);
  return element;
}
