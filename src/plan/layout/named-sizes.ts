/** What a `same` name means inside one split: a fixed size, or a share track as long as it is not fixed. */
import type { TrackSize } from "../../divide/question.ts";
import type { Split, TrackSizing } from "../../recipe/recipe.ts";

/** A name and the size that is being tried for it, in steps. */
export interface Trial {
  readonly name: string;
  readonly size: number;
}

/** A split's track sizes as the engine takes them. */
export function trackSizes(split: Split, fixed: ReadonlyMap<string, number>): readonly TrackSize[] {
  return split.tracks.map(({ size }) => {
    if (size.kind !== "same") return size;
    const steps = fixed.get(size.name);
    return steps === undefined ? { ...size, kind: "share" } : { kind: "steps", steps };
  });
}

/**
 * Is the trial above the exact share of a track of its name in this split? The share goes by weights, `same` tracks
 * counting with theirs, at the narrowest gap. Whole numbers: s > w/W · free is s · W > w · free.
 */
export function exceedsShare(split: Split, length: number, trial: Trial): boolean {
  const named = split.tracks.filter(({ size }) => hasName(size, trial.name));
  if (named.length === 0) return false;
  let weights = 0;
  let free = length - (split.tracks.length - 1) * split.gap.min;
  for (const { size } of split.tracks) {
    if (size.kind === "steps") free -= size.steps;
    else weights += size.weight;
  }
  return named.some(
    ({ size }) => size.kind === "same" && trial.size * weights > size.weight * free,
  );
}

function hasName(size: TrackSizing, name: string): boolean {
  return size.kind === "same" && size.name === name;
}
