/** An area turned round, left for right. */
import type { Area, Margin, Split } from "../../src/recipe/recipe.ts";

/** The mirror image of an area: columns in the other order, the margins at both sides swapped. */
export function mirrored(area: Area): Area {
  const { split } = area;
  const turned = { ...area, margin: mirroredMargin(area.margin) };
  return split ? { ...turned, split: mirroredSplit(split) } : turned;
}

const ACROSS_FROM = { left: "right", right: "left", inner: "outer", outer: "inner" } as const;

function mirroredMargin({ steps }: Margin): Margin {
  const turned = Object.entries(steps).map(([key, size]) => {
    const isSide = key === "left" || key === "right" || key === "inner" || key === "outer";
    return [isSide ? ACROSS_FROM[key] : key, size];
  });
  return { steps: Object.fromEntries(turned) };
}

function mirroredSplit(split: Split): Split {
  const tracks = split.tracks.map((track) => ({ ...track, area: mirrored(track.area) }));
  if (split.axis === "down") return { ...split, tracks };
  const { leftover } = split;
  const last = tracks.length - 1;
  return {
    ...split,
    tracks: tracks.toReversed(),
    leftover: leftover.kind === "track" ? { ...leftover, index: last - leftover.index } : leftover,
  };
}

/** An area that is its own mirror image: columns are followed by their mirror images, rows are each made symmetric. */
export function symmetric(area: Area): Area {
  const { split } = area;
  const { top = 0, bottom = 0, left = 0 } = area.margin.steps;
  const even = { ...area, margin: { steps: { top, bottom, left, right: left } } };
  if (!split) return even;
  if (split.axis === "down") {
    const tracks = split.tracks.map((track) => ({ ...track, area: symmetric(track.area) }));
    return { ...even, split: { ...split, tracks } };
  }
  const half = split.tracks.slice(1);
  const tracks = [
    ...half,
    ...split.tracks.slice(0, 1).map((track) => ({ ...track, area: symmetric(track.area) })),
    ...half.toReversed().map((track) => ({ ...track, area: mirrored(track.area) })),
  ];
  return { ...even, split: { ...split, tracks, leftover: { kind: "centre" } } };
}
