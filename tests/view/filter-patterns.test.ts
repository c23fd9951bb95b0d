/** Which patterns the gallery shows for which query, and in which order. */
import { describe, expect, it } from "vitest";
import {
  filterPatterns,
  type PatternFilter,
  relaxations,
} from "../../src/view/gallery/filter-patterns.ts";
import type { GalleryFacts, GalleryPattern } from "../../src/view/gallery/gallery-facts.ts";
import { EVERYTHING, type GalleryQuery, MINE } from "../../src/view/gallery/gallery-query.ts";
import { withOwnNotebook } from "../../src/view/gallery/own-facts.ts";
import type { PlanFacts } from "../../src/view/pattern/plan-status.ts";

/** On the large notebook all fit; on the small one the plan does not, and the map takes one page. */
const PATTERNS: readonly GalleryPattern[] = [
  pattern("plan", "Plan of the year", "year", ["plan"], ["e12", "1"], ["m0", "1"]),
  pattern("map", "Map", "reference", ["plan", "map"], ["o31", "2"], ["e30", "1"]),
  pattern("list", "List", "list", [], ["e16", "1"], ["o15", "1"]),
  pattern("diary", "Äpfel, a diary", "year", ["fruit"], ["e16", "1"], ["e1", "1"]),
];
const FACTS: GalleryFacts = { notebooks: ["large", "small"], patterns: PATTERNS };

function pattern(
  slug: string,
  title: string,
  purpose: GalleryPattern["purpose"],
  tags: readonly string[],
  ...on: readonly (readonly [stateAndLines: string, pages: string])[]
): GalleryPattern {
  return {
    slug,
    title,
    purpose,
    tags,
    states: on.map(([text]) => text.charAt(0)).join(""),
    pages: on.map(([, pages]) => pages).join(""),
    lines: on.map(([text]) => Number(text.slice(1))),
  };
}

function shown(
  filters: Partial<GalleryQuery>,
  patternFilter: Partial<PatternFilter> = {},
): readonly string[] {
  const whole: PatternFilter = {
    facts: FACTS,
    notebook: "large",
    found: undefined,
    ...patternFilter,
  };
  return filterPatterns(whole, { ...EVERYTHING, ...filters }).map(({ slug }) => slug);
}

describe("the gallery shows", () => {
  it.each<[string, Partial<GalleryQuery>, string, readonly string[]]>([
    [
      "everything in the book's order, where nothing is wished",
      {},
      "large",
      ["plan", "map", "list", "diary"],
    ],
    ["one purpose", { purposes: ["year"] }, "large", ["plan", "diary"]],
    ["one of several purposes", { purposes: ["list", "reference"] }, "large", ["map", "list"]],
    ["what has a tag", { tag: "plan" }, "large", ["plan", "map"]],
    ["single pages", { pages: "1" }, "large", ["plan", "list", "diary"]],
    ["spreads", { pages: "2" }, "large", ["map"]],
    ["no spread where the notebook takes its single page", { pages: "2" }, "small", []],
    ["what fits", { fit: "fits" }, "small", ["map", "list", "diary"]],
    ["what leaves nothing over", { fit: "even" }, "large", ["plan", "list", "diary"]],
    ["what leaves nothing over on another notebook", { fit: "even" }, "small", ["map", "diary"]],
    ["up to 15 lines", { lines: "few" }, "large", ["plan"]],
    ["up to 15 lines, both ends included", { lines: "few" }, "small", ["list", "diary"]],
    ["16 to 30 lines, both ends included", { lines: "some" }, "large", ["list", "diary"]],
    ["16 to 30 lines on another notebook", { lines: "some" }, "small", ["map"]],
    ["31 lines and more", { lines: "many" }, "large", ["map"]],
    [
      "the whole query at once",
      { purposes: ["year"], fit: "even", lines: "some" },
      "large",
      ["diary"],
    ],
    [
      "titles as a dictionary has them",
      { sort: "title" },
      "large",
      ["diary", "list", "map", "plan"],
    ],
    [
      "the fewest lines first, and like ones by title",
      { sort: "lines" },
      "large",
      ["plan", "diary", "list", "map"],
    ],
    [
      "what does not fit after all others, by lines",
      { sort: "lines" },
      "small",
      ["diary", "list", "map", "plan"],
    ],
  ])("%s", (_, filters, notebook, slugs) => {
    expect(shown(filters, { notebook })).toEqual(slugs);
  });

  it.each<[string, Partial<GalleryQuery>, readonly number[], readonly string[]]>([
    ["what was found, the best first", {}, [3, 0], ["diary", "plan"]],
    ["of what was found, what is wished", { lines: "few" }, [3, 0], ["plan"]],
    ["what was found in another order", { sort: "title" }, [1, 3], ["diary", "map"]],
    ["nothing where nothing was found", {}, [], []],
    ["no more than there is, where an index is of another book", {}, [9, 1], ["map"]],
  ])("%s", (_, filters, found, slugs) => {
    expect(shown(filters, { found })).toEqual(slugs);
  });
});

describe("where nothing is shown, the gallery proposes", () => {
  const proposed = (filters: Partial<GalleryQuery>, found?: readonly number[]) =>
    relaxations({ facts: FACTS, notebook: "large", found }, { ...EVERYTHING, ...filters });

  it("each filter without which there is something, the one with the most first", () => {
    expect(proposed({ purposes: ["year"], pages: "2" })).toEqual(
      [
        { filter: "purposes", count: 1 },
        { filter: "pages", count: 2 },
      ].reverse(),
    );
  });

  it("the search, where it is the search that finds nothing", () => {
    expect(proposed({ query: "xyz", fit: "even" }, [])).toEqual([{ filter: "query", count: 3 }]);
  });

  it("nothing where no single filter is the cause", () => {
    expect(proposed({ purposes: ["week"], tag: "fruit", pages: "2" })).toEqual([]);
  });
});

describe("a notebook of the keeper's own", () => {
  const OUTCOMES: ReadonlyMap<string, PlanFacts> = new Map([
    ["plan", { state: "even", lines: 20, pages: 2 }],
    ["map", { state: "misfit", lines: 0, pages: 1 }],
    ["list", { state: "over", lines: 9, pages: 1 }],
  ]);
  const own = { facts: withOwnNotebook(FACTS, OUTCOMES), notebook: MINE };

  it.each<readonly [Partial<GalleryQuery>, readonly string[]]>([
    [{}, ["plan", "map", "list", "diary"]],
    [{ fit: "even" }, ["plan"]],
    // Of the diary nothing is known: it is not said to leave nothing over, nor not to fit.
    [{ fit: "fits" }, ["plan", "list", "diary"]],
    [{ pages: "2" }, ["plan"]],
    [{ lines: "few" }, ["list"]],
    [{ sort: "lines" }, ["list", "plan", "diary", "map"]],
  ])("is filtered and sorted by %o as those of the book are", (filters, slugs) => {
    expect(shown(filters, own)).toEqual(slugs);
  });

  it("changes nothing for those of the book", () => {
    expect(shown({ fit: "even" }, { ...own, notebook: "small" })).toEqual(
      shown({ fit: "even" }, { notebook: "small" }),
    );
  });
});
