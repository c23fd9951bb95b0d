/** The names by which a page's script finds its parts: the first of two alike would be taken for the other. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, it } from "vitest";

const book = inject("book");

it.each(["fit/index.html", "fit/recipe/index.html", "measure/index.html", "patterns/index.html"])(
  "%s has no two parts of one name",
  (path) => {
    const html = readFileSync(join(book, path), "utf8");
    const names = [...html.matchAll(/ data-part="([^"]*)"/g)].map(([, name]) => name);
    expect(names.length).toBeGreaterThan(4);
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  },
);
