/** What the gallery knows of every pattern on every notebook, against the plans that the same build put out. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { describe, expect, inject, it } from "vitest";
import { AXES, type Axis } from "../../src/measure/axis.ts";
import type { GalleryFacts } from "../../src/view/gallery/gallery-facts.ts";
import { FIRST_CARDS } from "../../src/view/gallery/gallery-groups.ts";

const book = inject("book");
const textOf = (path: string) => readFileSync(join(book, path), "utf8");

function factsOfBook(): GalleryFacts {
  const window: { spanbookFacts?: GalleryFacts } = {};
  runInNewContext(textOf("patterns/facts.js"), { window });
  if (!window.spanbookFacts) throw new Error("the book has no facts");
  return window.spanbookFacts;
}

/** Of a page, the purpose and the pattern of each card; a card that is still empty has none. */
function cardsByPurpose(html: string): readonly (readonly [purpose: string, slug: string])[] {
  const sections = html.split('<section class="part" aria-labelledby="').slice(1);
  return sections.flatMap((section) => {
    const purpose = section.split('"', 1).join();
    const cards = section.split('<li class="card').slice(1);
    return cards.map((card) => [purpose, slugOf(card)] as const);
  });
}

/** "" of a card that is still empty. */
const slugOf = (card: string) =>
  /<h3><a href="[^"]*?([^/"]+)\/[^/"]+\/index.html"/.exec(card)?.[1] ?? "";

const facts = factsOfBook();
const PAIRS = facts.patterns.flatMap((pattern) =>
  facts.notebooks.map((notebook, place) => ({ pattern, notebook, place })),
);

interface PlanFile {
  readonly fits: boolean;
  readonly pages: readonly {
    readonly steps: Readonly<Record<Axis, number>>;
    readonly splits: readonly { readonly before: number; readonly after: number }[];
    readonly boxes: readonly {
      readonly x: number;
      readonly y: number;
      readonly w: number;
      readonly h: number;
    }[];
  }[];
}

const planOf = (pattern: string, notebook: string): PlanFile =>
  JSON.parse(textOf(`patterns/${pattern}/${notebook}/plan.json`));

/** Lines at these positions lie on the paper's own edge and are not drawn. */
function edgesOf(notebook: string): Readonly<Record<Axis, readonly number[]>> {
  const { count, axes } = JSON.parse(textOf(`notebooks/${notebook}/notebook.json`));
  const edges = AXES.map((axis, index) => {
    const way = String(count[axis]);
    const steps = Number(axes[index].steps);
    return [...(way.startsWith("edge") ? [0] : []), ...(way.endsWith("edge") ? [steps] : [])];
  });
  return { across: edges[0] ?? [], down: edges[1] ?? [] };
}

/** Counted cell by cell: each step of each box's outline is set down once, and each unbroken row of them is a line. */
function linesIn(plan: PlanFile, edges: Readonly<Record<Axis, readonly number[]>>): number {
  return plan.pages.reduce((sum, { boxes }) => {
    const rows = new Map<number, Set<number>>();
    const columns = new Map<number, Set<number>>();
    const set = (lines: Map<number, Set<number>>, at: number, from: number, length: number) => {
      const cells = lines.get(at) ?? new Set();
      for (let cell = from; cell < from + length; cell++) cells.add(cell);
      lines.set(at, cells);
    };
    for (const { x, y, w, h } of boxes) {
      for (const at of [y, y + h]) set(rows, at, x, w);
      for (const at of [x, x + w]) set(columns, at, y, h);
    }
    return sum + runsIn(rows, edges.down) + runsIn(columns, edges.across);
  }, 0);
}

function runsIn(lines: ReadonlyMap<number, ReadonlySet<number>>, left: readonly number[]): number {
  return [...lines]
    .filter(([at]) => !left.includes(at))
    .reduce((sum, [, cells]) => sum + [...cells].filter((cell) => !cells.has(cell - 1)).length, 0);
}

describe("the facts of the gallery", () => {
  it("are of every pattern and every notebook", () => {
    expect(facts.notebooks.length).toBeGreaterThanOrEqual(2);
    expect(facts.patterns.length).toBeGreaterThanOrEqual(45);
    for (const { states, pages, lines } of facts.patterns) {
      expect([states.length, pages.length, lines.length]).toEqual(
        Array.from({ length: 3 }, () => facts.notebooks.length),
      );
    }
  });

  it("say of each whether it fits, as its plan does", () => {
    const wrong = PAIRS.filter(({ pattern, notebook, place }) => {
      const fits = pattern.states[place] !== "m";
      return fits !== planOf(pattern.slug, notebook).fits;
    });
    expect(wrong).toEqual([]);
    expect(PAIRS.some(({ pattern, place }) => pattern.states[place] === "m")).toBe(true);
  });

  it("say that nothing is left over only where no plan leaves anything before or after", () => {
    const wrong = PAIRS.filter(({ pattern, notebook, place }) => {
      const splits = planOf(pattern.slug, notebook).pages.flatMap((page) => page.splits);
      const isOver = splits.some(({ before, after }) => before + after > 0);
      return isOver && pattern.states[place] !== "o";
    });
    expect(wrong).toEqual([]);
    for (const state of ["e", "o"])
      expect(PAIRS.some(({ pattern, place }) => pattern.states[place] === state)).toBe(true);
  });

  it("count its pages", () => {
    const wrong = PAIRS.filter(({ pattern, notebook, place }) => {
      const { fits, pages } = planOf(pattern.slug, notebook);
      return fits && Number(pattern.pages[place]) !== pages.length;
    });
    expect(wrong).toEqual([]);
  });

  it("count its lines, as one counts them on the drawing", () => {
    const edges = new Map(facts.notebooks.map((notebook) => [notebook, edgesOf(notebook)]));
    const wrong = PAIRS.flatMap(({ pattern, notebook, place }) => {
      const known = edges.get(notebook) ?? { across: [], down: [] };
      const counted = linesIn(planOf(pattern.slug, notebook), known);
      const told = pattern.lines[place];
      return counted === told ? [] : [`${pattern.slug} on ${notebook}: ${counted}, told ${told}`];
    });
    expect(wrong).toEqual([]);
  });

  /** A heading and two rows of four boxes, all apart: 2 + 8 + 8 lines across and 2 + 8 + 8 down. */
  it("count 36 lines of a week in two rows", () => {
    const week = facts.patterns.find(({ slug }) => slug === "two-row-week");
    expect(week?.lines[facts.notebooks.indexOf("a5")]).toBe(36);
  });
});

describe("the gallery's page", () => {
  const html = textOf("patterns/index.html");
  const whole = textOf("patterns/all.html");

  it("has the first cards, and a sheet to fill for each of the others; every pattern stands once on the whole list", () => {
    const known = facts.patterns.map(({ slug, purpose }) => [purpose, slug]);
    const all = cardsByPurpose(whole);
    expect(all.toSorted()).toEqual(known.toSorted());
    const shown = cardsByPurpose(html);
    expect(shown.map(([purpose]) => purpose)).toEqual(all.map(([purpose]) => purpose));
    expect(shown.slice(0, FIRST_CARDS)).toEqual(all.slice(0, FIRST_CARDS));
    expect(new Set(shown.slice(FIRST_CARDS).map(([, slug]) => slug))).toEqual(new Set([""]));
  });

  it("leads to the whole list from each group that is not whole", () => {
    const links = [...html.matchAll(/href="[./a-z]*all\.html#([^"]+)">All (\d+)/g)];
    const shown = cardsByPurpose(html);
    const behind = shown.slice(FIRST_CARDS).map(([purpose]) => purpose);
    const counted = [...new Set(behind)].map((purpose) => [
      purpose,
      `${shown.filter(([each]) => each === purpose).length}`,
    ]);
    expect(links.map(([, purpose, count]) => [purpose, count])).toEqual(counted);
  });

  it("tells how each comes out on the first notebook, before any script does", () => {
    const cards = whole.split('<li class="card').slice(1);
    const stateOf = (card: string) => (/class="(even|short)"/.exec(card)?.[1] ?? "over").charAt(0);
    const told = cards.map((card) => [
      slugOf(card),
      stateOf(card).replace("s", "m"),
      Number(/class="effort numbers">(\d*)/.exec(card)?.[1]),
    ]);
    const known = facts.patterns.map(({ slug, states, lines }) => [slug, states[0], lines[0]]);
    expect(told.toSorted()).toEqual(known.toSorted());
  });

  it("offers every notebook, every purpose and every tag of the book", () => {
    const values = (name: string) =>
      [...html.matchAll(new RegExp(`name="${name}" value="([^"]+)"`, "g"))].map(([, one]) => one);
    const optionsOf = (name: string) =>
      (html.split(`name="${name}">`)[1] ?? "").split("</select>")[0] ?? "";
    const notebooks = [...optionsOf("on").matchAll(/value="([^"]+)"/g)].map(([, one]) => one);
    expect(notebooks).toEqual(facts.notebooks);
    expect(new Set(values("for"))).toEqual(new Set(facts.patterns.map(({ purpose }) => purpose)));
    const tags = [...optionsOf("tag").matchAll(/<option>([^<]+)/g)].map(([, one]) => one);
    expect(tags).toEqual([...new Set(facts.patterns.flatMap((one) => one.tags))].sort());
  });
});
