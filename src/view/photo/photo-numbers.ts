/** What a counted photo says about a notebook, as its fields take it. */

import type { MeasuredGrid, PaperSize } from "../../photo/measure-paper.ts";
import type { CountedGrid, PhotoCount } from "../../photo/photo-count.ts";
import type { NotebookFields } from "../fields/notebook-fields.ts";

/** Grids are made in steps of this, in mm; a photo tells no more (common practice, no source). */
const PITCH_STEP = 0.05;
/** A grid that is centred to this, in mm, is taken as centred: a photo tells no better. */
const CENTRED_WITHIN = 0.4;

type PhotoFields = Pick<NotebookFields, "dotsAcross" | "dotsDown" | "ruling"> &
  Partial<Pick<NotebookFields, "pitch" | "pitchDown" | "firstLeft" | "firstTop">>;

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
  const tenth = (value: number) => Math.round(value * 10) / 10;
  const { dots, ...rest } = count.ok ? count.grid : { dots: count.found, doubt: count.doubt };
  const places = dots.map(({ x, y }) => [tenth(x), tenth(y)]);
  const { width, height } = photo;
  return `${JSON.stringify({ form: 1, photo: { width, height }, counted: count.ok, ...rest, dots: places })}\n`;
}
