import { describe, expect, it } from "vitest";
import { bookSheets } from "../../src/print/sheets/book-sheets.ts";
import { rememberDrawings } from "../../src/print/sheets/drawing-cache.ts";
import { pageSheets } from "../../src/print/sheets/page-sheets.ts";
import { stripSheets } from "../../src/print/sheets/strip-sheets.ts";
import { BOOK, pageOf, stripOf } from "./demo-book.ts";

describe("drawings that are kept", () => {
  const drawings = rememberDrawings();

  it.each([
    ["seed-list", "a5"],
    ["season-spread", "a5"],
    ["seed-list", "lined"],
  ])("are the same on the pages of %s for %s and in the book as drawn anew", (pattern, slug) => {
    const page = pageOf(pattern, slug);
    expect(pageSheets({ ...page, drawings })).toEqual(pageSheets(page));
    const groups = [{ title: "All", entries: [page] }];
    const book = { title: BOOK.title, notebook: page.notebook, groups, paper: "A4" } as const;
    expect(bookSheets({ ...book, drawings })).toEqual(bookSheets(book));
    // And again, when both have been drawn.
    expect(pageSheets({ ...page, drawings })).toEqual(pageSheets(page));
  });

  it.each(["A4", "letter", "A4"] as const)(
    "are the same on sheets of %s as drawn anew",
    (paper) => {
      for (const strip of [stripOf("everyday", "a6"), stripOf("weeks", "a4")]) {
        const question = { title: strip.title, strips: [strip], paper };
        expect(stripSheets({ ...question, drawings })).toEqual(stripSheets(question));
      }
    },
  );
});
