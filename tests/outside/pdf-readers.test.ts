/** Files of every kind as three readers that are not ours find them: poppler, PDFium and mupdf agree on paper, words and lines. */
import { describe, expect, it } from "vitest";
import type { GreyPicture } from "../print/grey-picture.ts";
import * as mupdf from "../print/mupdf.ts";
import { PDF_KINDS, pdfOf } from "../print/pdf-kinds.ts";
import { drawnByPdfium, drawnByPoppler, readByPdfium } from "../print/pdfium.ts";
import * as poppler from "../print/poppler.ts";

/** In millimetres. */
const TRUE_TO = 0.05;
/** Readers tell points with so many decimals. */
const ROUNDING = 0.001;
/** Poppler moves a line by up to half a pixel, to draw it sharp. */
const DPI = 300;

/** What is to be read one after another. Numbers along a ruler and single letters each reader puts into an order of its own. */
const wordsOf = (text: string) => (text.normalize("NFC").match(/\p{L}{3,}/gu) ?? []).join("");
/** All signs that there are, whatever their order. */
const signsOf = (text: string) => [...text.replace(/[\s\ufffe]+/g, "")].toSorted().join("");

describe.each(PDF_KINDS)("%s", (_, path) => {
  it("has the same paper to all of them", async () => {
    const pdf = await pdfOf(path);
    const sizes = poppler.readSizes(pdf);
    expect(sizes.length).toBeGreaterThan(0);
    for (const others of [mupdf.readSizes(pdf), (await readByPdfium(pdf)).sizes]) {
      expect(others).toHaveLength(sizes.length);
      const misses = sizes.flatMap((size, index) =>
        size.map((mm, side) => Math.abs(mm - (others[index]?.[side] ?? 0))),
      );
      expect(Math.max(...misses)).toBeLessThan(ROUNDING);
    }
  });

  it("has the same words in the same order to all of them", async () => {
    const pdf = await pdfOf(path);
    const text = poppler.readText(pdf);
    expect(wordsOf(text).length).toBeGreaterThan(20);
    for (const other of [(await readByPdfium(pdf)).text, mupdf.readText(pdf)]) {
      expect(wordsOf(other)).toBe(wordsOf(text));
      expect(signsOf(other)).toBe(signsOf(text));
    }
  });
});

/** Dots are tested by themselves; of a book and a set-up each page is one of these. */
const DRAWN = [
  "a page",
  "a page of dates",
  "a strip",
  "a strip in pieces, on letter paper",
  "a card",
];

describe.each(PDF_KINDS.filter(([kind]) => DRAWN.includes(kind)))("%s", (_, path) => {
  it("has its lines at the same places to all of them", async () => {
    const pdf = await pdfOf(path);
    const [[width, height] = [0, 0]] = poppler.readSizes(pdf);
    const places = middles(poppler.readStrokes(pdf));
    expect(places.length).toBeGreaterThan(10);
    const first = await drawnByPoppler(pdf, DPI);
    for (const other of [
      await drawnByPdfium(pdf, DPI, { paper: { width, height } }),
      await mupdf.drawnByMupdf(pdf, DPI),
    ]) {
      const apart = places.map((place) => Math.abs(inkAt(first, place) - inkAt(other, place)));
      expect(Math.max(...apart)).toBeLessThan(TRUE_TO);
    }
  });
});

/** The middle of a stroke, and across which way it lies. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly isUpright: boolean;
}

/** Of straight strokes, where a hand would look whether they lie right. */
function middles(strokes: readonly poppler.ReadStroke[]): readonly Place[] {
  return (
    strokes
      // A triangle has more ink on one side of its lines.
      .filter(({ lines, isDashed }) => !isDashed && lines.every(isStraight))
      .flatMap(({ lines }) => lines)
      .map(({ x1, y1, x2, y2 }) => ({
        x: (x1 + x2) / 2,
        y: (y1 + y2) / 2,
        isUpright: x1 === x2,
      }))
  );
}

const isStraight = ({ x1, y1, x2, y2 }: poppler.ReadLine) => (x1 === x2) !== (y1 === y2);

/** In millimetres: what is nearer to the place counts more, so that it does not matter what just comes into view. */
const REACH = 0.5;
const ALONG = 0.1;

/** Where the ink around a place has its centre across the stroke, in millimetres. */
function inkAt({ greyAt, across, down }: GreyPicture, { x, y, isUpright }: Place): number {
  const [perMm, alongPerMm] = isUpright ? [across, down] : [down, across];
  const [centre, middle] = isUpright ? [x, y] : [y, x];
  const last = Math.round((middle + ALONG) * alongPerMm);
  let [ink, sum] = [0, 0];
  for (let along = Math.round((middle - ALONG) * alongPerMm); along <= last; along += 1) {
    const end = Math.ceil((centre + REACH) * perMm);
    for (let over = Math.floor((centre - REACH) * perMm); over <= end; over += 1) {
      const mm = (over + 0.5) / perMm;
      const weight = Math.max(0, Math.cos(((mm - centre) / REACH) * (Math.PI / 2))) ** 2;
      const dark = (255 - (isUpright ? greyAt(over, along) : greyAt(along, over))) * weight;
      ink += dark;
      sum += dark * mm;
    }
  }
  return sum / ink;
}
