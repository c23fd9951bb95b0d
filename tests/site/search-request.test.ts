/** A search that may come late or not at all, and the words for what came of it. */
import { describe, expect, it } from "vitest";
import { openQuery } from "../../site/script/app/search-request.ts";
import { sayFilter, sayLines } from "../../site/script/gallery/say-filter.ts";
import { sayResult } from "../../site/script/gallery/show-summary.ts";
import { EVERYTHING, type GalleryQuery } from "../../src/view/gallery/gallery-query.ts";
import type { Search } from "../../src/view/gallery/open-search.ts";

const search: Search = (query) => ({ places: [query.length], isNear: query.startsWith("n") });

/** A load that is settled by hand, and how often it was asked for and told. */
function slowly() {
  const store: { readonly come: () => void; readonly fail: () => void }[] = [];
  const load = () =>
    new Promise<Search>((resolve, reject) => {
      store.push({ come: () => resolve(search), fail: () => reject(new Error("not there")) });
    });
  let ready = 0;
  const query = openQuery(load, () => {
    ready += 1;
  });
  return { query, store, readyCount: () => ready };
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

describe("a search", () => {
  it("is not sent for until something is searched for", () => {
    const { query, store } = slowly();
    expect(query.ask("")).toEqual({ kind: "none" });
    expect(store).toHaveLength(0);
  });

  it("is waited for, and then answers", async () => {
    const { query, store, readyCount } = slowly();
    expect(query.ask("bean")).toEqual({ kind: "waiting" });
    store[0]?.come();
    await settled();
    expect(readyCount()).toBe(1);
    expect(query.ask("bean")).toEqual({ kind: "found", places: [4], isNear: false });
    expect(query.ask("near")).toEqual({ kind: "found", places: [4], isNear: true });
  });

  it("that was prepared tells nobody that it came, for nobody has asked", async () => {
    const { query, store, readyCount } = slowly();
    query.prepare();
    store[0]?.come();
    await settled();
    expect(readyCount()).toBe(0);
    expect(query.ask("bean").kind).toBe("found");
    query.prepare();
    expect(store).toHaveLength(1);
  });

  it("that does not come says so, and is sent for again for other words", async () => {
    const { query, store, readyCount } = slowly();
    query.ask("bean");
    store[0]?.fail();
    await settled();
    expect(readyCount()).toBe(1);
    expect(query.ask("bean")).toEqual({ kind: "failed" });
    expect(store).toHaveLength(1);
    expect(query.ask("beans")).toEqual({ kind: "waiting" });
    store[1]?.come();
    await settled();
    expect(query.ask("bean").kind).toBe("found");
  });
});

const FILTERS: GalleryQuery = {
  ...EVERYTHING,
  query: "bean",
  purposes: ["week", "page"],
  tag: "sowing",
  fit: "even",
  pages: "2",
  lines: "some",
};

describe("in words", () => {
  it.each([
    ["query", "“bean”"],
    ["purposes", "week, page"],
    ["tag", "sowing"],
    ["fit", "leaves nothing over"],
    ["pages", "two pages"],
    ["lines", "16 to 30 lines"],
  ] as const)("the filter %s is %s", (filter, words) => {
    expect(sayFilter(FILTERS, filter)).toBe(words);
  });

  it.each([
    [0, ""],
    [1, "1 line"],
    [31, "31 lines"],
  ])("%i lines are %j", (count, words) => {
    expect(sayLines(count)).toBe(words);
  });

  it.each([
    ["all", { kind: "none" }, 61, 61, "61 patterns"],
    ["the only one", { kind: "none" }, 1, 1, "1 pattern"],
    ["some", { kind: "found", places: [1], isNear: false }, 1, 61, "1 of 61 patterns"],
    [
      "some that are written nearly so",
      { kind: "found", places: [1], isNear: true, meant: "beans" },
      3,
      61,
      "Nothing is called “bean”",
    ],
    ["none", { kind: "found", places: [], isNear: false }, 0, 61, "No pattern"],
    [
      "what is left without a search",
      { kind: "failed" },
      7,
      61,
      "7 of 61 patterns; the search could not be loaded, and its words are left aside",
    ],
  ] as const)("%s", (_, query, count, all, words) => {
    expect(sayResult(FILTERS, query, { count, all })).toBe(words);
  });
});
