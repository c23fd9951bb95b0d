/** The same paper from a browser: a page opened from disk, under a policy that forbids evaluated code. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { FONT_FILES } from "../../src/print/pdf/font/print-fonts.ts";
import { writePdf } from "../../src/print/pdf/write-pdf.ts";
import type { Sheet } from "../../src/print/sheets/sheet.ts";
import { stripSheets } from "../../src/print/sheets/strip-sheets.ts";
import { launchChromium } from "../browser/launch.ts";
import { fontFile, SETTINGS, stripOf } from "../print/demo-book.ts";
import { readFonts, readStrokes, readText } from "../print/poppler.ts";

const FOLDER = mkdtempSync(join(tmpdir(), "spanbook-paper-"));
/** No evaluated code, nothing from a network, and no script but the one beside the page. */
const POLICY = "default-src 'none'; script-src file:";

/** A classic script that prints sheets with fonts given as base64, and answers in base64. */
const SCRIPT = `
  import { readFonts } from "./src/print/pdf/font/print-fonts.ts";
  import { writePdf } from "./src/print/pdf/write-pdf.ts";
  const bytes = (text) => Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
  globalThis.printSheets = async (pages, files) => {
    const fonts = readFonts({ normal: files.normal.map(bytes), bold: files.bold.map(bytes) });
    const pdf = await writePdf({ pages, fonts, title: "From a page", language: "en" });
    return btoa(Array.from(pdf, (byte) => String.fromCharCode(byte)).join(""));
  };
`;

async function writePage(): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents: SCRIPT,
      resolveDir: new URL("../..", import.meta.url).pathname,
      loader: "ts",
    },
    define: { "import.meta.url": "document.baseURI" },
    bundle: true,
    format: "iife",
    target: "es2022",
    write: false,
  });
  writeFileSync(join(FOLDER, "print.js"), outputFiles[0]?.contents ?? "");
  const policy = `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`;
  const html = `<!doctype html><title>Print</title>${policy}<script src="print.js"></script>`;
  writeFileSync(join(FOLDER, "index.html"), html);
  return pathToFileURL(join(FOLDER, "index.html")).href;
}

/** What the script puts on its page. */
declare const printSheets: (
  pages: readonly Sheet[],
  files: Readonly<Record<string, readonly string[]>>,
) => Promise<string>;

async function printInPage(browser: Browser, sheets: readonly Sheet[]): Promise<Uint8Array> {
  const page = await browser.newPage();
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(String(error)));
  page.on("console", (message) => faults.push(message.text()));
  await page.goto(await writePage());
  const base64 = (name: string) => Buffer.from(fontFile(name)).toString("base64");
  const given = {
    sheets,
    normal: FONT_FILES.normal.map(base64),
    bold: FONT_FILES.bold.map(base64),
  };
  const printed = await page.evaluate(
    ({ sheets: pages, ...files }) => printSheets(pages, files),
    given,
  );
  expect(faults).toEqual([]);
  return Buffer.from(printed, "base64");
}

describe("a strip printed by a page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  }, 120_000);
  afterAll(async () => {
    await browser.close();
    rmSync(FOLDER, { recursive: true });
  });

  it("has the lines, the words and the fonts of one printed by the build", async () => {
    const strips = [stripOf("everyday", "a5")];
    const { sheets } = stripSheets({ title: "From a page", strips, paper: "A4" });
    const here = await writePdf({ ...SETTINGS, pages: sheets, title: "From a page" });
    const there = await printInPage(browser, sheets);
    expect(readStrokes(there)).toEqual(readStrokes(here));
    expect(readText(there)).toBe(readText(here));
    expect(readFonts(there)).toEqual(readFonts(here));
  }, 60_000);
});
