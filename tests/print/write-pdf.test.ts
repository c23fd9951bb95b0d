import { describe, expect, it } from "vitest";
import type { Mark } from "../../src/draw/scene.ts";
import { FONT_FILES, readFonts } from "../../src/print/pdf/font/print-fonts.ts";
import { writePdf } from "../../src/print/pdf/write-pdf.ts";
import type { Sheet } from "../../src/print/sheets/sheet.ts";
import { FONTS, fontFile } from "./demo-book.ts";
import { readFacts, readSizes, readText } from "./poppler.ts";

const text = (words: string, y: number): Mark => ({
  kind: "text",
  role: "label",
  x: 5,
  y,
  size: 3,
  anchor: "start",
  text: words,
});

const sheet = (...marks: readonly Mark[]): Sheet => ({
  title: "Sheet",
  width: 100,
  height: 50,
  parts: [{ kind: "figure", description: "Words.", marks }],
});

const write = (pages: readonly Sheet[], fonts = FONTS) =>
  writePdf({ pages, title: "Words", language: "en", fonts });

const freshFonts = () =>
  readFonts({
    normal: FONT_FILES.normal.map(fontFile),
    bold: FONT_FILES.bold.map(fontFile),
  });

describe("a file", () => {
  it("does not depend on what was printed before it", async () => {
    const fonts = freshFonts();
    // An ö is drawn with the glyph of the o, which must still be copied as an o.
    await write([sheet(text("öïłő ﬁ office Ǽ", 10))], fonts);
    const pages = [sheet(text("o i l office fjord œ", 10))];
    const after = await write(pages, fonts);
    expect(after).toEqual(await write(pages, freshFonts()));
    expect(readText(after).trim()).toBe("o i l office fjord œ");
  });

  it("can be made while another is", async () => {
    const pages = [sheet(text("one bed", 10)), sheet(text("two beds", 10))];
    const alone = await write(pages);
    const both = await Promise.all([write(pages), write([sheet(text("öï", 10))]), write(pages)]);
    expect([both[0], both[2]]).toEqual([alone, alone]);
  });

  it("has a page for each sheet, in their order", async () => {
    const pdf = await write([
      sheet(text("first", 10)),
      { ...sheet(text("second", 10)), width: 60 },
    ]);
    expect(readSizes(pdf).map(([width]) => Math.round(width))).toEqual([100, 60]);
    expect([readText(pdf, 1).trim(), readText(pdf, 2).trim()]).toEqual(["first", "second"]);
  });

  it("is a file even without a page", async () => {
    expect(Buffer.from(await write([])).toString("latin1")).toMatch(/^%PDF-1\.7[\s\S]*%%EOF\n$/);
  });

  it("says nothing of when it was made", async () => {
    expect(readFacts(await write([sheet()]))).toMatch(/CreationDate:\s+Thu Jan\s+1 .*1970/);
  });

  it.each(["Beans & <peas>", "Grün (neu) \\ 12", "Грядка", "ערוגה", ""])(
    "has the title %j",
    async (title) => {
      const pdf = await writePdf({ pages: [sheet()], title, language: "en", fonts: FONTS });
      expect(/^Title:[ \t]*(.*)$/m.exec(readFacts(pdf))?.[1]).toBe(title);
    },
  );
});

describe("what is only for the screen", () => {
  it("is not printed: the ground and the tint of a margin", async () => {
    const area = (role: "ground" | "margin" | "middle"): Mark => ({
      kind: "path",
      role,
      d: "M0 0H50V50H0Z",
    });
    const empty = await write([sheet()]);
    expect(await write([sheet(area("ground"), area("margin"))])).toEqual(empty);
    expect(await write([sheet(area("middle"))])).not.toEqual(empty);
  });
});
