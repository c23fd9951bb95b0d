/** The bars and the card corner of a sheet as another program measures them. */
import { describe, expect, it } from "vitest";
import { stripPdf, testSheetPdf } from "../../src/print/pdf/pdf-files.ts";
import { SETTINGS, stripOf } from "../print/demo-book.ts";
import { type ReadLine, readStrokes } from "../print/poppler.ts";

/** In millimetres. */
const TRUE_TO = 0.05;
/** ISO/IEC 7810, format ID-1. */
const CARD = { across: 85.6, down: 53.98 };

const everyday = stripOf("everyday", "a5");
const question = { title: "Everyday strip · A5", strips: [everyday], paper: "A4" } as const;

const isAcross = ({ y1, y2 }: ReadLine) => y1 === y2;
const lengthOf = ({ x1, y1, x2, y2 }: ReadLine) => Math.hypot(x1 - x2, y1 - y2);

/** The two bars: the longest lines of the stroke that starts in the bottom left corner. */
function readBars(pdf: Uint8Array) {
  const strokes = readStrokes(pdf);
  const lowest = Math.max(...strokes.flatMap(({ lines }) => lines.map(({ y1 }) => y1)));
  const bars = strokes.filter(({ lines }) =>
    lines.some((line) => Math.abs(line.y1 - lowest) < TRUE_TO && lengthOf(line) > 80),
  );
  const byLength = (lines: readonly ReadLine[]) =>
    lines.toSorted((a, b) => lengthOf(b) - lengthOf(a));
  const across = byLength(bars.flatMap(({ lines }) => lines).filter(isAcross));
  const upright = byLength(bars.flatMap(({ lines }) => lines).filter((line) => !isAcross(line)));
  return { across, upright };
}

describe("the bars of a sheet", () => {
  it.each([
    ["as it is", undefined, 100, 100],
    ["stretched along its long side", { x: 1, y: 1.004 }, 100.4, 100],
    ["stretched along both sides", { x: 0.998, y: 1.012 }, 101.2, 99.8],
  ])("%s are as long as they should be", async (_, printer, across, down) => {
    const settings = printer === undefined ? SETTINGS : { ...SETTINGS, printer };
    const bars = readBars(await stripPdf(question, settings));
    const [acrossBar] = bars.across;
    const [downBar] = bars.upright;
    if (!acrossBar || !downBar) throw new Error("no bars");
    expect(Math.abs(lengthOf(acrossBar) - across)).toBeLessThan(TRUE_TO);
    expect(Math.abs(lengthOf(downBar) - down)).toBeLessThan(TRUE_TO);
  });

  it("have a long tick where a bank card ends that lies in their corner", async () => {
    const { across, upright } = readBars(await stripPdf(question, SETTINGS));
    const [acrossBar] = across;
    const [downBar] = upright;
    if (!acrossBar || !downBar) throw new Error("no bars");
    const corner = { x: Math.min(acrossBar.x1, acrossBar.x2), y: acrossBar.y1 };
    const fromLeft = upright.map((line) => [line.x1 - corner.x, lengthOf(line)] as const);
    const fromBottom = across.map((line) => [corner.y - line.y1, lengthOf(line)] as const);
    const longTick = (ticks: readonly (readonly [number, number])[]) =>
      ticks.find(([, length]) => length > 6 && length < 80)?.[0] ?? Number.NaN;
    expect(Math.abs(longTick(fromLeft) - CARD.across)).toBeLessThan(TRUE_TO);
    expect(Math.abs(longTick(fromBottom) - CARD.down)).toBeLessThan(TRUE_TO);
  });
});

it("the test sheet has its bars at 100 mm among dots of 1.2 mm, five apart", async () => {
  const strokes = readStrokes(await testSheetPdf("A4", SETTINGS));
  const dots = strokes.filter(({ isDashed }) => isDashed);
  expect(dots.length).toBeGreaterThan(0);
  for (const { width } of dots) expect(Math.abs(width - 1.2)).toBeLessThan(0.01);
  const rows = [...new Set(dots.flatMap(({ lines }) => lines.map(({ y1 }) => y1.toFixed(1))))];
  expect(rows.length).toBe(29);
  const long = strokes
    .filter(({ isDashed }) => !isDashed)
    .flatMap(({ lines }) => lines.map(lengthOf).filter((length) => length > 50));
  expect(long.length).toBe(2);
  for (const length of long) expect(Math.abs(length - 100)).toBeLessThan(TRUE_TO);
});
