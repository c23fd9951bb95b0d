/** A recipe changed as a near fit tells it: by its words alone, at the place that it names, as an author would. */
import type {
  MarginChange,
  NameChange,
  NearFit,
  SplitChange,
} from "../../src/issue/facts/near-fit.ts";
import type { Axis } from "../../src/measure/axis.ts";
import type { Binding } from "../../src/notebook/notebook.ts";
import {
  type Area,
  type Attempt,
  MARGIN_KEYS,
  type Margin,
  type SameSize,
  type Split,
  type Track,
  type TrackSizing,
} from "../../src/recipe/recipe.ts";
import { sheetsOf } from "./laid-out-by-the-text.ts";

/** The attempt after one edit, everywhere that a repeated track holds the edited thing; throws where it is not there. */
export function editedByTheText(attempt: Attempt, edit: NearFit, binding: Binding): Attempt {
  if (isOfName(edit)) return looserName(attempt, edit);
  const target = areaAt(attempt, edit.side, placeOf(edit));
  if (edit.kind === "smaller-margin" || edit.kind === "leave-out-margin") {
    const margin =
      edit.kind === "smaller-margin"
        ? smallerMargin(target.margin, edit, binding)
        : withoutKey(target.margin, edit.key);
    return replaced(attempt, (area) =>
      area.margin === target.margin ? { ...area, margin } : area,
    );
  }
  const { split } = target;
  if (!split) throw new RangeError(`${edit.path} is not a split`);
  const other = editedSplit(split, edit);
  return replaced(attempt, (area) => (area.split === split ? { ...area, split: other } : area));
}

/** The number that an edit starts from, as the recipe has it. */
export function startOf(attempt: Attempt, edit: NearFit, binding: Binding): number {
  if (isOfName(edit)) {
    const sizes = allTracks(attempt).flatMap(({ size }) =>
      hasName(size, edit.name) ? [size] : [],
    );
    return edit.kind === "smaller-name-min"
      ? Math.max(...sizes.map(({ min }) => min))
      : Math.min(...sizes.map(({ max }) => max));
  }
  const { margin, split } = areaAt(attempt, edit.side, placeOf(edit));
  const tracks = split?.tracks ?? [];
  switch (edit.kind) {
    case "smaller-margin":
      return keysAlong(edit.axis, binding).reduce((so, key) => so + (margin.steps[key] ?? 0), 0);
    case "leave-out-margin":
      return Object.entries(margin.steps).find(([key]) => key === edit.key)?.[1] ?? 0;
    case "narrower-gap":
      return split?.gap.min ?? 0;
    case "fewer-tracks":
      return tracks.length;
    case "smaller-min":
      return Math.max(...tracks.map(({ size }) => (size.kind === "steps" ? 0 : size.min)));
    case "smaller-steps":
      return Math.max(...tracks.map(({ size }) => (size.kind === "steps" ? size.steps : 0)));
  }
}

function isOfName(edit: NearFit): edit is NameChange {
  return edit.kind === "smaller-name-min" || edit.kind === "larger-name-max";
}

/** The area that an edit is about: around the split that it names, or the one that has the margin. */
function placeOf(edit: Exclude<NearFit, NameChange>): string {
  return edit.kind === "smaller-margin" || edit.kind === "leave-out-margin"
    ? edit.path
    : edit.path.replace(/\.?\w+$/, "");
}

function withoutKey(margin: Margin, left: string): Margin {
  const kept = MARGIN_KEYS.filter((key) => key !== left && margin.steps[key] !== undefined);
  return { ...margin, steps: Object.fromEntries(kept.map((key) => [key, margin.steps[key]])) };
}

/** Every track that carries the name, wherever it stands. */
function looserName(attempt: Attempt, { kind, name, to }: NameChange): Attempt {
  const splits = new Map<Split, Split>();
  const looser = (size: SameSize): SameSize =>
    kind === "smaller-name-min"
      ? { ...size, min: Math.min(size.min, to) }
      : { ...size, max: Math.max(size.max, to) };
  return replaced(attempt, (area) => {
    const { split } = area;
    if (!split) return area;
    const tracks = split.tracks.map((track) =>
      hasName(track.size, name) ? { ...track, size: looser(track.size) } : track,
    );
    const made = splits.get(split) ?? { ...split, tracks };
    splits.set(split, made);
    return { ...area, split: made };
  });
}

function hasName(size: TrackSizing, name: string): size is SameSize {
  return size.kind === "same" && size.name === name;
}

