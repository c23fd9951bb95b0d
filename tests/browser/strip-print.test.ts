/** What a browser prints of a strip's page: the sheets of its PDF file in true size, and nothing else. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import type { StripJson } from "../../src/strip/strip-json.ts";
import { readSizes, readStrokes, readText } from "../print/poppler.ts";
import { joinPieces, readPieces, ticksAlong } from "../print/read-strip.ts";
import { bookWith, onDisk, openTestBrowser } from "./test-browser.ts";

/** In millimetres. */
const TRUE_TO = 0.05;
/** A browser rounds the paper to whole pixels. */
const PIXEL = 25.4 / 96;

const testBrowser = openTestBrowser();

async function printed(path: string): Promise<Uint8Array> {
  let pdf = new Uint8Array();
  await testBrowser.onPage(onDisk(path), {}, async (page) => {
    pdf = new Uint8Array(await page.pdf({ preferCSSPageSize: true }));
  });
  return pdf;
}

/** The lengths of all lines that are about as long as a bar, in millimetres. */
function barsIn(pdf: Uint8Array): readonly number[] {
  return readStrokes(pdf)
    .flatMap(({ lines }) => lines)
    .map(({ x1, y1, x2, y2 }) => Math.hypot(x2 - x1, y2 - y1))
    .filter((length) => Math.abs(length - 100) < 3);
}

describe.each([
  ["everyday", "a5", 1],
  ["shed-door", "pad", 2],
  ["trackers", "a5", 2],
  ["months-and-year", "fine", 1],
])("the page of %s for %s, cut out as %i", (strip, notebook, bodies) => {
  const folder = `strips/${strip}/${notebook}/`;

  let pdf: Uint8Array;
  beforeAll(async () => {
    pdf = await printed(`${folder}index.html`);
  });

  it("prints as many sheets as its file has, each on its own paper", () => {
    const file = readSizes(
      new Uint8Array(readFileSync(join(bookWith(`${folder}strip.pdf`), `${folder}strip.pdf`))),
    );
    const sizes = readSizes(pdf);
    expect(sizes).toHaveLength(file.length);
    for (const [index, [width, height]] of sizes.entries()) {
      expect(Math.abs(width - (file[index]?.[0] ?? 0))).toBeLessThan(PIXEL);
      expect(Math.abs(height - (file[index]?.[1] ?? 0))).toBeLessThan(PIXEL);
    }
    const text = readText(pdf);
    expect(text).toContain("Print at 100 % (actual size)");
    expect(text).not.toContain("What it carries");
  });

  it("prints both bars and every tick in true size", () => {
    const bars = barsIn(pdf);
    expect(bars.length).toBeGreaterThanOrEqual(2);
    expect(bars.filter((bar) => Math.abs(bar - 100) > TRUE_TO)).toEqual([]);
    const { sides }: StripJson = JSON.parse(
      readFileSync(join(bookWith(`${folder}strip.json`), `${folder}strip.json`), "utf8"),
    );
    const pieces = readPieces(pdf);
    const each = pieces.length / bodies;
    expect(Number.isInteger(each)).toBe(true);
    const cutOut = Array.from({ length: bodies }, (_, index) =>
      joinPieces(pieces.slice(index * each, (index + 1) * each)),
    );
    for (const [index, { axis, mm }] of sides.entries()) {
      const body = cutOut[bodies === 1 ? 0 : index];
      if (!body) throw new Error("a side has no piece");
      const ticks = ticksAlong(body, bodies === 1 && index === 1 ? "bottom" : "top");
      const missing = mm.filter((at) => !ticks.some((tick) => Math.abs(tick - at) < TRUE_TO));
      expect({ axis, missing }).toEqual({ axis, missing: [] });
    }
  });
});
