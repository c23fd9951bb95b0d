/** The test sheet for a printer: what a ruler or a photo tells of it, it tells of all that the printer prints. */
import { breakLines, LINE_STEP, textBlockMarks } from "../../draw/label/text-block.ts";
import { TEST_SIDE, testMarks } from "../../draw/print-marks/test-marks.ts";
import { ACTUAL_SIZE, TEST_SHEET } from "../../issue/words/sheet-words.ts";
import { paperSize } from "../../notebook/paper.ts";
import { NO_STRETCH } from "../printer-correction.ts";
import { type PrinterPaper, SAFE_MARGIN, safeArea } from "./printer-paper.ts";
import type { Sheet, SheetPart } from "./sheet.ts";

const TITLE = { size: 4.2, baseline: 3.6 };
const NOTE = { size: 2.9, between: 1.4 };
/** From the title to the dots, and from the dots to the notes. */
const SPACE = { above: 18, below: 9 };

/** The dots are in the middle of the paper's width. */
export function testSheet(name: PrinterPaper): Sheet {
  const paper = paperSize(name);
  const area = safeArea(paper, SAFE_MARGIN, NO_STRETCH);
  const [left, top] = [(paper.width - TEST_SIDE) / 2, area.y + SPACE.above];
  const line = { kind: "text", x: left, anchor: "start" } as const;
  const frame = { x: 0, y: 0, width: TEST_SIDE, height: TEST_SIDE };
  const heading = { ...line, role: "heading", size: TITLE.size, text: TEST_SHEET.title } as const;
  const size = { ...line, role: "heading", size: NOTE.size, text: ACTUAL_SIZE } as const;
  const baseline = area.y + TITLE.baseline;
  return {
    title: TEST_SHEET.title,
    ...paper,
    parts: [
      { kind: "heading", marks: [{ ...heading, y: baseline }] },
      { kind: "line", marks: [{ ...size, y: baseline + TITLE.size * LINE_STEP }] },
      {
        kind: "figure",
        description: TEST_SHEET.description,
        marks: testMarks(),
        lies: { frame, place: { x: left, y: top, turn: 0 } },
      },
      ...notes(left, top + TEST_SIDE + SPACE.below),
    ],
  };
}

function notes(x: number, top: number): readonly SheetPart[] {
  let y = top;
  return TEST_SHEET.notes.map((note): SheetPart => {
    const lines = breakLines(note, NOTE.size, TEST_SIDE);
    const marks = textBlockMarks({ lines, role: "note", size: NOTE.size, x, y });
    y += lines.length * NOTE.size * LINE_STEP + NOTE.between;
    return { kind: "line", marks };
  });
}
