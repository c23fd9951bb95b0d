import { describe, expect, it } from "vitest";
import {
  isSearchFile,
  isShellPage,
  loadedBy,
  workerFile,
} from "../../src/build/web/service-worker-file.ts";

describe("what a device keeps from the start", () => {
  it.each([
    ["index.html", true],
    ["404.html", true],
    ["patterns/index.html", true],
    ["strips/index.html", true],
    ["guide/counting/index.html", true],
    ["patterns/seed-list/a5/index.html", false],
    ["notebooks/a5/index.html", false],
    ["strips/everyday/a5/index.html", false],
    ["setups/index.html", true],
    ["setups/march-on-the-lane/a5/index.html", false],
    ["fit/index.html", false],
    ["measure/index.html", false],
    ["strip/index.html", false],
    ["setup/index.html", false],
    ["kept/index.html", false],
    ["setups/index.html", true],
    ["setups/march/a5/index.html", false],
    ["assets/book.css", false],
  ])("of pages: %s %s", (path, isKept) => {
    expect(isShellPage(path)).toBe(isKept);
  });

  it.each([
    ["assets/search.js", true],
    ["patterns/search-index.js", true],
    ["assets/print.js", false],
    ["patterns/a/b/c.js", false],
  ])("of the search: %s %s", (path, isKept) => {
    expect(isSearchFile(path)).toBe(isKept);
  });

  it("is what its pages load, as paths from the root", () => {
    const html = `<link rel="icon" href="../assets/icon.svg" type="image/svg+xml">
<link rel="stylesheet" href="../assets/book.css"><link rel="canonical" href="https://example.org/x">
<script src="../assets/book.js" defer></script><img class="thumb" src="a/b/thumb.svg" alt="">
<a href="a/b/index.html">A</a>`;
    expect(loadedBy(html, "patterns/index.html").toSorted()).toEqual([
      "assets/book.css",
      "assets/book.js",
      "assets/icon.svg",
      "patterns/a/b/thumb.svg",
    ]);
  });
});

describe("the worker's file", () => {
  it("names the build, what is kept and what lies at the root, and calls the script beside the book's others", () => {
    const files = ["assets/book.css", "guide/index.html", "guide/x/index.html", "index.html"];
    expect(workerFile("abc", ["index.html"], files).text).toBe(
      'self.spanbookBuild={"version":"abc","shell":["index.html"],"names":["assets","guide","index.html"]};\nimportScripts("assets/offline.js");\n',
    );
  });
});
