/** Files as other programs open them: paper, fonts, text, structure, and what a printer is asked for. */
import { describe, expect, it } from "vitest";
import { bookPdf, pagePdf, stripPdf } from "../../src/print/pdf/pdf-files.ts";
import { PURPOSES } from "../../src/recipe/recipe.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import {
  BOOK,
  bookEntry,
  notebookOf,
  pageOf,
  plansOf,
  RECIPES,
  SETTINGS,
  stripOf,
} from "../print/demo-book.ts";
import { readFacts, readFonts, readSizes, readText } from "../print/poppler.ts";

/** pdfinfo gives points with at most three decimals. */
const POINT_ROUNDING = 0.0005 * (25.4 / 72) + 1e-9;

function expectSize(size: readonly [number, number] | undefined, width: number, height: number) {
  expect(Math.abs((size?.[0] ?? 0) - width)).toBeLessThanOrEqual(POINT_ROUNDING);
  expect(Math.abs((size?.[1] ?? 0) - height)).toBeLessThanOrEqual(POINT_ROUNDING);
}

const everydayAnew = (paper: "A4" | "letter") =>
  stripPdf({ title: "Everyday strip", strips: [stripOf("everyday", "a5")], paper }, SETTINGS);

const bookAnew = (slug: string) => {
  const notebook = notebookOf(slug);
  const plans = plansOf(notebook);
  const groups = PURPOSES.map((title) => ({
    title,
    entries: RECIPES.filter(({ purpose }) => purpose === title).flatMap((recipe) => {
      const plan = plans.get(recipe.slug);
      return plan ? [bookEntry(plan)] : [];
    }),
  }));
  return { groups, pdf: bookPdf({ title: BOOK.title, notebook, groups, paper: "A4" }, SETTINGS) };
};

/** What many rows look at is made once. */
const everyday = onceEach(everydayAnew);
const wholeBook = onceEach(bookAnew);

function onceEach<Name extends string, Made>(make: (name: Name) => Made): (name: Name) => Made {
  const made = new Map<Name, Made>();
  return (name) => {
    const known = made.get(name) ?? make(name);
    made.set(name, known);
    return known;
  };
}

describe("the paper of a page", () => {
  /** ISO 216 and JIS P 0138 sizes; letter is 8.5 by 11 inches (CSS Paged Media, `size`). */
  it.each([
    ["a4", 210, 297],
    ["a5", 148, 210],
    ["a6", 105, 148],
    ["b5-right", 176, 250],
    ["jis-b5", 182, 257],
    ["letter", 8.5 * 25.4, 11 * 25.4],
  ])("of %s is %d by %d mm", async (slug, width, height) => {
    const [size, ...more] = readSizes(await pagePdf(pageOf("seed-list", slug), SETTINGS));
    expectSize(size, width, height);
    expect(more).toEqual([]);
  });

  it("of a spread is two sheets that a reader shows side by side", async () => {
    const pdf = await pagePdf(pageOf("season-spread", "a5"), SETTINGS);
    const sizes = readSizes(pdf);
    expect(sizes).toHaveLength(2);
    for (const size of sizes) expectSize(size, 148, 210);
    expect(Buffer.from(pdf).toString("latin1")).toContain("/PageLayout /TwoPageLeft");
  });
});

describe("the paper of a strip", () => {
  it.each([
    ["A4", 297, 210],
    ["letter", 279.4, 215.9],
  ] as const)("is %s on its side", async (paper, width, height) => {
    for (const size of readSizes(await everyday(paper))) expectSize(size, width, height);
  });
});