function allTracks(attempt: Attempt): readonly Track[] {
  const inside = ({ split }: Area): readonly Track[] =>
    (split?.tracks ?? []).flatMap((track) => [track, ...inside(track.area)]);
  return sheetsOf(attempt).flatMap(([, area]) => inside(area));
}

function areaAt(attempt: Attempt, side: SplitChange["side"], path: string): Area {
  let area = sheetsOf(attempt).find(([name]) => name === side)?.[1];
  for (const index of path.match(/\d+/g) ?? []) area = area?.split?.tracks[Number(index)]?.area;
  if (!area) throw new RangeError(`there is no ${path} on the ${side} page`);
  return area;
}

function editedSplit(split: Split, { kind, to }: SplitChange): Split {
  switch (kind) {
    case "narrower-gap":
      return { ...split, gap: { ...split.gap, min: to } };
    case "fewer-tracks":
      return withTracks(split, fewer(split.tracks, split.tracks.length - to));
    case "smaller-min":
      return withTracks(
        split,
        resized(split, (size) =>
          size.kind === "steps" || size.min <= to ? size : { ...size, min: to },
        ),
      );
    case "smaller-steps":
      return withTracks(
        split,
        resized(split, (size) =>
          size.kind === "steps" && size.steps > to ? { ...size, steps: to } : size,
        ),
      );
  }
}

function resized(split: Split, change: (size: TrackSizing) => TrackSizing): readonly Track[] {
  return split.tracks.map((track) => ({ ...track, size: change(track.size) }));
}

/** A leftover that went to a track goes to the end when that track is gone. */
function withTracks(split: Split, tracks: readonly Track[]): Split {
  const { leftover } = split;
  if (leftover.kind !== "track" || tracks.length === split.tracks.length)
    return { ...split, tracks };
  const taker = split.tracks[leftover.index];
  const index = taker ? tracks.indexOf(taker) : -1;
  return { ...split, tracks, leftover: index < 0 ? { kind: "end" } : { kind: "track", index } };
}

/** So many tracks fewer at the end of the longest run of tracks with one size, the last of equally long runs. */
function fewer(tracks: readonly Track[], drop: number): readonly Track[] {
  const lengths = tracks.map((_, end) => {
    let from = end;
    while (from > 0 && isSame(tracks[from - 1], tracks[from])) from--;
    return end - from + 1;
  });
  const longest = Math.max(...lengths);
  const end = lengths.lastIndexOf(longest);
  if (drop > longest) throw new RangeError(`no ${drop} tracks that are alike stand in a row`);
  return tracks.filter((_, i) => i <= end - drop || i > end);
}

function isSame(a: Track | undefined, b: Track | undefined): boolean {
  return JSON.stringify(a?.size) === JSON.stringify(b?.size);
}

type Key = keyof Margin["steps"];

/** A step at a time from the widest margin along the axis, of equals the last in the order of the keys. */
function smallerMargin(margin: Margin, { axis, from, to }: MarginChange, binding: Binding): Margin {
  const steps: Partial<Record<Key, number>> = { ...margin.steps };
  const keys = keysAlong(axis, binding);
  for (let taken = 0; taken < from - to; taken++) {
    const widest = Math.max(...keys.map((key) => steps[key] ?? 0));
    const key = keys.findLast((each) => steps[each] === widest);
    if (key) steps[key] = widest - 1;
  }
  return { ...margin, steps };
}

function keysAlong(axis: Axis, binding: Binding): readonly Key[] {
  const isBoundAlong = (axis === "down") === (binding === "top");
  const fixed: readonly Key[] = axis === "across" ? ["left", "right"] : ["top", "bottom"];
  return isBoundAlong ? [...fixed, "inner", "outer"] : fixed;
}

/** All areas changed; what was one object stays one object, so that a second edit finds it everywhere too. */
function replaced(attempt: Attempt, change: (area: Area) => Area): Attempt {
  const areas = new Map<Area, Area>();
  const splits = new Map<Split, Split>();
  const splitOf = (split: Split): Split => {
    const known = splits.get(split);
    if (known) return known;
    const tracks = split.tracks.map((track) => ({ ...track, area: areaOf(track.area) }));
    const made = { ...split, tracks };
    splits.set(split, made);
    return made;
  };
  const areaOf = (area: Area): Area => {
    const known = areas.get(area);
    if (known) return known;
    const changed = change(area);
    const made = changed.split ? { ...changed, split: splitOf(changed.split) } : changed;
    areas.set(area, made);
    return made;
  };
  if (attempt.kind === "page") return { kind: "page", page: areaOf(attempt.page) };
  return { kind: "spread", left: areaOf(attempt.left), right: areaOf(attempt.right) };
}
