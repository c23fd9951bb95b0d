/** Writes a split as the flow of YAML that reads back as the same split. */
import { writeFlowText } from "../source/front-matter/quote-text.ts";
import { type Area, MARGIN_KEYS, type Margin, type Split, type Track } from "./recipe.ts";

/** The value behind `columns`, `rows` or `split`. */
export function writeSplit({ tracks, gap, leftover }: Split): string {
  const isPlain = tracks.every((track) => trackKeys(track).length === 0);
  const target = leftover.kind === "track" ? tracks[leftover.index]?.area.label : leftover.kind;
  return flow([
    isPlain ? `count: ${tracks.length}` : `tracks: [${tracks.map(writeTrack).join(", ")}]`,
    ...(gap.max === 0 ? [] : [`gap: ${writeGap(gap)}`]),
    ...(target === undefined || target === "end" ? [] : [`leftover: ${writeFlowText(target)}`]),
  ]);
}

function writeGap({ min, max }: Split["gap"]): string {
  return min === max ? `${min}` : `{min: ${min}, max: ${max}}`;
}

function writeTrack(track: Track): string {
  return flow(trackKeys(track));
}

/** What a track says beside what is usual. */
function trackKeys({ size, area }: Track): readonly string[] {
  return [...sizeKeys(size), ...areaKeys(area)];
}

function sizeKeys(size: Track["size"]): readonly string[] {
  if (size.kind === "steps") return [`steps: ${size.steps}`];
  return [
    ...(size.kind === "same" ? [`same: ${writeFlowText(size.name)}`] : []),
    ...(size.weight === 100 ? [] : [`share: ${size.weight / 100}`]),
    ...(size.min === 1 ? [] : [`min: ${size.min}`]),
    ...(Number.isFinite(size.max) ? [`max: ${size.max}`] : []),
  ];
}

function areaKeys({ label, margin, split, fill, every }: Area): readonly string[] {
  return [
    ...(label === "" ? [] : [`label: ${writeFlowText(label)}`]),
    ...marginKeys(margin),
    ...(split ? [`${split.axis === "across" ? "columns" : "rows"}: ${writeSplit(split)}`] : []),
    ...(fill === "blank" ? [] : [`fill: ${fill}`]),
    ...(every === 1 ? [] : [`every: ${every}`]),
  ];
}

function marginKeys({ steps }: Margin): readonly string[] {
  const keys = MARGIN_KEYS.flatMap((key) => (steps[key] === undefined ? [] : [[key, steps[key]]]));
  return keys.length === 0
    ? []
    : [`margin: ${flow(keys.map(([key, value]) => `${key}: ${value}`))}`];
}

function flow(entries: readonly string[]): string {
  return `{${entries.join(", ")}}`;
}
