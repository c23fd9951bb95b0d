/** A book made by strangers, opened in a real browser and read back from paper: what they wrote is text, and nothing runs. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readText } from "../print/poppler.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { openTinyBooks, type TinyBooks } from "./tiny-books.ts";

/** Sets a mark wherever it is taken for markup, and would close whatever it stands in. */
const MARK = `"'><img src=x onerror="window.hit=1"><svg onload="window.hit=1"></svg>`;
const CLOSERS = "</title></text></script></textarea>]]>--><script>window.hit=1</script>";
/** Another direction, another alphabet, a joined emoji, a character outside the first plane, U+2028's neighbour. */
const ODD = "\u200fבצל\u200e Лук 👩\u200d🌾 𝔐 \u2027 {{ 7*7777 }}";
const TITLE = `Leek ${MARK}`;
const LABEL = `Beet ${CLOSERS}`;
const quoted = (text: string) => JSON.stringify(text);

const CONTENT = {
  "book.yaml": `title: ${quoted(`Book ${MARK}`)}\n`,
  "notebooks/plain.md": `---\ntitle: ${quoted(`Pad ${MARK}`)}\npaper: A5\npitch: 5\ndots: [26, 38]\n---\n${MARK} ${ODD}\n`,
  "patterns/leek.md": `---\ntitle: ${quoted(TITLE)}\npurpose: list\ntags: [${quoted(`tag ${MARK}`)}]\npage: {rows: {tracks: [{label: ${quoted(LABEL)}, steps: 4}, {label: ${quoted(ODD)}}, {columns: {count: 2, labels: [${quoted(MARK)}, ${quoted(CLOSERS)}]}}]}}\n---\n${MARK}\n\n${CLOSERS}\n\n[x](javascript:window.hit=1) [y](data:text/html,z) ![z](https://example.org/z.png)\n\n\`\`\`html\n${CLOSERS}\n\`\`\`\n\n${ODD}\n`,
  "strips/strip.md": `---\ntitle: ${quoted(`Strip ${MARK}`)}\nacross: [leek]\ndown: [leek]\n---\n${CLOSERS}\n`,
};

const PAGES = [
  "index.html",
  "patterns/index.html",
  "patterns/leek/plain/index.html",
  "notebooks/index.html",
  "notebooks/plain/index.html",
  "strips/index.html",
  "strips/strip/plain/index.html",
  "fit/index.html",
  "fit/recipe/index.html",
  "measure/index.html",
  "guide/index.html",
  "404.html",
];

let books: TinyBooks;
let book: string;
const testBrowser = openTestBrowser();

beforeAll(async () => {
  books = openTinyBooks();
  book = await books.build("hostile", CONTENT);
});

afterAll(() => books.close());

/** What of the strangers' is alive on a page: a mark that was set, an element that only their text could have made. */
async function alive(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const found = [...document.querySelectorAll("*")].filter(
      (element) =>
        element.getAttribute("src") === "x" ||
        [...element.attributes].some(({ name }) => name.startsWith("on")) ||
        /^(javascript|data:text|vbscript)/i.test(element.getAttribute("href") ?? "") ||
        (element.localName === "script" &&
          element.getAttribute("type") !== "application/json" &&
          (element.textContent ?? "").includes("hit")),
    );
    const names = found.map((element) => element.outerHTML.slice(0, 120));
    return "hit" in window ? [...names, "window.hit"] : names;
  });
}

describe("a page of a book by strangers", () => {
  it.each(PAGES)("%s shows their words as words", async (path) => {
    await testBrowser.onPage(onDisk(path, book), {}, async (page) => {
      await page.getByText(MARK).first().waitFor({ state: "attached" });
      expect(await alive(page)).toEqual([]);
      const shown = await page.locator("body").textContent();
      expect(shown).toContain(MARK);
      expect(shown).not.toContain("54439");
    });
  });

  it("finds them by their words in the search, as words", async () => {
    await testBrowser.onPage(onDisk("patterns/index.html", book), {}, async (page) => {
      await page.getByRole("searchbox").fill("beet");
      await page.getByRole("link", { name: "Leek" }).waitFor();
      expect(await alive(page)).toEqual([]);
    });
  });
});

describe("a script that carries their words", () => {
  it.each([
    ["patterns/facts.js", "spanbookFacts", TITLE],
    ["patterns/search-index.js", "spanbookSearchIndex", TITLE],
    ["fit/book.js", "spanbookContent", TITLE],
    ["fit/recipe/texts.js", "spanbookTexts", "window.hit=1"],
    ["setups/texts.js", "spanbookSetups", ""],
  ])("%s gives them as data and does nothing else", (path, name, words) => {
    const window: Record<string, unknown> = {};
    runInNewContext(readFileSync(join(book, path), "utf8"), { window });
    expect(Object.keys(window)).toEqual([name]);
    expect(JSON.stringify(window[name])).toContain(JSON.stringify(words).slice(1, -1));
  });
});

describe("paper that carries their words", () => {
  it.each([
    ["patterns/leek/plain/page.pdf", "<script>window.hit=1</script>"],
    ["strips/strip/plain/strip.pdf", "Leek "],
    ["notebooks/plain/book.pdf", "Leek "],
  ])("%s has them as text", (path, words) => {
    const pdf = readFileSync(join(book, path));
    expect(readText(pdf)).toContain(words);
    expect(pdf.toString("latin1")).not.toMatch(/\/(JavaScript|JS|OpenAction|Launch|URI)\b/);
  });
});

describe("a drawing that carries their words", () => {
  it.each(["page.svg", "thumb.svg", "strip.svg"])(
    "%s is opened by itself, and nothing runs",
    async (name) => {
      await testBrowser.onPage(onDisk(`patterns/leek/plain/${name}`, book), {}, async (page) => {
        expect(await alive(page)).toEqual([]);
        expect(await page.locator("title").first().textContent()).toContain(TITLE);
      });
    },
  );
});
