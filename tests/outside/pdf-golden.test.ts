/** How strips and sheets look, rendered by poppler: pictures that were looked at and kept. */
import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import { stripPieces } from "../../src/draw/strip/strip-pieces.ts";
import { bookPdf, stripPdf } from "../../src/print/pdf/pdf-files.ts";
import { writePdf } from "../../src/print/pdf/write-pdf.ts";
import { PURPOSES } from "../../src/recipe/recipe.ts";
import {
  BOOK,
  bookEntry,
  notebookOf,
  pageOf,
  RECIPES,
  SETTINGS,
  stripOf,
} from "../print/demo-book.ts";
import { compare, differenceFrom } from "../print/golden.ts";
import { readPicture } from "../print/poppler.ts";

/** A strip by itself, on paper of its own size. */
async function stripAlone(slug: string, notebook: string): Promise<Uint8Array> {
  const [scene] = stripPieces(stripOf(slug, notebook), 400);
  if (!scene) throw new Error("no strip");
  const { width, height } = scene.frame;
  const figure = { kind: "figure", description: scene.description, marks: scene.marks } as const;
  return await writePdf({
    ...SETTINGS,
    title: scene.title,
    pages: [{ title: scene.title, width, height, parts: [figure] }],
  });
}

const sheetOf = (slug: string, notebook: string, paper: "A4" | "letter", copies = 1) => {
  const strip = stripOf(slug, notebook);
  return stripPdf({ title: strip.title, strips: [strip], paper, copies }, SETTINGS);
};

/** A few patterns are enough for a picture, and do not change with every new one. */
function smallBook(): Promise<Uint8Array> {
  const notebook = notebookOf("a5");
  const chosen = ["two-row-week", "seed-list", "month-grid"];
  const groups = PURPOSES.map((title) => ({
    title,
    entries: RECIPES.filter(({ slug, purpose }) => purpose === title && chosen.includes(slug)).map(
      ({ slug }) => bookEntry(pageOf(slug, "a5").plan),
    ),
  })).filter(({ entries }) => entries.length > 0);
  return bookPdf({ title: BOOK.title, notebook, groups, paper: "A4" }, SETTINGS);
}

describe("a picture", () => {
  it.each([
    ["strip-everyday-a5", 96, () => stripAlone("everyday", "a5"), 1],
    ["strip-weeks-a6", 96, () => stripAlone("weeks", "a6"), 1],
    ["strip-trackers-fine", 96, () => stripAlone("trackers", "fine"), 1],
    ["sheet-everyday-a5", 72, () => sheetOf("everyday", "a5", "A4"), 1],
    ["sheet-lists-and-notes-letter", 72, () => sheetOf("lists-and-notes", "letter", "letter"), 1],
    ["sheet-book-page-a5", 72, smallBook, 2],
  ] as const)("%s is as it was kept", async (name, dpi, make, page) => {
    expect(differenceFrom(name, readPicture(await make(), dpi, { page }))).toBeUndefined();
  });
});

describe("the comparison of pictures", () => {
  const picture = async (make: () => Promise<Uint8Array>) =>
    PNG.sync.read(readPicture(await make(), 72));

  it("sees a strip in place of another", async () => {
    const one = await picture(() => sheetOf("everyday", "a5", "A4"));
    expect(compare(one, await picture(() => sheetOf("weeks", "a5", "A4")))).toMatch(/differ/);
  });

  it("sees a second copy", async () => {
    const one = await picture(() => sheetOf("everyday", "a5", "A4"));
    expect(compare(one, await picture(() => sheetOf("everyday", "a5", "A4", 2)))).toMatch(/differ/);
  });

  it("sees another paper", async () => {
    const one = await picture(() => sheetOf("everyday", "a5", "A4"));
    expect(compare(one, await picture(() => sheetOf("everyday", "a5", "letter")))).toMatch(
      /pixels/,
    );
  });

  it("sees a small place that is wrong", async () => {
    const { width, height, data } = await picture(() => sheetOf("everyday", "a5", "A4"));
    const marred = Uint8Array.from(data);
    for (let y = 0; y < 16; y += 1) marred.fill(0, y * width * 4, (y * width + 16) * 4);
    expect(compare({ width, height, data }, { width, height, data: marred })).toMatch(/one place/);
  });
});
