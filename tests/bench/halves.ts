/** The two halves of a build's work, for one notebook after another: its drawings, and its PDF files. */

import { readFileSync } from "node:fs";
import { pairsOf } from "../../src/build/artifacts/make/page-artifacts.ts";
import { openPatternRenderer } from "../../src/build/artifacts/make/pattern-renderer.ts";
import { openStripRenderer, stripPairs } from "../../src/build/artifacts/make/strip-renderer.ts";
import { makePdf, openPdfContext } from "../../src/build/artifacts/pdf/make-pdf.ts";
import { pdfFiles } from "../../src/build/artifacts/pdf/pdf-file.ts";
import { tuneForBuild } from "../../src/build/cli/v8-flags.ts";
import { readContent } from "../../src/build/content/check-content.ts";
import type { Content } from "../../src/build/content/load-content.ts";
import { FONT_FILES, readFonts } from "../../src/print/pdf/font/print-fonts.ts";

const FONTS = "node_modules/@fontsource/fira-sans/files/";
const bytesOf = (name: string) => new Uint8Array(readFileSync(FONTS + name));

type Half = (content: Content) => Promise<void>;

/** What does one half for all that a content has. */
export function openHalf(half: string): Half {
  tuneForBuild();
  const fonts = readFonts({
    normal: FONT_FILES.normal.map(bytesOf),
    bold: FONT_FILES.bold.map(bytesOf),
  });
  const print: Half = async (content) => {
    const context = openPdfContext(content);
    for (const file of pdfFiles(content)) await makePdf(file, context, fonts);
  };
  const draw: Half = async (content) => {
    pairsOf(content).forEach(openPatternRenderer(content));
    stripPairs(content).forEach(openStripRenderer(content));
  };
  return half === "print" ? print : draw;
}

/** The content of a folder, once for each notebook with that one alone. */
export async function contentByNotebook(folder: string): Promise<readonly Content[]> {
  const content = await allContent(folder);
  return content.notebooks.map((notebook) => ({ ...content, notebooks: [notebook] }));
}

/** The content of a folder. */
export async function allContent(folder: string): Promise<Content> {
  const read = await readContent(folder);
  if ("report" in read) throw new Error(read.report);
  return read.content;
}
