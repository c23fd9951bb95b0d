/** Counts what is printed on a photographed page: first in a smaller copy, and in the photo itself where that does not do. */
import { countDots } from "./count-dots.ts";
import type { Grey } from "./grey.ts";
import type { PhotoCount } from "./photo-count.ts";
import { enlarged, shrunk } from "./shrink-photo.ts";

/** The copy's longer side. */
const COPY = 1_200;
/** A copy with fewer pixels for a step is not trusted. */
const LEAST_STEP = 15;
/** What part of the work the copy is, where both are counted. */
const PART = 0.3;

/** Gives now and then what part of the work is done, so that whoever asks can pause or stop. */
export function* countPhoto(photo: Grey): Generator<number, PhotoCount> {
  const factor = COPY / Math.max(photo.width, photo.height);
  if (factor >= 1) return yield* partly(countDots(photo), 0, 1);
  yield 0;
  const first = yield* partly(countDots(shrunk(photo, factor)), 0, PART);
  if (first.ok && stepOf(first) >= LEAST_STEP) return enlarged(first, factor);
  return yield* partly(countDots(photo), PART, 1);
}

function stepOf(count: Extract<PhotoCount, { readonly ok: true }>): number {
  return count.of === "grid" ? count.grid.step : count.page.step;
}

/** The parts of a piece of work as parts of the whole. */
function* partly(
  work: Generator<number, PhotoCount>,
  from: number,
  to: number,
): Generator<number, PhotoCount> {
  let step = work.next();
  while (!step.done) {
    yield from + step.value * (to - from);
    step = work.next();
  }
  return step.value;
}
