/** Random nested patterns with `same` names whose sizes an integer program can tell. */
import type { ShareSize } from "../../src/divide/question.ts";
import type { Area, Split, Track, TrackSizing } from "../../src/recipe/recipe.ts";
import { type Random, randomFrom } from "./random.ts";
import { area, columns, rows, same, track } from "./recipe-of.ts";
import { fixedTrack, shareTrack } from "./track.ts";

export interface NamedPattern {
  readonly across: number;
  readonly down: number;
  readonly page: Area;
}

/** Patterns whose page holds fixed parts and a rest, at times one named, each divided again with names in it. */
export function* namedPatterns(seed: number, cases: number): Generator<NamedPattern> {
  const random = randomFrom(seed);
  for (let i = 0; i < cases; i++) {
    yield { across: random.whole(12, 60), down: random.whole(12, 60), page: outerArea(random) };
  }
}

/** The name `bed` comes first wherever it is a part of the page, so that the others are sized after it. */
function outerArea(random: Random): Area {
  const named = random.oneIn(2) ? [innerTrack(random, same("bed", limited(random)))] : [];
  const fixed = Array.from({ length: random.whole(1, 2) }, () =>
    innerTrack(random, fixedTrack(random.whole(2, 14))),
  );
  const rest = innerTrack(random, shareTrack(random.whole(1, 3)));
  return area({ split: divided(random, [...named, ...fixed, rest]) });
}

function innerTrack(random: Random, size: TrackSizing): Track {
  const sizes = Array.from({ length: random.whole(1, 4) }, () => innerSize(random));
  return track(size, area({ split: divided(random, sizes) }));
}

function innerSize(random: Random): TrackSizing {
  if (random.oneIn(4)) return fixedTrack(random.whole(1, 5));
  if (random.oneIn(3)) return limited(random);
  return same(random.pick(["bed", "bed", "path"]), limited(random));
}

function limited(random: Random): ShareSize {
  const min = random.oneIn(3) ? random.whole(1, 6) : 1;
  const max = random.oneIn(4) ? min + random.whole(0, 8) : Number.POSITIVE_INFINITY;
  return { kind: "share", weight: 100 * random.whole(1, 3), min, max };
}

function divided(random: Random, tracks: readonly (TrackSizing | Track)[]): Split {
  const min = random.whole(0, 2);
  const along = random.oneIn(2) ? columns : rows;
  return along(tracks, { gap: { min, max: min + random.whole(0, 1) } });
}
