/** The fit page, filled in as a person does, says byte for byte what the build wrote. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import fc from "fast-check";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { loadContent } from "../../src/build/content/load-content.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { fieldsOf } from "../../src/view/fields/notebook-fields.ts";
import { likelyNotebook } from "../random/any-notebook.ts";
import { PROJECT } from "../setup/run-command.ts";
import { pdfContent } from "./pdf-content.ts";
import { openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const book = inject("book");
const reading = await loadContent(`${PROJECT}content`);
if (!reading.ok) throw new Error("the demo content has a problem");
const { notebooks, recipes, strips } = reading.value;
const built = (path: string) => readFileSync(join(book, path), "utf8");

const testBrowser = openTestBrowser();
let watched: WatchedPage;

beforeAll(async () => {
  watched = await watchedPage(testBrowser.browser);
  await watched.page.goto(`${pathToFileURL(book).href}/fit/index.html`);
});

afterAll(async () => {
  await watched.close();
});

/** Fills the whole form in, then draws each pattern; what the page keeps for other programs each time. */
function plansInPage(page: Page, notebook: Notebook): Promise<Record<string, string>> {
  const fields = { ...fieldsOf(notebook), title: notebook.title, slug: notebook.slug };
  return page.evaluate((filled) => {
    const form = document.querySelector<HTMLFormElement>('[data-part="notebook"]');
    const pattern = document.querySelector<HTMLSelectElement>("#pattern");
    if (!form || !pattern) throw new Error("the page has no form");
    const fill = (name: string, text: string) => {
      const field = form.elements.namedItem(name);
      if (field instanceof HTMLInputElement || field instanceof HTMLSelectElement)
        field.value = text;
    };
    for (const [name, text] of Object.entries(filled)) fill(name, text);
    for (const size of ["width", "height"] as const) fill(size, filled[size]);
    form.querySelector("#dots-across")?.dispatchEvent(new Event("input", { bubbles: true }));
    const slugs = [...pattern.options].map(({ value }) => value);
    return Object.fromEntries(
      slugs.map((slug) => {
        pattern.value = slug;
        pattern.dispatchEvent(new Event("input", { bubbles: true }));
        return [slug, document.querySelector("#plan-data")?.textContent ?? ""];
      }),
    );
  }, fields);
}

describe("what the page says of a plan", () => {
  it.each(notebooks.map((notebook) => [notebook.slug, notebook] as const))(
    "is the build's plan.json, for every pattern on %s",
    async (slug, notebook) => {
      const plans = await plansInPage(watched.page, notebook);
      expect(Object.keys(plans).sort()).toEqual(recipes.map((recipe) => recipe.slug).sort());
      for (const [pattern, text] of Object.entries(plans)) {
        expect(text).toBe(built(`patterns/${pattern}/${slug}/plan.json`));
      }
    },
  );

  it("is what the engine writes, for every pattern on 50 notebooks that nobody has written down", async () => {
    for (const notebook of fc.sample(likelyNotebook(), { seed: 70_040, numRuns: 50 })) {
      const plans = await plansInPage(watched.page, notebook);
      for (const recipe of recipes) {
        expect(plans[recipe.slug]).toBe(planJson(planPattern(recipe, notebook)));
      }
    }
  }, 300_000);
});

describe("what the page says of a strip", () => {
  it.each(strips.map(({ slug }) => slug))("is the build's strip.json, for %s", async (strip) => {
    for (const { slug } of notebooks) {
      const said = await watched.page.evaluate(
        ([notebookSlug, stripSlug]) => {
          const choose = (selector: string, value: string) => {
            const select = document.querySelector<HTMLSelectElement>(selector);
            if (!select) throw new Error(`the page has no ${selector}`);
            select.value = value;
            select.dispatchEvent(new Event("input", { bubbles: true }));
          };
          choose("#start", notebookSlug);
          choose("#book-strip", stripSlug);
          return document.querySelector("#strip-data")?.textContent ?? "";
        },
        [slug, strip] as const,
      );
      expect(said).toBe(built(`strips/${strip}/${slug}/strip.json`));
    }
  });
});

describe("the fields that others rely on", () => {
  it.each(["Paper", "Pitch (mm)", "Dots across", "Dots down", "Pattern"])(
    "include exactly one that is labelled %s",
    async (label) => {
      expect(await watched.page.getByLabel(label).count()).toBe(1);
    },
  );

  it("can be filled in by those labels alone", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(watched.page.url().replace(/#.*/, ""));
    await page.getByLabel("Paper").selectOption("A6");
    await page.getByLabel("Pitch (mm)").fill("4");
    await page.getByLabel("Dots across").fill("25");
    await page.getByLabel("Dots down").fill("36");
    await page.getByLabel("Pattern").selectOption("seed-list");
    const plan = JSON.parse((await page.locator("#plan-data").textContent()) ?? "");
    expect(plan.pattern).toBe("seed-list");
    expect(plan.pages[0].steps).toEqual({ across: 25, down: 36 });
    await close();
  });
});

describe("a file that the page makes", () => {
  it.each([
    ["save-page-svg", "patterns/two-row-week/a6/page.svg"],
    ["save-page-pdf", "patterns/two-row-week/a6/page.pdf"],
    ["save-strip-svg", "strips/everyday/a6/strip.svg"],
    ["save-strip-pdf", "strips/everyday/a6/strip.pdf"],
  ])("by %s is the build's %s", async (doing, path) => {
    const { page } = watched;
    await page.getByLabel("Start from").first().selectOption("a6");
    await page.getByLabel("Pattern").selectOption("two-row-week");
    await page.locator("#book-strip").selectOption("everyday");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.locator(`[data-do="${doing}"]`).click(),
    ]);
    const [made, written] = [readFileSync(await download.path()), readFileSync(join(book, path))];
    if (path.endsWith(".pdf")) expect(pdfContent(made)).toBe(pdfContent(written));
    else expect(made.equals(written)).toBe(true);
  });
});

describe("the page from disk", () => {
  it("has nothing to complain of", () => {
    expect(existsSync(join(book, "fit/book.js"))).toBe(true);
    expect(watched.complaints).toEqual([]);
  });
});
