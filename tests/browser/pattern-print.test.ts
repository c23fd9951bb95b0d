/** What a browser prints of a pattern's page, as poppler reads it: one sheet, in true size, its line clear of the drawing. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { PNG } from "pngjs";
import { beforeAll, describe, expect, it } from "vitest";
import {
  type ReadLine,
  type ReadWord,
  readPicture,
  readSizes,
  readStrokes,
  readText,
  readWords,
} from "../print/poppler.ts";
import { bookWith, onDisk, openTestBrowser } from "./test-browser.ts";

const testBrowser = openTestBrowser();

/** In millimetres; a browser rounds boxes to its own pixels. */
const TRUE_TO = 0.2;
/** Four pixels and a half to a hair of 0.2 mm. */
const DPI = 600;

async function printed(path: string): Promise<Uint8Array> {
  let pdf = new Uint8Array();
  await testBrowser.onPage(onDisk(`${path}/index.html`), {}, async (page) => {
    pdf = new Uint8Array(await page.pdf({ preferCSSPageSize: true, format: "A4" }));
  });
  return pdf;
}

const linesIn = (pdf: Uint8Array) => readStrokes(pdf).flatMap(({ lines }) => lines);
const lengthOf = ({ x1, y1, x2, y2 }: { x1: number; y1: number; x2: number; y2: number }) =>
  Math.hypot(x2 - x1, y2 - y1);

/** The words of the line beside a drawing: its caption, and what stands on its bar. */
function lineWords(pdf: Uint8Array, caption: string) {
  const words = readWords(pdf);
  const said = caption.split(/\s+/);
  const start = words.findIndex((_, index) =>
    said.every((text, more) => words[index + more]?.text === text),
  );
  const bar = words.findIndex(
    ({ text }, index) => text === "100" && words[index + 1]?.text === "mm",
  );
  return {
    caption: words.slice(start, start + said.length),
    bar: words.slice(bar, bar + 2),
    others: words.filter(
      (_, index) =>
        !(index >= start && index < start + said.length) && index !== bar && index !== bar + 1,
    ),
  };
}

/** Left and right end of the bar: the longest dark run just below what is written on it, in millimetres. */
function barEnds(pdf: Uint8Array, hundred: ReadWord): readonly [number, number] {
  const rows = { from: hundred.y1, to: hundred.y2 + 1.5 };
  const { data, width, height } = PNG.sync.read(readPicture(pdf, DPI, { rows }));
  const pixels = Buffer.from(data);
  const pixel = 25.4 / DPI;
  let best: readonly [number, number] = [0, 0];
  for (let y = 0; y < height; y += 1) {
    let start = 0;
    for (let x = 0; x < width; x += 1) {
      if ((pixels[4 * (y * width + x)] ?? 255) > 128) start = x + 1;
      else if (x + 1 - start > best[1] - best[0]) best = [start, x + 1];
    }
  }
  return [best[0] * pixel, best[1] * pixel];
}

type Box = Omit<ReadWord, "text">;

/** Of a line that runs along the page or down it, as they all do. */
const boxOf = ({ x1, y1, x2, y2 }: Box): Box => ({
  x1: Math.min(x1, x2),
  y1: Math.min(y1, y2),
  x2: Math.max(x1, x2),
  y2: Math.max(y1, y2),
});

const touch = (a: Box, b: Box) => a.x1 < b.x2 && b.x1 < a.x2 && a.y1 < b.y2 && b.y1 < a.y2;

