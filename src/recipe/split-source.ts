/** A split as plain data: the keys and values of the file that reads back as the same split. */
import type { FlowValue } from "../source/front-matter/write-flow.ts";
import { type Area, MARGIN_KEYS, type Margin, type Split, type Track } from "./recipe.ts";

type Keys = Readonly<Record<string, FlowValue>>;

/** The value behind `columns`, `rows` or `split`. */
export function splitSource({ tracks, gap, leftover }: Split): FlowValue {
  const sources = tracks.map(trackSource);
  const isPlain = sources.every((source) => Object.keys(source).length === 0);
  const target = leftover.kind === "track" ? tracks[leftover.index]?.area.label : leftover.kind;
  return {
    ...(isPlain ? { count: tracks.length } : { tracks: sources }),
    ...(gap.max === 0 ? {} : { gap: gapSource(gap) }),
    ...(target === undefined || target === "end" ? {} : { leftover: target }),
  };
}

function gapSource({ min, max }: Split["gap"]): FlowValue {
  return min === max ? min : { min, max };
}

/** What a track says beside what is usual. */
function trackSource({ size, area }: Track): Keys {
  return { ...sizeSource(size), ...areaSource(area) };
}

function sizeSource(size: Track["size"]): Keys {
  if (size.kind === "steps") return { steps: size.steps };
  return {
    ...(size.kind === "same" ? { same: size.name } : {}),
    ...(size.weight === 100 ? {} : { share: size.weight / 100 }),
    ...(size.min === 1 ? {} : { min: size.min }),
    ...(Number.isFinite(size.max) ? { max: size.max } : {}),
  };
}

function areaSource({ label, margin, split, fill, every }: Area): Keys {
  return {
    ...(label === "" ? {} : { label }),
    ...marginSource(margin),
    ...(split ? { [split.axis === "across" ? "columns" : "rows"]: splitSource(split) } : {}),
    ...(fill === "blank" ? {} : { fill }),
    ...(every === 1 ? {} : { every }),
  };
}

function marginSource({ steps }: Margin): Keys {
  const sides = MARGIN_KEYS.flatMap((key) => {
    const free = steps[key];
    return free === undefined ? [] : [[key, free] as const];
  });
  return sides.length === 0 ? {} : { margin: Object.fromEntries(sides) };
}
