/** Where leftover steps go, read off the rule word by word: one step at a time, and the even choice from all choices. */
import type { PlacedSplit, Placing } from "../../src/divide/place-leftover.ts";
import type { Division, TrackSize } from "../../src/divide/question.ts";
import { mostEvenChoice } from "./even-choices.ts";

/** The split as drawn. */
export function placedByTheText(
  division: Division,
  tracks: readonly TrackSize[],
  placing: Placing,
): PlacedSplit {
  const sizes = [...division.sizes];
  const gaps = sizes.slice(1).map(() => division.gap);
  const drawn = { sizes, gaps, before: 0, after: 0 };
  const half = division.leftover / 2;
  switch (placing.kind) {
    case "start":
      drawn.before = division.leftover;
      break;
    case "centre":
      drawn.before = Math.trunc(half);
      drawn.after = division.leftover - Math.trunc(half);
      break;
    case "gaps":
      drawn.after = giveOut(division.leftover, gaps, () => true);
      break;
    case "parts":
      drawn.after = giveOut(division.leftover, sizes, (size, i) => mayGrow(tracks[i], size));
      break;
    case "track":
      for (let given = 0; given < division.leftover; given++)
        sizes[placing.index] = (sizes[placing.index] ?? 0) + 1;
      break;
    default:
      drawn.after = division.leftover;
  }
  return drawn;
}

/** Share tracks only, and never past a max. */
function mayGrow(track: TrackSize | undefined, size: number): boolean {
  return track?.kind === "share" && size + 1 <= track.max;
}

/** Rounds of one step to each place that may grow, the last round spread evenly; tells what none could take. */
function giveOut(
  steps: number,
  list: number[],
  mayTake: (size: number, index: number) => boolean,
): number {
  let left = steps;
  while (left > 0) {
    const places = [...list.keys()].filter((i) => mayTake(list[i] ?? 0, i));
    if (places.length === 0) return left;
    const taken = Math.min(left, places.length);
    const chosen = mostEvenChoice(taken, places.length);
    places.forEach((place, i) => {
      if (chosen[i]) list[place] = (list[place] ?? 0) + 1;
    });
    left -= taken;
  }
  return 0;
}
