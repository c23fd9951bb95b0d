/** From a file to what was counted in it, with all that is shown on the way. */
import { sayPhotoFault } from "../../../../src/issue/words/say-photo.ts";
import { photoReport } from "../../../../src/view/photo/photo-numbers.ts";
import { makeElement } from "../../ui/make-element.ts";
import { saveFile } from "../../ui/save-file.ts";
import { countPhoto } from "./count-photo.ts";
import { countedView } from "./counted-view.ts";
import { openPhoto } from "./open-photo.ts";
import type { PhotoWork } from "./photo-part.ts";

interface Running {
  /** The address that the page's scripts lie beside. */
  readonly own: string;
  readonly work: PhotoWork;
  /** What is shown of this photo. */
  readonly result: HTMLElement;
  /** Counts another time, the photo turned. */
  readonly again: (file: Blob, quarters: number) => void;
}

/** Begins; what it gives back stops it, and nothing is shown from then on. */
export function runPhoto(file: Blob, quarters: number, running: Running): () => void {
  const { result, again } = running;
  const stop = new AbortController();
  const progress = makeElement("progress", { max: "1", value: "0", "aria-label": "Counting" });
  const cancel = button("Stop counting", () => {
    stop.abort();
    result.replaceChildren(message("Counting was stopped."));
  });
  result.replaceChildren(progress, makeElement("div", { class: "doing" }, cancel));
  cancel.focus();
  const counted = countedIn(file, quarters, { running, signal: stop.signal, progress });
  const show = (elements: readonly HTMLElement[]) => {
    if (stop.signal.aborted) return;
    result.replaceChildren(...elements);
    result.querySelector<HTMLElement>("[tabindex]")?.focus();
  };
  const turn = button("Turn the photo", () => again(file, (quarters + 1) % 4));
  counted.then(
    ({ elements, buttons }) =>
      show([
        ...elements,
        ...(buttons.length > 0 ? [makeElement("div", { class: "doing" }, ...buttons, turn)] : []),
      ]),
    (error) => {
      console.error(error);
      show([message("The photo could not be counted: a part of this page is missing.", "fault")]);
    },
  );
  return () => stop.abort();
}

interface Shown {
  readonly elements: readonly HTMLElement[];
  readonly buttons: readonly HTMLElement[];
}

async function countedIn(
  file: Blob,
  quarters: number,
  {
    running: { own, work },
    signal,
    progress,
  }: {
    readonly running: Running;
    readonly signal: AbortSignal;
    readonly progress: HTMLProgressElement;
  },
): Promise<Shown> {
  const opened = await openPhoto(file, quarters);
  if (!opened.ok) {
    const { sentence, hint } = sayPhotoFault(opened.fault);
    return { elements: [message(`${sentence} ${hint}`, "fault")], buttons: [] };
  }
  const { canvas, grey } = opened;
  if (signal.aborted) return { elements: [], buttons: [] };
  const counting = countPhoto(own, grey, (part) => (progress.value = part));
  signal.addEventListener("abort", counting.cancel);
  const counted = await counting.done;
  const save = button("Save what was found", () =>
    saveFile("photo-count", "json", photoReport(grey, counted.count)),
  );
  return { elements: countedView(work, canvas, counted), buttons: [save] };
}

/** Words that the keyboard is led to, so that they are read out. */
function message(words: string, look = ""): HTMLElement {
  return makeElement("p", { tabindex: "-1", ...(look === "" ? {} : { class: look }) }, words);
}

function button(words: string, act: () => void): HTMLButtonElement {
  const element = makeElement("button", { type: "button" }, words);
  element.addEventListener("click", act);
  return element;
}