/** One of each kind of sheet: the pattern, its notebook, the paper of one page in mm, how many pages, and whether it is cropped. */
const SHEETS = [
  ["two-row-week", "a5", [148, 210], 1, "portrait"],
  ["seed-list", "a6", [105, 148], 1, "portrait"],
  ["allotment-map", "fine", [105, 148], 2, "landscape"],
  ["month-grid", "jis-b5", [182, 257], 1, "a4"],
  ["month-grid", "a4", [210, 297], 1, "a4, cropped"],
  ["month-grid", "square", [200, 200], 1, "a4, cropped"],
  ["month-spread", "a5", [148, 210], 2, "a4 on its side, cropped"],
  ["month-grid", "letter", [215.9, 279.4], 1, "letter, cropped"],
  ["ninths-spread", "letter", [215.9, 279.4], 2, "ledger, cropped"],
  ["ninths-spread", "b5-right", [176, 250], 2, "a3 on its side"],
  ["month-spread", "a4", [210, 297], 2, "a3 on its side, cropped"],
] as const;

describe.each(SHEETS)(
  "%s on %s, paper %j × %d, printed on %s",
  (pattern, notebook, paper, pages) => {
    const path = `patterns/${pattern}/${notebook}`;

    let pdf: Uint8Array;
    let lines: readonly ReadLine[];
    let words: ReturnType<typeof lineWords>;
    let ends: readonly [number, number];

    beforeAll(async () => {
      pdf = await printed(path);
      lines = linesIn(pdf);
      const html = readFileSync(join(bookWith(path), path, "index.html"), "utf8");
      const said = /class="print-line"[^>]*><span[^>]*>([^<]*)<\/span>/.exec(html)?.[1] ?? "";
      words = lineWords(pdf, said.replaceAll("&middot;", "·"));
      const [hundred] = words.bar;
      if (!hundred) throw new Error("nothing says 100 mm");
      ends = barEnds(pdf, hundred);
    });

    it("is one sheet on which paper and bar are true to 0.2 mm", () => {
      expect(readSizes(pdf)).toHaveLength(1);
      const lengths = lines.map(lengthOf);
      const [width, height] = paper;
      for (const side of [width, height])
        expect(
          lengths.filter((length) => Math.abs(length - side) < TRUE_TO).length,
        ).toBeGreaterThanOrEqual(2 * pages);
      const [from, to] = ends;
      expect(Math.abs(to - from - 100)).toBeLessThan(TRUE_TO);
    });

    it("has a caption that meets neither the bar nor a word of the drawing", () => {
      const { caption, bar, others } = words;
      expect(caption.length).toBeGreaterThan(2);
      expect(bar).toHaveLength(2);
      const line = [...caption, ...bar];
      expect(others.filter((word) => line.some((one) => touch(one, word)))).toEqual([]);
      // Letter paper is counted to its very edge: there the line lies on a ground of its own.
      if (notebook !== "letter")
        expect(lines.filter((one) => line.some((word) => touch(word, boxOf(one))))).toEqual([]);
      const end = Math.max(...caption.map(({ x2 }) => x2));
      expect(end).toBeLessThan(ends[0] - 1);
    });
  },
);

describe.each([
  ["shed-wall", "a6", "The tool shed wall"],
  ["allotment-map", "a6", "Map of all the plots"],
  ["greenhouse-temperatures", "a6", "Greenhouse"],
])("%s, which does not fit %s", (pattern, notebook, title) => {
  it("prints on one sheet that it does not, why, and what would", async () => {
    const pdf = await printed(`patterns/${pattern}/${notebook}`);
    expect(readSizes(pdf)).toHaveLength(1);
    const text = readText(pdf).replace(/\s+/g, " ");
    const { reason, near } = JSON.parse(
      readFileSync(
        join(
          bookWith(`patterns/${pattern}/${notebook}/plan.json`),
          `patterns/${pattern}/${notebook}/plan.json`,
        ),
        "utf8",
      ),
    );
    expect(text).toContain(title);
    expect(text).toContain("It does not fit A6, pocket.");
    expect(text).toContain(reason.split(" need ")[1]);
    expect(near.length).toBeGreaterThan(0);
    expect(text).toContain(
      near.length === 1 ? "This would make it fit:" : "Any one of these would make it fit:",
    );
    expect(text).not.toContain("100 mm");
  });
});
