/** What a counted photo says about a notebook, as its fields take it. */

import type { PhotoPoint } from "../../photo/grey.ts";
import type { MeasuredLines } from "../../photo/measure-lines.ts";
import type { MeasuredGrid, PaperSize } from "../../photo/measure-paper.ts";
import type { CountedGrid, LinedPage, PhotoCount } from "../../photo/photo-count.ts";
import type { NotebookFields } from "../fields/notebook-fields.ts";

/** Grids are made in steps of this, in mm; a photo tells no more (common practice, no source). */
const PITCH_STEP = 0.05;
/** A grid that is centred to this, in mm, is taken as centred: a photo tells no better. */
const CENTRED_WITHIN = 0.4;

type PhotoFields = Pick<NotebookFields, "dotsDown" | "ruling"> &
  Partial<Pick<NotebookFields, "dotsAcross" | "pitch" | "pitchDown" | "firstLeft" | "firstTop">>;

/** Lengths only where the paper was measured. An empty first dot is a grid in the middle of the paper. */
export function photoFields(grid: CountedGrid, measured?: MeasuredPaper): PhotoFields {
  const counts = {
    dotsAcross: `${grid.across}`,
    dotsDown: `${grid.down}`,
    ruling: grid.ruling,
  };
  if (!measured) return counts;
  const { pitch, first, paper } = measured;
  const across = roundedTo(pitch.across, PITCH_STEP);
  const down = roundedTo(pitch.down, PITCH_STEP);
  return {
    ...counts,
    pitch: across,
    pitchDown: across === down ? "" : down,
    firstLeft: firstText(first.left, paper.width - (grid.across - 1) * Number(across)),
    firstTop: firstText(first.top, paper.height - (grid.down - 1) * Number(down)),
  };
}

/** A lined page tells nothing of its columns: what its fields across say is left alone. */
export function linedFields(
  { lines }: LinedPage,
  measured?: MeasuredLines & { readonly paper: PaperSize },
): PhotoFields {
  const counts = { dotsDown: `${lines.length}`, ruling: "lines" };
  if (!measured) return counts;
  const pitchDown = roundedTo(measured.pitch, PITCH_STEP);
  const spare = measured.paper.height - (lines.length - 1) * Number(pitchDown);
  return { ...counts, pitchDown, firstTop: firstText(measured.top, spare) };
}

export interface MeasuredPaper extends MeasuredGrid {
  readonly paper: PaperSize;
}

function roundedTo(mm: number, step: number): string {
  return `${Number((Math.round(mm / step) * step).toFixed(2))}`;
}

/** "" where half of what is spare comes to the same. */
function firstText(mm: number, spare: number): string {
  return Math.abs(mm - spare / 2) <= CENTRED_WITHIN ? "" : roundedTo(mm, 0.1);
}

/** What was found, as the text of a JSON file: numbers alone, nothing of the picture. */
export function photoReport(
  photo: { readonly width: number; readonly height: number },
  count: PhotoCount,
): string {
  const place = ({ x, y }: PhotoPoint) => [Math.round(x * 10) / 10, Math.round(y * 10) / 10];
  const { width, height } = photo;
  const head = { form: 2, photo: { width, height }, counted: count.ok };
  return `${JSON.stringify({ ...head, ...foundIn(count, place) })}\n`;
}

function foundIn(count: PhotoCount, place: (point: PhotoPoint) => readonly number[]): object {
  if (!count.ok) return { doubt: count.doubt, dots: count.found.map(place) };
  if (count.of === "grid") return { ...count.grid, dots: count.grid.dots.map(place) };
  const { lines, step } = count.page;
  return { ruling: "lines", step, lines: lines.map((line) => line.map(place)) };
}
