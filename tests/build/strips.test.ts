/** The strips of the demo book as a build puts them out: every file, and data that other programs may rely on. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { filesIn } from "../../src/build/output/files-in.ts";
import { MAKES } from "../../src/recipe/strip-recipe.ts";
import type { StripJson } from "../../src/strip/strip-json.ts";
import { bookContent } from "../setup/demo-content.ts";

const book = inject("book");
const files = new Set(filesIn(book));
const content = await bookContent(inject("content"));
const { strips, notebooks } = content;

const pairs = strips.flatMap((strip) =>
  notebooks.map((notebook) => [strip.slug, notebook.slug, strip] as const),
);
const textOf = (path: string) => readFileSync(join(book, path), "utf8");
const stripJson = (strip: string, notebook: string): StripJson =>
  JSON.parse(textOf(`strips/${strip}/${notebook}/strip.json`));

describe("the strips of a book", () => {
  it("have a page and everything beside it on each notebook", () => {
    const names = [
      "index.html",
      "strip.svg",
      "strip.json",
      "strip.pdf",
      "strip-letter.pdf",
      "card.svg",
      "card.pdf",
    ];
    const missing = pairs.flatMap(([strip, notebook]) =>
      names.map((name) => `strips/${strip}/${notebook}/${name}`).filter((path) => !files.has(path)),
    );
    expect(missing).toEqual([]);
    expect(pairs.length).toBeGreaterThanOrEqual(12);
  });

  it("are made in every way that there is", () => {
    expect(new Set(strips.map(({ make }) => make))).toEqual(new Set(MAKES));
  });

  it("are all on one page, with the file that each was written as beside it", () => {
    const list = textOf("strips/index.html");
    for (const { slug, title } of strips) {
      expect(list).toContain(title);
      expect(list).toContain(`href="../strips/${slug}/${notebooks[0]?.slug}/index.html"`);
      expect(textOf(`strips/${slug}/${slug}.md`)).toBe(content.texts.get(`strips/${slug}.md`));
    }
  });
});

describe.each(pairs)("strip.json of %s for %s", (slug, notebook, recipe) => {
  const json = stripJson(slug, notebook);
  const entries = [...recipe.across, ...recipe.down];
  const divisions = new Set(
    entries.flatMap((entry) => (entry.kind === "division" ? [entry.slug] : [])),
  );

  it("has the keys, kinds and order that were promised", () => {
    expect(Object.keys(json)).toEqual(["strip", "notebook", "sides"]);
    expect([json.strip, json.notebook]).toEqual([slug, notebook]);
    expect(json.sides.map(({ axis }) => axis)).toEqual(["across", "down"]);
    for (const side of json.sides) {
      expect(Object.keys(side)).toEqual(["axis", "steps", "mm", "middle", "lanes", "left_out"]);
      expect(side.mm).toHaveLength(side.steps + 1);
      expect(side.lanes.length).toBeLessThanOrEqual(recipe.lanes);
      const runs = side.lanes.flatMap((lane) => lane.runs);
      for (const run of runs) {
        const keys = ["patterns", "from", "to", "marks", "sizes", "colour", "uses"];
        const isPlain = run.patterns.some((slug) => divisions.has(slug));
        expect(Object.keys(run)).toEqual(isPlain ? [...keys, "plain"] : keys);
        expect(run.plain).toBe(isPlain || undefined);
        const numbers = [run.from, run.to, ...run.marks, ...run.sizes, run.colour, run.uses];
        expect(numbers.every(Number.isInteger)).toBe(true);
        expect(run.marks).toEqual([...new Set(run.marks)].sort((a, b) => a - b));
      }
      for (const out of side.left_out) {
        const place = out.from === undefined ? [] : ["from", "to"];
        expect(Object.keys(out)).toEqual(["pattern", ...place, "why"]);
      }
    }
  });

  it("has no two runs of a lane over one another, and none twice", () => {
    for (const { lanes } of json.sides) {
      for (const { runs } of lanes) {
        const sorted = runs.toSorted((a, b) => a.from - b.from);
        sorted.slice(1).forEach((run, index) => {
          expect(run.from).toBeGreaterThanOrEqual(sorted[index]?.to ?? 0);
        });
      }
      const marks = lanes.flatMap(({ runs }) => runs.map((run) => run.marks.join(" ")));
      expect(new Set(marks).size).toBe(marks.length);
    }
  });

  it("carries each pattern that was asked for, or says why not", () => {
    for (const { axis, lanes, left_out } of json.sides) {
      const carried = lanes.flatMap(({ runs }) => runs.flatMap(({ patterns }) => patterns));
      const named = new Set([...carried, ...left_out.map(({ pattern }) => pattern)]);
      expect([...named].sort()).toEqual(recipe[axis].map((entry) => entry.slug).sort());
      for (const { why } of left_out) expect(why).toMatch(/^[A-Z].*\.$/);
    }
  });

  it("gives each pattern one colour on both sides", () => {
    const worn = json.sides.flatMap(({ lanes }) =>
      lanes.flatMap(({ runs }) => runs.map((run) => [run.patterns[0], run.colour] as const)),
    );
    const byPattern = new Map(worn);
    expect(worn.filter(([pattern, colour]) => byPattern.get(pattern) !== colour)).toEqual([]);
  });

  it("has the places of the notebook's own file, in millimetres, to the last digit", () => {
    const { paper, pitch, dots, firstDot, count } = JSON.parse(
      textOf(`notebooks/${notebook}/notebook.json`),
    );
    for (const { axis, mm } of json.sides) {
      const edgeFirst = count[axis].startsWith("edge");
      const edgeLast = count[axis].endsWith("edge");
      // In whole micrometres: dot k lies at firstDot + (k − 1) · pitch, the edges at 0 and at the paper's size.
      const micro = (length: number) => Math.round(length * 1000);
      const places = Array.from(
        { length: dots[axis] },
        (_, index) => micro(firstDot[axis]) + index * micro(pitch[axis]),
      );
      const wanted = [
        ...(edgeFirst ? [0] : []),
        ...places,
        ...(edgeLast ? [micro(paper[axis])] : []),
      ].map((place) => place / 1000);
      expect(mm).toEqual(wanted);
    }
  });

  it("is what its page tells", () => {
    const html = textOf(`strips/${slug}/${notebook}/index.html`);
    const countOf = (part: string) => html.split(part).length - 1;
    const lanes = json.sides.flatMap((side) => side.lanes);
    expect(countOf('<li class="run">')).toBe(lanes.flatMap(({ runs }) => runs).length);
    expect(countOf('<div class="left-out">')).toBe(
      json.sides.filter(({ left_out }) => left_out.length > 0).length,
    );
    for (const name of ["strip.pdf", "strip-letter.pdf", "card.pdf", `../${slug}.md`])
      expect(html).toContain(`href="${name}"`);
    expect(html).toContain("Cut away from your body");
  });
});
