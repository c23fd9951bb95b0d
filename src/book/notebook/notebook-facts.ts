/** A notebook's numbers as its page tells them: in steps, and in millimetres. */
import {
  dotLength,
  type GridAxis,
  middlesOf,
  positionLength,
  usableSteps,
} from "../../measure/grid-axis.ts";
import { type Length, length, toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { NotebookEntry } from "../entries.ts";
import { mmText } from "../mm-text.ts";

/** One line of the table: the same fact across and down, a small print behind each. */
export interface AxisFact {
  readonly name: string;
  readonly across: string;
  readonly down: string;
}

const COUNT_WORDS = {
  "edge-to-dot": "edge to dot",
  "dot-to-dot": "dot to dot",
  "dot-to-edge": "dot to edge",
  "edge-to-edge": "edge to edge",
} as const;

/** A way of counting in words. */
export function countWords(count: GridAxis["count"]): string {
  return COUNT_WORDS[count];
}

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
    fact("Counted", (axis) => countWords(axis.count)),
    fact("Steps", (axis) => `${usableSteps(axis)}`),
    fact("Before the first dot", (axis) => mmText(axis.firstDot)),
    fact("After the last dot", (axis) => mmText(lastMargin(axis))),
    fact("Middle by counting", (axis) => countedMiddle(axis, notebook)),
    fact("Middle of the paper", paperMiddle),
  ];
}

/** A notebook as lists name it. */
export function notebookEntry({ slug, title, axes, ruling }: Notebook): NotebookEntry {
  return {
    slug,
    title,
    steps: `${usableSteps(axes.across)} × ${usableSteps(axes.down)}`,
    paper: withoutBreaks(
      `${bothMm(axes.across.paper, axes.down.paper)}, ${ruling} every ${pitchText(axes)}`,
    ),
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

function paperMiddle(axis: GridAxis): string {
  const half = length(axis.paper / 2);
  const before = Math.floor((half - axis.firstDot) / axis.pitch) + 1;
  const isOnDot = dotLength(axis, before) === half;
  const place = isOnDot ? `dot ${before}` : `between dots ${before} and ${before + 1}`;
  return `${mmText(half)}, ${place}`;
}
