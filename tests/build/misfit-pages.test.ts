/** The pages of patterns that do not fit their notebook: they say so everywhere, and offer nothing that is empty. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ENGLISH } from "../../src/calendar/english.ts";
import { bookWith } from "../browser/test-browser.ts";

const pageOf = (pattern: string, notebook: string) => {
  const path = `patterns/${pattern}/${notebook}/index.html`;
  return readFileSync(join(bookWith(path), path), "utf8");
};
const downloads = (html: string) =>
  [...html.matchAll(/ href="([^"]*)" download/g)].map(([, to]) => to);

describe.each([
  // A pattern may fit the keeper's own notebook, or other days: what its print needs is there already.
  ["shed-wall", "a6"],
  ["allotment-map", "a6"],
  ["greenhouse-temperatures", "a6"],
] as const)("%s on %s", (pattern, notebook) => {
  const html = pageOf(pattern, notebook);
  // What waits for a notebook that it fits is hidden.
  const main = html
    .slice(html.indexOf("<main"), html.indexOf("</main>"))
    .replace(/<section[^>]* hidden>[\s\S]*?<\/section>/g, "");

  it("offers the recipe and the reason, and no drawing, strip or print", () => {
    expect(new Set(downloads(main))).toEqual(new Set([`../${pattern}.md`, "plan.json"]));
    expect(main).not.toMatch(/data-print|page\.pdf|page\.svg|strip\.svg/);
    expect(main).not.toMatch(/Print it at actual size/);
  });

  it("tells searchers that it does not fit, and promises no drawing", () => {
    const about = /<meta name="description" content="([^"]*)">/.exec(html)?.[1];
    expect(about).toMatch(/ does not fit .*: why, and what would make it fit\.$/);
  });

  it("says why before it shows the bare notebook", () => {
    expect(main.indexOf("Why it does not fit")).toBeGreaterThan(0);
    expect(main.indexOf("Why it does not fit")).toBeLessThan(main.indexOf("<svg"));
  });
});

describe("a pattern that fits", () => {
  it("offers its page, its strip and its plan, and is printed in true size", () => {
    const html = pageOf("two-row-week", "a5");
    expect(downloads(html)).toEqual(
      expect.arrayContaining([
        "page.pdf",
        "page.svg",
        "strip.svg",
        "plan.json",
        "../two-row-week.md",
      ]),
    );
    expect(html).toContain("data-print");
    expect(html).toMatch(/<meta name="description" content="How to draw /);
  });

  it("has the week in two rows on the pad, too, and says why its first layout is not taken", () => {
    const html = pageOf("two-row-week", "pad");
    for (const label of ["Week", ...ENGLISH.weekdays.wide, "Next week"])
      expect(html).toContain(`>${label}</text>`);
    expect(html).toContain(
      "Two margins of the page land on its top side with this binding: top and inner.",
    );
  });
});
