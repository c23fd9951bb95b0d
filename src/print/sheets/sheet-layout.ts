/** What every sheet of pieces carries beside them, and the room that it leaves. */
import type { Rect } from "../../draw/geometry/rect.ts";
import { breakLines, LINE_STEP, textBlockMarks } from "../../draw/label/text-block.ts";
import { BAR, BAR_DEPTH, sheetBars } from "../../draw/print-marks/scale-bars.ts";
import type { TextMark } from "../../draw/scene.ts";
import {
  ACTUAL_SIZE,
  BAR_WORDS,
  sayBarNames,
  saySheetNotes,
} from "../../issue/words/sheet-words.ts";
import type { PaperSize } from "../../notebook/paper.ts";
import type { PrinterCorrection } from "../printer-correction.ts";
import type { PieceRoom } from "./place-pieces.ts";
import { type PrinterMargin, safeArea } from "./printer-paper.ts";
import type { SheetPart } from "./sheet.ts";

const TITLE = { size: 4.2, baseline: 3.6, height: 7 };
const SAID = { size: 2.9 };
const NOTE = { size: 2.3, between: 0.9 };
/** Between the bars and what is beside them. */
const SPACE = 3;

/** What the upright bar takes from the width of a sheet. */
export const BAR_ASIDE = BAR_DEPTH + SPACE;

export interface LayoutQuestion {
  readonly paper: PaperSize;
  readonly margin: PrinterMargin;
  readonly printer: PrinterCorrection;
  /** Are pieces cut out of it? */
  readonly isCut: boolean;
  /** What else there is to say, a paragraph each. */
  readonly notes: readonly string[];
}

export interface SheetLayout extends PieceRoom {
  /** What is printed above and below the pieces. */
  readonly head: (title: string) => readonly SheetPart[];
  readonly foot: readonly SheetPart[];
}

/** Title and the word on size at the top; the bars at the left and the bottom; the notes beside them. */
export function sheetLayout(question: LayoutQuestion): SheetLayout {
  const { paper, margin, printer, isCut } = question;
  const area = safeArea(paper, margin, printer);
  const bottom = area.y + area.height;
  const right = area.x + area.width;
  const notesX = area.x + BAR + 2 * SPACE;
  const said = [...question.notes, ...saySheetNotes(BAR, printer, isCut)];
  const notes = said.map((note) => breakLines(note, NOTE.size, right - notesX));
  const notesTop = bottom - notesHeight(notes);
  const bars = sheetBars({
    corner: { x: area.x, y: bottom },
    names: sayBarNames(paper.width > paper.height),
  });
  return {
    area,
    taken: [
      { ...area, height: TITLE.height },
      { x: area.x, y: bottom - BAR, width: BAR_ASIDE, height: BAR },
      rectTo(area.x, bottom - BAR_DEPTH - SPACE, area.x + BAR + SPACE, bottom),
      rectTo(notesX, notesTop - SPACE, right, bottom),
    ],
    // All pieces begin at one line if the room above the upright bar is not needed.
    spared: [{ ...area, width: BAR_ASIDE }],
    head: (title) => headParts(area, title),
    foot: [
      { kind: "figure", description: BAR_WORDS.description(BAR), marks: bars },
      ...noteParts(notes, notesX, notesTop),
    ],
  };
}

function headParts(area: Rect, title: string): readonly SheetPart[] {
  const line = { kind: "text", role: "heading", y: area.y + TITLE.baseline } as const;
  const heading: TextMark = { ...line, x: area.x, size: TITLE.size, anchor: "start", text: title };
  const said: TextMark = {
    ...line,
    x: area.x + area.width,
    size: SAID.size,
    anchor: "end",
    text: ACTUAL_SIZE,
  };
  return [
    { kind: "heading", marks: [heading] },
    { kind: "line", marks: [said] },
  ];
}

type Paragraphs = readonly (readonly string[])[];

function notesHeight(notes: Paragraphs): number {
  const lines = notes.reduce((sum, { length }) => sum + length, 0);
  return lines * NOTE.size * LINE_STEP + Math.max(0, notes.length - 1) * NOTE.between;
}

/** The last baseline lies a little above the bottom, where the bar has its line. */
function noteParts(notes: Paragraphs, x: number, top: number): readonly SheetPart[] {
  return notes.map((lines, index) => {
    const y = top + NOTE.size + notesHeight(notes.slice(0, index)) + (index > 0 ? NOTE.between : 0);
    return { kind: "line", marks: textBlockMarks({ lines, role: "note", size: NOTE.size, x, y }) };
  });
}

function rectTo(x: number, y: number, right: number, bottom: number): Rect {
  return { x, y, width: right - x, height: bottom - y };
}
