/** A page of the book on the keeper's own paper: the pattern's name, the page in true size with its counts, and a number. */
import type { Rect } from "../../draw/geometry/rect.ts";
import { BAR, lyingBar } from "../../draw/print-marks/scale-bars.ts";
import type { Scene, TextMark } from "../../draw/scene.ts";
import { ACTUAL_SIZE, BAR_WORDS } from "../../issue/words/sheet-words.ts";
import type { PaperSize } from "../../notebook/paper.ts";
import type { Sheet, SheetPart } from "./sheet.ts";

const TITLE = { size: 4.2, baseline: 3.6, height: 8 };
const FOOT = { size: 2.3, height: 5 };
const TENTHS = 10;

/** Has a drawing room between title and foot? */
export function hasFrameRoom({ frame }: Scene, area: Rect): boolean {
  return frame.width <= area.width && frame.height <= area.height - TITLE.height - FOOT.height;
}

export interface FramedPage {
  readonly scene: Scene;
  readonly title: string;
  /** At the right of the title. */
  readonly beside: string;
  readonly paper: PaperSize;
  readonly area: Rect;
}

/** The drawing in the middle of the paper's width, on whole tenths of a millimetre. */
export function framedSheet({ scene, title, beside, paper, area }: FramedPage): Sheet {
  const { frame } = scene;
  const middle = (area.width - frame.width) / 2;
  const room = area.height - TITLE.height - FOOT.height - frame.height;
  const x = Math.round((area.x + middle) * TENTHS) / TENTHS;
  const y = Math.ceil((area.y + TITLE.height + Math.min(room / 2, 6)) * TENTHS) / TENTHS;
  const line = { kind: "text", y: area.y + TITLE.baseline } as const;
  const right = area.x + area.width;
  return {
    title,
    ...paper,
    parts: [
      {
        kind: "heading",
        marks: [
          { ...line, role: "heading", x: area.x, size: TITLE.size, anchor: "start", text: title },
        ],
      },
      {
        kind: "line",
        marks: [{ ...line, role: "note", x: right, size: FOOT.size, anchor: "end", text: beside }],
      },
      {
        kind: "figure",
        description: `${scene.title}. ${scene.description}`,
        marks: scene.marks,
        lies: { frame, place: { x, y, turn: 0 } },
      },
    ],
  };
}

/** From the left end of the foot to its bar, and what the number at the right end needs, in millimetres. */
const BAR_PLACE = { from: 42, behind: 12 };

/** A bar of 100 mm between the word on size and the number, where the paper is wide enough for it. */
function footBar(area: Rect): readonly SheetPart[] {
  if (area.width < BAR_PLACE.from + BAR + BAR_PLACE.behind) return [];
  const corner = { x: area.x + BAR_PLACE.from, y: area.y + area.height };
  return [{ kind: "figure", description: BAR_WORDS.alone(BAR), marks: lyingBar(corner) }];
}

/** The sheet with its number in the file, counted from 1, and the word on size. */
export function withNumber(sheet: Sheet, area: Rect, number: number): Sheet {
  const foot = (x: number, anchor: TextMark["anchor"], text: string): SheetPart => ({
    kind: "line",
    marks: [
      {
        kind: "text",
        role: "note",
        x,
        y: area.y + area.height - 0.6,
        size: FOOT.size,
        anchor,
        text,
      },
    ],
  });
  const right = area.x + area.width;
  return {
    ...sheet,
    parts: [
      ...sheet.parts,
      foot(area.x, "start", ACTUAL_SIZE),
      ...footBar(area),
      foot(right, "end", String(number)),
    ],
  };
}
