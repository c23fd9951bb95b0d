/** Measures the bars in a photo: as a worker of its own, or inside the page where a browser allows no worker. */
import type { BarsFound } from "../../../../src/photo/bars-found.ts";
import { measureBars } from "../../../../src/photo/measure-bars.ts";
import type { PhotoStep } from "../photo/run-aside.ts";
import type { BarsMeasurePart, BarsQuestion } from "./bars-measure-part.ts";

/** Step by step, so that a page can breathe between. */
function* steps({ photo, focal }: BarsQuestion): Generator<PhotoStep<BarsFound>> {
  const measuring = measureBars(photo, focal);
  let step = measuring.next();
  while (!step.done) {
    yield { kind: "part", part: step.value };
    step = measuring.next();
  }
  yield { kind: "done", done: step.value };
}

const part: BarsMeasurePart = { steps };

if (typeof document === "undefined")
  addEventListener("message", ({ data }: MessageEvent<BarsQuestion>) => {
    for (const step of steps(data)) postMessage(step);
  });
else Object.assign(window, { spanbookBarsMeasure: part });
