/** Short ways to write a checked recipe down in a test. */
import type { TrackSize } from "../../src/divide/question.ts";
import type { Area, Attempt, Recipe, Split, Track, TrackSizing } from "../../src/recipe/recipe.ts";
import { shareTrack } from "./track.ts";

export function recipeOf(...attempts: readonly Attempt[]): Recipe {
  return { slug: "tried", title: "Tried", purpose: "notes", tags: [], attempts, body: "" };
}

export function onePage(page: Area): Attempt {
  return { kind: "page", page };
}

export function spread(left: Area, right: Area): Attempt {
  return { kind: "spread", left, right };
}

/** A leaf, or what is given of an area. */
export function area(given: Partial<Area> = {}): Area {
  return { label: "", margin: { steps: {} }, fill: "blank", every: 1, ...given };
}

type Sized = TrackSizing | Track;

/** Columns of these sizes; a size alone is a blank leaf of that size. */
export function columns(tracks: readonly Sized[], given: Partial<Split> = {}): Split {
  return splitAlong("across", tracks, given);
}

export function rows(tracks: readonly Sized[], given: Partial<Split> = {}): Split {
  return splitAlong("down", tracks, given);
}

function splitAlong(axis: Split["axis"], tracks: readonly Sized[], given: Partial<Split>): Split {
  return {
    axis,
    tracks: tracks.map((track) => ("area" in track ? track : { size: track, area: area() })),
    gap: { min: 0, max: 0 },
    leftover: { kind: "end" },
    ...given,
  };
}

/** A track with an area of its own. */
export function track(size: TrackSizing, inner: Area): Track {
  return { size, area: inner };
}

/** A track whose size has a name; share 1 and no limits where none are given. */
export function same(name: string, size: TrackSize = shareTrack(1)): TrackSizing {
  if (size.kind !== "share") throw new RangeError("a named track has a share");
  return { ...size, kind: "same", name };
}
