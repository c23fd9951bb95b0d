/** What a browser prints, as poppler reads it: sheets, boxes, bars and dots in true size. */
import { expect } from "vitest";
import { drawnByPoppler, missOf } from "../../print/pdfium.ts";
import { type ReadLine, readSizes, readStrokes } from "../../print/poppler.ts";
import type { Hand } from "../hand.ts";
import type { WatchedBook } from "../watched-book.ts";
import type { Step } from "./step.ts";

/** In millimetres: a browser rounds boxes to its own pixels. */
const TRUE_TO = 0.2;
const DOTS_TRUE_TO = 0.05;
const DPI = 300;

async function printed(hand: Hand, book: WatchedBook, path: string): Promise<Uint8Array> {
  await hand.open(book.served(path));
  await hand.until(() => document.fonts.status === "loaded");
  if (!hand.engine.print) throw new Error("this engine's driver cannot print");
  return await hand.engine.print();
}

const linesOf = (pdf: Uint8Array) => readStrokes(pdf).flatMap(({ lines }) => lines);
const lengthOf = ({ x1, y1, x2, y2 }: ReadLine) => Math.hypot(x2 - x1, y2 - y1);
/** How many lines are so long. */
const countOf = (lines: readonly ReadLine[], length: number) =>
  lines.filter((line) => Math.abs(lengthOf(line) - length) < TRUE_TO).length;

export const PRINTING: readonly Step[] = [
  [
    "prints a pattern's page on one sheet: paper, boxes and dots are true",
    async (hand, book) => {
      const pdf = await printed(hand, book, "patterns/two-row-week/a5/index.html#v=1&on=a5");
      expect(readSizes(pdf)).toHaveLength(1);
      const lines = linesOf(pdf);
      // A5; seven days and the next week, 5 by 16 steps each, below a heading of 25 by 3 (plan.json).
      for (const [length, least] of [
        [148, 2],
        [210, 2],
        [5 * 5, 8],
        [16 * 5, 8],
        [25 * 5, 2],
      ] as const)
        expect(countOf(lines, length)).toBeGreaterThanOrEqual(least);
      const top = lines.find((line) => Math.abs(lengthOf(line) - 148) < TRUE_TO);
      const [left, above] = [Math.min(top?.x1 ?? 0, top?.x2 ?? 0), top?.y1 ?? 0];
      const picture = await drawnByPoppler(pdf, DPI);
      // Dots inside of the boxes and beside them, where nothing else is drawn; the first is 11.5 mm and 12.5 mm from the corner.
      const misses = [2, 5, 8, 11, 14, 17, 20, 23, 25, 26].flatMap((across) =>
        [25, 28, 31, 34, 37].map((down) =>
          missOf(picture, left + 11.5 + 5 * (across - 1), above + 12.5 + 5 * (down - 1)),
        ),
      );
      expect(Math.max(...misses)).toBeLessThan(DOTS_TRUE_TO);
    },
  ],
  ...(
    [
      ["a spread", "patterns/month-spread/a5/index.html#v=1&on=a5", 210],
      ["a strip", "strips/everyday/a5/index.html", 100],
    ] as const
  ).map(
    ([what, path, length]): Step => [
      `prints ${what} on one sheet that lies on its side, whole and true`,
      async (hand, book) => {
        const pdf = await printed(hand, book, path);
        const [size, ...more] = readSizes(pdf);
        expect(more).toEqual([]);
        expect(size?.map(Math.round)).toEqual([297, 210]);
        expect(countOf(linesOf(pdf), length)).toBeGreaterThanOrEqual(2);
      },
    ],
  ),
];
