/** A notebook's numbers as its page tells them: in steps, and in millimetres. */
import { sayMm } from "../../issue/words/say-count.ts";
import {
  type Count,
  dotLength,
  type GridAxis,
  middlesOf,
  paperMiddle,
  positionLength,
  usableSteps,
} from "../../measure/grid-axis.ts";
import { type Length, length, toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { writeAddress } from "../address/hash-params.ts";
import { notebookEntries } from "../address/notebook-address.ts";
import type { NotebookEntry } from "../entries.ts";
import { unnamed } from "../fields/name-notebook.ts";

/** One line of the table: the same fact across and down, a small print behind each. */
export interface AxisFact {
  readonly name: string;
  readonly across: string;
  readonly down: string;
}

/** The ways of counting in words. */
export const COUNT_WORDS: Readonly<Record<Count, string>> = {
  "edge-to-dot": "edge to dot",
  "dot-to-dot": "dot to dot",
  "dot-to-edge": "dot to edge",
  "edge-to-edge": "edge to edge",
};

/** The lines of a notebook's table of numbers. */
export function notebookFacts(notebook: Notebook): readonly AxisFact[] {
  const fact = (name: string, read: (axis: GridAxis) => string): AxisFact => ({
    name,
    across: read(notebook.axes.across),
    down: read(notebook.axes.down),
  });
  return [
    fact("Paper", (axis) => mmText(axis.paper)),
    fact("Pitch", (axis) => mmText(axis.pitch)),
    fact("Dots", (axis) => `${axis.dots}`),
    fact("Counted", (axis) => COUNT_WORDS[axis.count]),
    fact("Steps", (axis) => `${usableSteps(axis)}`),
    fact("Before the first dot", (axis) => mmText(axis.firstDot)),
    fact("After the last dot", (axis) => mmText(lastMargin(axis))),
    fact("Middle by counting", (axis) => countedMiddle(axis, notebook)),
    fact("Middle of the paper", middleOfPaper),
  ];
}

/** A notebook as lists name it. */
export function notebookEntry(notebook: Notebook): NotebookEntry {
  const { slug, title, axes, ruling } = notebook;
  return {
    slug,
    title,
    steps: `${usableSteps(axes.across)} × ${usableSteps(axes.down)}`,
    paper: withoutBreaks(
      `${bothMm(axes.across.paper, axes.down.paper)}, ${ruling} every ${pitchText(axes)}`,
    ),
    address: writeAddress(notebookEntries(unnamed(notebook))),
    width: toMm(axes.across.paper),
    height: toMm(axes.down.paper),
  };
}

/** No line ends between a number and its unit. */
function withoutBreaks(text: string): string {
  return text.replaceAll(" mm", "\u00a0mm");
}

/** The same pitch both ways is said once. */
function pitchText({ across, down }: Notebook["axes"]): string {
  return across.pitch === down.pitch ? mmText(across.pitch) : bothMm(across.pitch, down.pitch);
}

function bothMm(across: Length, down: Length): string {
  return `${mmText(across).replace(" mm", "")} × ${mmText(down)}`;
}

function lastMargin(axis: GridAxis): Length {
  return length(axis.paper - dotLength(axis, axis.dots));
}

function countedMiddle(axis: GridAxis, { middle }: Notebook): string {
  return middlesOf(usableSteps(axis), middle)
    .map((position) => `${position}, at ${mmText(positionLength(axis, position))}`)
    .join(" and ");
}

function middleOfPaper(axis: GridAxis): string {
  const { at, dots } = paperMiddle(axis);
  return `${mmText(at)}, ${placeBetween(dots, axis)}`;
}

/** The two dots are one where the middle lies on it; 0 and one more than there are stand for the paper's edges. */
function placeBetween([lower, higher]: readonly [number, number], axis: GridAxis): string {
  if (lower === higher) return `dot ${lower}`;
  if (lower === 0) return "before the first dot";
  if (higher > axis.dots) return "behind the last dot";
  return `between dots ${lower} and ${higher}`;
}

/** `11.5 mm`, `148 mm`. */
export function mmText(length: Length): string {
  return sayMm(toMm(length));
}

/** Lengths that are all alike are said once: `65 mm each`, `71.5, 65 mm`. */
export function mmList(lengths: readonly Length[]): string {
  const [first, ...others] = lengths;
  if (first === undefined) return "";
  if (others.length > 0 && others.every((length) => length === first))
    return `${mmText(first)} each`;
  return `${lengths.map((length) => mmText(length).replace(" mm", "")).join(", ")} mm`;
}

/** In CSS pixels. */
const WIDEST = 150;
const PER_MM = 0.8;

/** CSS pixels a millimetre. */
export function paperScale(notebooks: readonly Pick<NotebookEntry, "width">[]): number {
  return Math.min(PER_MM, ...notebooks.map(({ width }) => WIDEST / width));
}
