/** What pages print on the keeper's own printer: on its paper, stretched as it needs, one sheet, and said so. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { readSizes, readStrokes, readText } from "../print/poppler.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const book = inject("book");
const testBrowser = openTestBrowser();

/** In millimetres; a browser rounds boxes to its own pixels. */
const TRUE_TO = 0.1;

/** What the browser's own print command prints on a device that keeps something by these names. */
async function printed(
  path: string,
  kept: Readonly<Record<string, string>>,
  format: "A4" | "Letter" = "A4",
): Promise<Uint8Array> {
  const { page, close, complaints } = await watchedPage(testBrowser.browser);
  await page.addInitScript(
    ([folder, entries]) => {
      const prefix = `spanbook ${folder} `;
      localStorage.setItem(`${prefix}version`, "2");
      for (const [name, text] of Object.entries(entries)) localStorage.setItem(prefix + name, text);
    },
    [new URL(".", onDisk("index.html")).pathname, kept] as const,
  );
  await page.goto(onDisk(path));
  await page.locator(".plate svg, .plate img").first().waitFor();
  const pdf = new Uint8Array(await page.pdf({ preferCSSPageSize: true, format }));
  expect(complaints).toEqual([]);
  await close();
  return pdf;
}

/** The lengths of all lines near one length, across and down, in millimetres. */
function linesNear(pdf: Uint8Array, length: number): { across: number[]; down: number[] } {
  const lines = readStrokes(pdf).flatMap((stroke) => stroke.lines);
  const near = (found: readonly number[]) =>
    found.filter((one) => Math.abs(one - length) < 0.04 * length);
  return {
    across: near(lines.filter(({ y1, y2 }) => y1 === y2).map(({ x1, x2 }) => Math.abs(x2 - x1))),
    down: near(lines.filter(({ x1, x2 }) => x1 === x2).map(({ y1, y2 }) => Math.abs(y2 - y1))),
  };
}

const rounded = ([[width, height] = [0, 0]]: readonly (readonly [number, number])[]) => [
  Math.round(width),
  Math.round(height),
];

describe("the page of a strip, printed by the browser's own command", () => {
  it.each([
    ["1 1 A4", [297, 210], 100, 100],
    ["1 1 letter", [279, 216], 100, 100],
    ["1.02 0.99 letter", [279, 216], 99, 102],
  ] as const)("with the printer %s", async (printer, paper, across, down) => {
    const pdf = await printed("strips/everyday/a5/index.html", { printer });
    expect(readSizes(pdf)).toHaveLength(1);
    expect(rounded(readSizes(pdf))).toEqual(paper);
    const bars = linesNear(pdf, 100);
    expect(bars.across.some((bar) => Math.abs(bar - across) < TRUE_TO)).toBe(true);
    expect(bars.down.some((bar) => Math.abs(bar - down) < TRUE_TO)).toBe(true);
    expect(/stretched by x 1\.02 and y 0\.99/.test(readText(pdf).replace(/\s+/g, " "))).toBe(
      printer.startsWith("1.02"),
    );
  });
});

describe("the page of a pattern, printed by the browser's own command", () => {
  it.each([
    ["1 1 A4", 148, 210],
    ["1.02 0.99 A4", 148 * 1.02, 210 * 0.99],
  ] as const)("with the printer %s draws the paper %d × %d mm", async (printer, width, height) => {
    const pdf = await printed("patterns/two-row-week/a5/index.html", { printer });
    expect(readSizes(pdf)).toHaveLength(1);
    const near = (found: readonly number[], side: number) =>
      found.some((length) => Math.abs(length - side) < 2 * TRUE_TO);
    expect(near(linesNear(pdf, width).across, width)).toBe(true);
    expect(near(linesNear(pdf, height).down, height)).toBe(true);
    expect(/orrected/.test(readText(pdf))).toBe(printer.startsWith("1.02"));
  });
});

describe("the fit page, printed by the browser's own command", () => {
  it.each([
    ["1 1 A4", "A4", [210, 297], 1],
    ["1.02 0.99 letter", "Letter", [216, 279], 1.02],
  ] as const)("with the printer %s", async (printer, format, paper, factor) => {
    const pdf = await printed(
      "fit/index.html#v=1&paper=A5&pitch=5&dots=26,38&pattern=two-row-week",
      { printer },
      format,
    );
    expect(readSizes(pdf)).toHaveLength(1);
    expect(rounded(readSizes(pdf))).toEqual(paper);
    const widths = linesNear(pdf, 148 * factor).across;
    expect(widths.some((width) => Math.abs(width - 148 * factor) < 2 * TRUE_TO)).toBe(true);
  });
});

describe("the measure page, printed", () => {
  it("has a true rule on a screen of any scale, and nothing to press", async () => {
    const pdf = await printed("measure/index.html", { screen: "5.5" });
    const text = readText(pdf);
    expect(text).toContain("hold a ruler against it");
    expect(text).not.toContain("Keep it on this device");
    const ticks = readStrokes(pdf).flatMap(({ lines }) => lines);
    const upright = ticks.filter(({ x1, x2 }) => Math.abs(x1 - x2) < 0.01);
    const at = upright.map(({ x1 }) => x1);
    expect(Math.max(...at) - Math.min(...at)).toBeGreaterThan(100 - TRUE_TO);
    expect(at.some((x) => Math.abs(x - Math.min(...at) - 100) < TRUE_TO)).toBe(true);
  });
});

describe("each sheet of a strip in the book", () => {
  it.each(
    readdirSync(join(book, "strips"), { withFileTypes: true }).flatMap((entry) =>
      entry.isDirectory() ? [entry.name] : [],
    ),
  )("of %s has a bar of 100 mm each way", (strip) => {
    const pdf = new Uint8Array(readFileSync(join(book, "strips", strip, "a5/strip.pdf")));
    const { across, down } = linesNear(pdf, 100);
    expect(across.some((bar) => Math.abs(bar - 100) < 0.01)).toBe(true);
    expect(down.some((bar) => Math.abs(bar - 100) < 0.01)).toBe(true);
  });
});
