/** The demo book as a build puts it out: what is there, and that every page holds together from disk. */
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { filesIn } from "../../src/build/output/files-in.ts";
import { bookContent } from "../setup/demo-content.ts";
import { pagesIn } from "./files-in.ts";
import { partsOf } from "./links-of.ts";

const book = inject("book");
const pages = pagesIn(book);
const files = new Set(filesIn(book));
const content = await bookContent(inject("content"));
const { recipes, notebooks } = content;

describe("the files of a book", () => {
  it("are a page, its drawings and its plan for each pattern on each notebook", () => {
    const missing = recipes.flatMap((recipe) =>
      notebooks.flatMap((notebook) =>
        ["index.html", "page.svg", "strip.svg", "plan.json"]
          .map((name) => `patterns/${recipe.slug}/${notebook.slug}/${name}`)
          .filter((path) => !files.has(path)),
      ),
    );
    expect(missing).toEqual([]);
  });

  it("are a page, its grid and its facts for each notebook", () => {
    const missing = notebooks.flatMap(({ slug }) =>
      ["index.html", "grid.svg", "notebook.json"]
        .map((name) => `notebooks/${slug}/${name}`)
        .filter((path) => !files.has(path)),
    );
    expect(missing).toEqual([]);
  });

  it.each([
    "index.html",
    "patterns/index.html",
    "notebooks/index.html",
    "guide/index.html",
    "404.html",
  ])("have %s", (path) => {
    expect(files.has(path)).toBe(true);
  });
});

describe("the plan of a page", () => {
  it("names its own pattern and notebook, and how many pages it has", () => {
    const path = "patterns/two-row-week/a5/plan.json";
    const plan = JSON.parse(readFileSync(join(book, path), "utf8"));
    expect(plan).toMatchObject({ pattern: "two-row-week", notebook: "a5", fits: true, used: 0 });
    expect(plan.pages).toHaveLength(1);
  });
});

describe("every page", () => {
  it("refers only to files and places that are there, by relative addresses", () => {
    const broken = [...pages].flatMap(([path, html]) =>
      partsOf(html)
        .addresses.filter((address) => !leadsSomewhere(address, path))
        .map((address) => `${path}: ${address}`),
    );
    expect(broken).toEqual([]);
  });

  it("has no style and no script but those in files", () => {
    const loose = [...pages].filter(([, html]) => LOOSE.test(withoutText(html)));
    // The page for what is not there is shown at any address, from which none leads to a file.
    expect(loose.map(([path]) => path)).toEqual(["404.html"]);
    const html = pages.get("404.html") ?? "";
    const scripts = [...html.matchAll(/<script data-url="">([\s\S]*?)<\/script>/g)];
    expect(scripts).toHaveLength(1);
    const hash = createHash("sha256")
      .update(scripts[0]?.[1] ?? "")
      .digest("base64");
    expect(html).toContain(`script-src 'self' 'sha256-${hash}'`);
    expect(withoutText(html).match(/<script(?! data-url)(?![^>]*src=)|<style|\sstyle=/)).toBeNull();
  });

  it("forbids itself everything that does not lie in its folder", () => {
    const lax = [...pages].filter(([, html]) => {
      const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? "";
      return !policy.includes("default-src 'none'") || /unsafe|https?:|\*/.test(policy);
    });
    expect(lax.map(([path]) => path)).toEqual([]);
  });

  it("loads classic scripts only, which work from disk", () => {
    const modern = [...pages].filter(([, html]) => /<script[^>]*type="module"/.test(html));
    expect(modern.map(([path]) => path)).toEqual([]);
  });

  it("has one first heading, a title and a language", () => {
    const odd = [...pages].filter(
      ([, html]) =>
        html.match(/<h1[\s>]/g)?.length !== 1 ||
        !/<title>[^<]+<\/title>/.test(html) ||
        !html.includes('<html lang="en">'),
    );
    expect(odd.map(([path]) => path)).toEqual([]);
  });
});

/** Styles and scripts that stand in a page; data for a script is neither. */
const LOOSE =
  /\sstyle=|<style|<script(?![^>]*\s(?:src=|type="application\/json"))|\son[a-z]+=|javascript:/i;

/** Pages whose fragment may be a state instead of a place: their scripts read it, and check it. */
const STATEFUL =
  /^(index|fit\/index|fit\/recipe\/index|strip\/index|setup\/index|patterns\/([^/]+\/[^/]+\/)?index)\.html$/;

/** Is the target a file of the book, and its fragment a place in it? */
function leadsSomewhere(address: string, from: string): boolean {
  // A small picture may stand in the page itself.
  if (address.startsWith("data:image/svg+xml,")) return true;
  if (/^[a-z]+:|^\/|^$/i.test(address)) return false;
  const [path = "", fragment] = address.split("#");
  const target = path === "" ? from : posix.join(posix.dirname(from), path.replace(/\?.*$/, ""));
  if (!files.has(target) || !existsSync(join(book, target))) return false;
  if (fragment === undefined || fragment === "" || !target.endsWith(".html")) return true;
  if (fragment.includes("=")) return STATEFUL.test(target);
  return partsOf(pages.get(target) ?? "").ids.has(fragment);
}

/** The tags of a page alone: what stands between them is text and may say anything. */
function withoutText(html: string): string {
  return html.replace(/>[^<]*</g, "><");
}

describe("the reference", () => {
  it("says of every key what it takes and what it means", () => {
    const html = readFileSync(join(book, "guide/reference/index.html"), "utf8");
    const takes = [...html.matchAll(/<p class="takes">Takes ([^<]*)/g)].map(([, words]) => words);
    expect(takes.length).toBeGreaterThan(60);
    expect(takes.filter((words = "") => !/^\S.*\w/.test(words))).toEqual([]);
  });
});
