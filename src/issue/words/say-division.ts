/** The words for a division that somebody asks for: its name, its sizes, and how to count it out on paper. */
import type { Axis } from "../../measure/axis.ts";
import type { StepPlace } from "../../measure/grid-axis.ts";
import { roundedMm } from "../../measure/length.ts";
import { asSentence, sayCount } from "./say-count.ts";

/** In steps and millimetres from the paper's left or top edge. */
export interface DivisionAnswer {
  /** All that the page has along the axis. */
  readonly steps: number;
  readonly gap: number;
  readonly sizes: readonly number[];
  /** Every position at which a part begins or ends, each once. */
  readonly marks: readonly number[];
  readonly leftover: number;
  readonly parts: readonly {
    readonly steps: number;
    readonly from: StepPlace & { readonly mm: number };
    readonly to: StepPlace & { readonly mm: number };
  }[];
}

interface Asked {
  readonly axis: Axis;
  readonly parts: number;
  readonly gap: number;
}

/** By the number of parts: what they are called. */
const NAMES = [
  "",
  "one part",
  "halves",
  "thirds",
  "quarters",
  "fifths",
  "sixths",
  "sevenths",
  "eighths",
  "ninths",
  "tenths",
  "elevenths",
  "twelfths",
];

/** `halves`, `thirds`, `13 parts`. */
export function sayParts(parts: number): string {
  return NAMES[parts] ?? sayCount(parts, "part");
}

/** `Thirds across, gap 1`: short enough for a file's title. */
export function sayDivisionTitle({ axis, parts, gap }: Asked): string {
  return `${asSentence(sayParts(parts))} ${axis}${gap > 0 ? `, gap ${gap}` : ""}`;
}

/** What a plain division is called on a strip: `Thirds, gap 1`, `Halves, margin 2`, `Quarters, 3 free before`. */
export function sayPlainTitle(
  { parts, gap }: Omit<Asked, "axis">,
  [before, after]: readonly [before: number, after: number],
): string {
  const ends =
    before === after
      ? before > 0
        ? [`margin ${before}`]
        : []
      : [
          ...(before > 0 ? [`${before} free before`] : []),
          ...(after > 0 ? [`${after} free after`] : []),
        ];
  return [asSentence(sayParts(parts)), ...(gap > 0 ? [`gap ${gap}`] : []), ...ends].join(", ");
}

/** `Thirds with a gap of 1: 7 · 7 · 7`. */
export function sayDivision({ parts, gap }: Asked, { sizes }: DivisionAnswer): string {
  return `${asSentence(sayParts(parts))}${gap > 0 ? ` with a gap of ${gap}` : ""}: ${saySizes(sizes)}`;
}

/** `7 · 7 · 7`; more than six that are alike as `16 × 2`. */
function saySizes(sizes: readonly number[]): string {
  const [first = 0] = sizes;
  const areMany = sizes.length > 6 && sizes.every((size) => size === first);
  return areMany ? `${sizes.length} × ${first}` : sizes.join(" · ");
}

/** What of all steps is left over, and where it lies. */
export function sayDivisionLeftover({ steps, leftover }: DivisionAnswer): string {
  const of = `Of ${sayCount(steps, "step")}`;
  if (leftover === 0) return `${of}, nothing left over.`;
  return `${of}, ${leftover} left over at the end.`;
}

/** One row of the table that is counted by. */
export interface PartRow {
  readonly steps: string;
  readonly count: string;
  readonly dots: string;
  readonly mm: string;
}

/** Each part: from which count to which, from which dot to which, and where that is on paper. */
export function partRows({ parts }: DivisionAnswer): readonly PartRow[] {
  return parts.map(({ steps, from, to }) => ({
    steps: `${steps}`,
    count: `${from.position} – ${to.position}`,
    dots: `${sayDot(from)} – ${sayDot(to)}`,
    mm: `${roundedMm(from.mm)} – ${roundedMm(to.mm)}`,
  }));
}

function sayDot({ dot }: StepPlace): string {
  return dot === undefined ? "edge" : `${dot}`;
}

/** Why the parts do not fit: how many steps they would need at least. */
export function sayNoDivision(
  { parts, gap }: Asked,
  { margin, steps }: { readonly margin: number; readonly steps: number },
): string {
  const needs = parts + (parts - 1) * gap + margin;
  return `There are ${sayCount(steps, "step")}: ${sayParts(parts)}${gap > 0 ? ` with a gap of ${gap}` : ""} need at least ${needs}.`;
}
