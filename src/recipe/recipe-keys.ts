/** The keys of a recipe: for each what it takes and what it means. The check and the reference both read this table. */

import { SPAN_KINDS } from "../calendar/span.ts";
import { UNITS } from "../calendar/units.ts";
import type { Grammar, KeyEntry, Keys } from "../source/schema/keys.ts";
import { OUTSIDE } from "./dates.ts";
import { LIMITS } from "./limits.ts";
import { FILLS, PURPOSES } from "./recipe.ts";

export const LEFTOVER_KEYWORDS = ["end", "start", "centre", "gaps", "parts"] as const;

const TEXT = { kind: "text", longest: LIMITS.text } as const;
const STEPS = { kind: "whole", unit: "steps", min: 1, max: LIMITS.steps } as const;
const SPACE = { kind: "whole", unit: "steps", min: 0, max: LIMITS.space } as const;
const form = <F extends string>(name: F) => ({ kind: "form", form: name }) as const;
const SPLIT = { ...form("split"), min: 1, max: LIMITS.tracks } as const;
const margin = (where: string): KeyEntry & { readonly expected: typeof SPACE } => ({
  expected: SPACE,
  meaning: `Empty steps ${where}.`,
});

/** Which of the units are meant, beside a word for them. */
const SELECTION = {
  from: {
    expected: form("unit-number"),
    meaning: "The first unit that is taken: 1 is the first of all, −1 the last. Default: 1.",
  },
  to: {
    expected: form("unit-number"),
    meaning: "The last unit that is taken. Default: −1.",
  },
  least: {
    expected: { kind: "whole", unit: "tracks", min: 1, max: LIMITS.tracks },
    meaning: "The least number of units: where there are fewer, those that follow are added.",
  },
} as const satisfies Keys;

export const RECIPE_KEYS = {
  recipe: {
    title: { expected: TEXT, meaning: "The pattern's name, as it is shown." },
    purpose: {
      expected: { kind: "choice", allowed: PURPOSES },
      meaning: "What the page is for. The list of patterns is sorted by it.",
    },
    tags: {
      expected: { ...form("tags"), max: LIMITS.tags },
      meaning: "Words by which the pattern can be found.",
    },
    dates: {
      expected: { kind: "choice", allowed: SPAN_KINDS },
      meaning:
        "The pattern stands for one such span of days: its tracks can be days, weeks, months or quarters of it, and its labels can name them. Default: no days.",
    },
    outside: {
      expected: { kind: "choice", allowed: OUTSIDE },
      meaning:
        "How labels of days are shown that lie outside the month, quarter or year they stand in. Default: pale.",
    },
    date: {
      expected: form("day"),
      meaning:
        "The day on which it was written or last changed. Where patterns have one, the feed of a book with a `url` lists them, the newest first. Default: none.",
    },
    page: { expected: form("area"), meaning: "The area of a single page." },
    spread: { expected: form("spread"), meaning: "The areas of two facing pages." },
    otherwise: {
      expected: { ...form("attempts"), max: LIMITS.attempts },
      meaning: "Pages or spreads that are tried in order where the one before does not fit.",
    },
  },
  attempt: {
    page: { expected: form("area"), meaning: "The area of a single page." },
    spread: { expected: form("spread"), meaning: "The areas of two facing pages." },
  },
  spread: {
    left: { expected: form("area"), meaning: "The area of the left page." },
    right: { expected: form("area"), meaning: "The area of the right page." },
  },
  area: {
    label: {
      expected: TEXT,
      meaning:
        "What is written in the area. On an area that is split it is not drawn, and only names it in the book's words.",
    },
    margin: {
      expected: { ...form("margin"), min: 0, max: LIMITS.space },
      meaning:
        "Empty steps inside the area's edges. Two keys cannot mean one side: on a page bound at the top, inner is the top.",
    },
    columns: { expected: SPLIT, meaning: "Splits the area into columns." },
    rows: { expected: SPLIT, meaning: "Splits the area into rows." },
    fill: {
      expected: { kind: "choice", allowed: FILLS },
      meaning: "What is drawn in an area that is not split. Default: blank.",
    },
    every: { expected: STEPS, meaning: "The fill repeats every so many steps. Default: 1." },
  },
  track: {
    steps: { expected: STEPS, meaning: "The track has exactly so many steps." },
    share: {
      expected: { kind: "share", max: LIMITS.share },
      meaning: "The track's weight when tracks divide what is left. Default: 1.",
    },
    same: {
      expected: { kind: "text", longest: LIMITS.name },
      meaning: "A name. All tracks that carry it get one size, anywhere in the pattern.",
    },
    min: { expected: STEPS, meaning: "The fewest steps the track may have. Default: 1." },
    max: { expected: STEPS, meaning: "The most steps the track may have. Default: no limit." },
    repeat: {
      expected: { ...form("repeat"), min: 1, max: LIMITS.tracks, names: UNITS },
      meaning:
        "So many tracks of this kind, one after another; or, in a pattern with dates, one for each unit of the days around.",
    },
    ...SELECTION,
  },
  split: {
    count: {
      expected: { ...form("unit-count"), min: 1, max: LIMITS.tracks, names: UNITS },
      meaning:
        "So many tracks, all alike; or, in a pattern with dates, one for each unit of the days around.",
    },
    tracks: { expected: form("tracks"), meaning: "The tracks, one by one, instead of a count." },
    each: { expected: form("track"), meaning: "The track that `count` repeats." },
    labels: { expected: form("labels"), meaning: "Labels of the counted tracks, in order." },
    gap: {
      expected: { ...form("gap"), min: 0, max: LIMITS.space },
      meaning: "Empty steps between two tracks. Default: 0.",
    },
    leftover: {
      expected: { ...form("leftover"), names: LEFTOVER_KEYWORDS },
      meaning: "Where the steps go that tracks and gaps cannot take. Default: end.",
    },
    ...SELECTION,
  },
  gap: {
    min: { expected: SPACE, meaning: "The narrowest gap. Default: 0." },
    max: { expected: SPACE, meaning: "The widest gap." },
  },
  margin: {
    top: margin("at the top"),
    bottom: margin("at the bottom"),
    left: margin("at the left"),
    right: margin("at the right"),
    inner: margin("at the bound side"),
    outer: margin("across from the bound side"),
  },
} as const satisfies Grammar;
