/** Writes a notebook as the file that reads back as the same notebook. */
import { AXES } from "../measure/axis.ts";
import { toMm } from "../measure/length.ts";
import { writeText } from "../source/front-matter/quote-text.ts";
import { centredDot } from "./centred-dot.ts";
import type { Notebook } from "./notebook.ts";

/** The file's text for `notebooks/<slug>.md`. Every key is written but a first dot that is centred anyway. */
export function writeNotebook({ title, paperName, axes, ...notebook }: Notebook): string {
  const { across, down } = axes;
  const isCentred = AXES.every((axis) => axes[axis].firstDot === centredDot(axes[axis]));
  const lines = [
    `title: ${writeText(title)}`,
    `paper: ${paperName ?? pair(toMm(across.paper), toMm(down.paper))}`,
    `pitch: ${perAxis(toMm(across.pitch), toMm(down.pitch))}`,
    `dots: ${pair(across.dots, down.dots)}`,
    ...(isCentred ? [] : [`firstDot: ${pair(toMm(across.firstDot), toMm(down.firstDot))}`]),
    `count: ${perAxis(across.count, down.count)}`,
    `ruling: ${notebook.ruling}`,
    `binding: ${notebook.binding}`,
    `middle: ${notebook.middle}`,
  ];
  const body = notebook.body === "" ? "" : `\n${notebook.body}\n`;
  return `---\n${lines.join("\n")}\n---\n${body}`;
}

function pair(across: number, down: number): string {
  return `[${across}, ${down}]`;
}

/** One value where both axes agree. */
function perAxis<T extends number | string>(across: T, down: T): string {
  return across === down ? `${across}` : `{across: ${across}, down: ${down}}`;
}
