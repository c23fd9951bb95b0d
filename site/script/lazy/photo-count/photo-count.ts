/** Counts the dots of a photo: as a worker of its own, or inside the page where a browser allows no worker. */
import { countDots } from "../../../../src/photo/count-dots.ts";
import type { Grey } from "../../../../src/photo/grey.ts";
import type { PaperCorners } from "../../../../src/photo/measure-paper.ts";
import { guessCorners, guessLinedCorners } from "../../../../src/photo/paper-edges.ts";
import type { PhotoCount } from "../../../../src/photo/photo-count.ts";
import type { PhotoStep } from "../photo/run-aside.ts";
import type { Counted, PhotoCountPart } from "./photo-count-part.ts";

/** Step by step, so that a page can breathe between. */
function* steps(photo: Grey): Generator<PhotoStep<Counted>> {
  const counting = countDots(photo);
  let step = counting.next();
  while (!step.done) {
    yield { kind: "part", part: step.value };
    step = counting.next();
  }
  const count = step.value;
  const corners = cornersOf(photo, count);
  yield { kind: "done", done: { count, ...(corners && { corners }) } };
}

function cornersOf(photo: Grey, count: PhotoCount): PaperCorners | undefined {
  if (!count.ok) return undefined;
  return count.of === "grid" ? guessCorners(photo, count.grid) : guessLinedCorners(count.page);
}

const part: PhotoCountPart = { steps };

if (typeof document === "undefined")
  addEventListener("message", ({ data }: MessageEvent<Grey>) => {
    for (const step of steps(data)) postMessage(step);
  });
else Object.assign(window, { spanbookPhotoCount: part });
