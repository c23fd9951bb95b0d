/** What other people's work a book passes on, it passes on with their licences. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";

const book = inject("book");
const text = readFileSync(join(book, "assets/licences.txt"), "utf8");

describe("the licences in a book", () => {
  it.each([
    ["Spanbook", "Permission is hereby granted, free of charge"],
    ["@svgdotjs/svg.js", "MIT"],
    ["pdfkit", "MIT"],
    ["@fontsource/vollkorn", "SIL OPEN FONT LICENSE Version 1.1"],
    ["@fontsource/fira-sans", "SIL OPEN FONT LICENSE Version 1.1"],
  ])("of %s are there: %s", (name, words) => {
    const parts = text.split(/\n(?=\S+(?: \d[\w.-]*)?\n-{3,}\n)/);
    const part = parts.find((one) => one.startsWith(`${name} `) || one.startsWith(`${name}\n`));
    expect(part ?? "").toContain(words);
  });

  it("name no folder of the machine that built it", () => {
    expect(text).not.toMatch(/node_modules|\/home\/|\/tmp\//);
  });
});
