/** The set-ups of the demo book as a build puts them out: every file, its data, and its page without a script. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { filesIn } from "../../src/build/output/files-in.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { onSide } from "../../src/recipe/area-tree.ts";
import { openCatalogue } from "../../src/view/catalogue.ts";
import { readSizes } from "../print/poppler.ts";
import { bookContent } from "../setup/demo-content.ts";

const book = inject("book");
const files = new Set(filesIn(book));
const content = await bookContent(inject("content"));
const { setups, notebooks } = content;
const catalogue = openCatalogue(content);

const pairs = setups.flatMap((setup) =>
  notebooks.map((notebook) => [setup.slug, notebook.slug] as const),
);
const textOf = (path: string) => readFileSync(join(book, path), "utf8");

describe("the set-ups of a book", () => {
  it("have a page and everything beside it on each notebook", () => {
    const names = ["index.html", "setup.json", "pages.pdf", "strip.svg", "strip.json", "strip.pdf"];
    const missing = pairs.flatMap(([setup, notebook]) =>
      names.map((name) => `setups/${setup}/${notebook}/${name}`).filter((path) => !files.has(path)),
    );
    expect(missing).toEqual([]);
    expect(setups.length).toBeGreaterThanOrEqual(3);
  });

  it("are all on one page, with the file that each was written as beside it", () => {
    const list = textOf("setups/index.html");
    for (const { slug, title } of setups) {
      expect(list).toContain(title);
      expect(list).toContain(`href="../setups/${slug}/${notebooks[0]?.slug}/index.html"`);
      expect(textOf(`setups/${slug}/${slug}.md`)).toBe(content.texts.get(`setups/${slug}.md`));
    }
  });

  it("are reached from every page's head", () => {
    expect(textOf("patterns/two-row-week/a5/index.html")).toContain(
      'href="../../../setups/index.html"',
    );
  });
});

interface Page {
  readonly number: number;
  readonly pattern: string | null;
  readonly side?: "left" | "right";
  readonly plan?: number;
}

describe.each(pairs)("%s on %s", (setup, notebook) => {
  const folder = `setups/${setup}/${notebook}/`;
  const json = JSON.parse(textOf(`${folder}setup.json`));
  const pages: readonly Page[] = json.pages;

  it("has its plans as plan.json has them", () => {
    for (const { pattern, side, plan } of pages) {
      const shown = json.plans[plan ?? -1];
      if (pattern === null || side === undefined || shown.dates) continue;
      const recipe = onSide(catalogue.recipe(pattern), side);
      const own = planPattern(recipe, catalogue.notebook(notebook), catalogue.when);
      expect(shown).toEqual(JSON.parse(planJson(own)));
    }
  });

  it("has a sheet of the notebook's size for each of its pages", () => {
    const { paper } = JSON.parse(textOf(`notebooks/${notebook}/notebook.json`));
    const sizes = readSizes(new Uint8Array(readFileSync(join(book, folder, "pages.pdf"))));
    expect(sizes).toHaveLength(pages.length);
    for (const [width, height] of sizes) {
      expect(Math.abs(width - paper.across)).toBeLessThan(0.05);
      expect(Math.abs(height - paper.down)).toBeLessThan(0.05);
    }
  });

  it("shows every page with its number, and draws each distinct one once", () => {
    const html = textOf(`${folder}index.html`);
    const numbers = [
      ...html.matchAll(/<div class="facing[^>]*>.*?<b class="numbers">(\d+)<\/b>/gs),
    ];
    expect(numbers.map(([, number]) => Number(number)).toSorted((a, b) => a - b)).toEqual(
      pages.map(({ number }) => number),
    );
    const ids = [...html.matchAll(/<svg id="(picture-[^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const used = [...html.matchAll(/<use href="#([^"]+)"/g)].map(([, id]) => id);
    expect(used.filter((id) => !ids.includes(id))).toEqual([]);
    const drawn = pages.filter(({ pattern }) => pattern !== null);
    expect(ids.length + used.length).toBe(drawn.length);
    expect([...html.matchAll(/<input type="checkbox"/g)]).toHaveLength(drawn.length);
  });
});