describe("a file", () => {
  it("has all its fonts in it, no more of each than it needs, and every character can be copied", async () => {
    const fonts = readFonts(await everyday("A4"));
    expect(fonts.map(({ name }) => name.replace(/^[A-Z]{6}\+/, "")).toSorted()).toEqual([
      "FiraSans-Bold",
      "FiraSans-Regular",
    ]);
    for (const font of fonts)
      expect(font).toMatchObject({ isEmbedded: true, isSubset: true, hasUnicode: true });
  });

  it("says all that is written on the strip and the sheet", async () => {
    const strip = stripOf("everyday", "a5");
    // Poppler breaks the lines of text that stands on its head at every space.
    const text = readText(await everyday("A4")).replace(/\s+/g, " ");
    const words = [
      "Everyday strip",
      "Print at 100 % (actual size)",
      "Measure both bars first: each is 100 mm long.",
      "Cut away from your body, on a cutting mat",
      "bank card",
      ...strip.patterns.map(({ title }) => title),
      ...stripJson(strip).sides.map(({ steps }) => `${steps} steps`),
    ];
    expect(words.filter((word) => !text.includes(word))).toEqual([]);
  });

  it("has a title and a language, is tagged, and asks for actual size and paper of its own", async () => {
    const pdf = await everyday("A4");
    const facts = readFacts(pdf);
    expect(facts).toMatch(/^Title:\s+Everyday strip$/m);
    expect(facts).toMatch(/^Tagged:\s+yes$/m);
    expect(facts).toMatch(/^JavaScript:\s+no$/m);
    const written = Buffer.from(pdf).toString("latin1");
    for (const filter of ["/Lang (en)", "/PrintScaling /None", "/PickTrayByPDFSize true"])
      expect(written).toContain(filter);
  });

  it("names its drawings to those who cannot see them", async () => {
    const structure = readFacts(await everyday("A4"), ["-struct"]);
    expect(structure).toMatch(/^Document\n {2}Sect[^\n]*\n {4}H1/);
    const described = Buffer.from("Everyday strip for A5, 26 × 38. A ruler", "utf16le").swap16();
    expect(Buffer.from(await everyday("A4")).includes(described)).toBe(true);
  });

  it("is the same bytes whenever it is made", async () => {
    expect(Buffer.compare(await everydayAnew("A4"), await everyday("A4"))).toBe(0);
    expect(Buffer.compare(await bookAnew("a6").pdf, await wholeBook("a6").pdf)).toBe(0);
  });
});

describe("a book", () => {
  it("has every pattern that fits, once in the contents and once as a page", async () => {
    const { groups, pdf } = wholeBook("a5");
    const contents = readText(await pdf, 1) + readText(await pdf, 2);
    const fitting = groups.flatMap(({ entries }) => entries.filter(({ pages }) => pages > 0));
    expect(fitting.length).toBeGreaterThan(40);
    expect(fitting.map(({ title }) => title).filter((title) => !contents.includes(title))).toEqual(
      [],
    );
    const count = fitting.reduce((sum, { pages }) => sum + pages, 0);
    expect(readSizes(await pdf)).toHaveLength(count + 2);
  });

  it("leads to the page that the contents name", async () => {
    const pdf = await wholeBook("a5").pdf;
    const [, number] =
      /^Season across two pages (\d+)$/m.exec(readText(pdf, 1) + readText(pdf, 2)) ?? [];
    expect(readText(pdf, Number(number))).toContain("Season across two pages");
    expect(readText(pdf, Number(number))).toMatch(new RegExp(`^(.* )?${number}$`, "m"));
  });

  it("names in the contents what does not fit its notebook", async () => {
    const { groups, pdf } = wholeBook("a6");
    const misfits = groups.flatMap(({ entries }) => entries.filter(({ pages }) => pages === 0));
    const contents = readText(await pdf, 1) + readText(await pdf, 2);
    expect(misfits.length).toBeGreaterThan(0);
    for (const { title } of misfits) expect(contents).toContain(`${title}: does not fit`);
  });

  it("is on the notebook's own paper where that has no room on the printer's", async () => {
    for (const size of readSizes(await wholeBook("a4").pdf)) expectSize(size, 210, 297);
    for (const size of readSizes(await wholeBook("jis-b5").pdf)) expectSize(size, 182, 257);
  });
});
