/** The PDF files of a built book, as another program reads them. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { filesIn } from "../../src/build/output/files-in.ts";
import { readFacts, readFonts, readSizes, readText } from "../print/poppler.ts";
import { bookContent } from "../setup/demo-content.ts";

const book = inject("book");
const files = filesIn(book);
const pdfs = files.filter((path) => path.endsWith(".pdf"));
const content = await bookContent(inject("content"));
const { recipes, notebooks, strips, setups } = content;

const bytesOf = (path: string) => new Uint8Array(readFileSync(join(book, path)));
const jsonOf = (path: string) => JSON.parse(readFileSync(join(book, path), "utf8"));

/** In millimetres; a point has a hundredth in the file. */
const TRUE_TO = 0.01;

type Size = readonly [width: number, height: number];

/** Every page is so large; of sheets that may lie on their side, as the first one lies. */
function expectSizes(path: string, [short, long]: Size, mayLie = false): readonly Size[] {
  const sizes = readSizes(bytesOf(path));
  const [[across = 0, down = 0] = []] = sizes;
  const [width, height] = mayLie && across > down ? [long, short] : [short, long];
  const wrong = sizes.filter(
    ([x, y]) => Math.abs(x - width) > TRUE_TO || Math.abs(y - height) > TRUE_TO,
  );
  expect({ path, pages: sizes.length > 0, wrong }).toEqual({ path, pages: true, wrong: [] });
  return sizes;
}

describe("the PDF files of a book", () => {
  it("are a page for each pattern on each notebook, sheets and a card for each strip, pages and a strip for each set-up, and a book for each notebook", () => {
    const wanted = notebooks.flatMap(({ slug }) => [
      ...recipes.map((recipe) => `patterns/${recipe.slug}/${slug}/page.pdf`),
      ...strips.flatMap((strip) =>
        ["strip.pdf", "strip-letter.pdf", "card.pdf"].map(
          (name) => `strips/${strip.slug}/${slug}/${name}`,
        ),
      ),
      ...setups.flatMap((setup) =>
        ["pages.pdf", "strip.pdf"].map((name) => `setups/${setup.slug}/${slug}/${name}`),
      ),
      `notebooks/${slug}/book.pdf`,
    ]);
    expect(pdfs.toSorted()).toEqual(wanted.toSorted());
  });

  it("are whole files in a language", () => {
    const broken = pdfs.filter((path) => {
      const text = Buffer.from(bytesOf(path)).toString("latin1");
      return !(
        text.startsWith("%PDF-1.7\n") &&
        text.trimEnd().endsWith("%%EOF") &&
        text.includes("/Lang (en)")
      );
    });
    expect(broken).toEqual([]);
  });

  it.each([
    ["patterns/two-row-week/a5/page.pdf", "Week in two rows · A5, 26 × 38"],
    ["strips/everyday/a5/strip.pdf", "Everyday strip · A5, 26 × 38"],
    ["strips/everyday/a5/card.pdf", "Copying card: Everyday strip for A5, 26 × 38"],
    ["notebooks/a5/book.pdf", "The Marrow Lane Pattern Book · A5, 26 × 38"],
  ])("%s is called %s", (path, title) => {
    expect(/^Title:\s+(.*)$/m.exec(readFacts(bytesOf(path)))?.[1]).toBe(title);
  });
});

describe.each(notebooks.map((notebook) => [notebook.slug] as const))("on %s", (notebook) => {
  const { paper } = jsonOf(`notebooks/${notebook}/notebook.json`);
  const plans = recipes.map(({ slug }) => jsonOf(`patterns/${slug}/${notebook}/plan.json`));

  it("a page is as large as the notebook's paper, a spread two such pages", () => {
    const sample = plans.filter((plan, index) => index % 9 === 0 || plan.pages.length === 2);
    for (const { pattern, pages } of sample.slice(0, 12)) {
      const path = `patterns/${pattern}/${notebook}/page.pdf`;
      const sizes = expectSizes(path, [paper.across, paper.down]);
      expect(sizes).toHaveLength(Math.max(1, pages.length));
    }
    expect(sample.some(({ pages }) => pages.length === 2)).toBe(true);
  });

  it("a pattern that does not fit has a page that says why", () => {
    for (const { pattern, fits, reason } of plans.filter((plan) => !plan.fits)) {
      expect(fits).toBe(false);
      const path = `patterns/${pattern}/${notebook}/page.pdf`;
      expectSizes(path, [paper.across, paper.down]);
      const text = readText(bytesOf(path)).replace(/\s+/g, " ");
      expect(text).toContain("does not fit");
      expect(text).toContain(reason);
    }
  });

  it("strips lie on A4 and on letter, and their card on A6 or longer", () => {
    for (const { slug, title } of strips) {
      const folder = `strips/${slug}/${notebook}/`;
      expectSizes(`${folder}strip.pdf`, [210, 297], true);
      expectSizes(`${folder}strip-letter.pdf`, [215.9, 279.4], true);
      const card = readSizes(bytesOf(`${folder}card.pdf`));
      expect(card).toHaveLength(1);
      expect(card[0]?.[0]).toBeCloseTo(105, 2);
      expect(card[0]?.[1]).toBeGreaterThan(147.99);
      expect(readText(bytesOf(`${folder}strip.pdf`))).toContain(title);
    }
  });

  it("the book has a page for each page of each pattern that fits, behind its contents", () => {
    const path = `notebooks/${notebook}/book.pdf`;
    const pages = plans.reduce((sum, plan) => sum + plan.pages.length, 0);
    const count = readSizes(bytesOf(path)).length;
    const first = readText(bytesOf(path), 1);
    expect(count).toBeGreaterThan(pages);
    expect(count - pages).toBeLessThanOrEqual(3);
    expect(first).toContain(content.book.title);
    const others = Array.from({ length: count - pages - 1 }, (_, index) =>
      readText(bytesOf(path), index + 2),
    );
    const contents = [first, ...others].join("\n");
    const missing = recipes.filter(({ title }) => !contents.includes(title.slice(0, 12)));
    expect(missing.map(({ slug }) => slug)).toEqual([]);
    expect(readFacts(bytesOf(path))).toMatch(/^Tagged:\s+yes$/m);
    expect(readFonts(bytesOf(path)).filter((font) => !font.isEmbedded)).toEqual([]);
  });
});
