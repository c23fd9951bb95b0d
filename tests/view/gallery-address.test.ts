/** The gallery's address: short, the same again when it is read, and harmless whatever it says. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { PURPOSES } from "../../src/recipe/recipe.ts";
import {
  galleryStep,
  LONGEST_QUERY,
  readGalleryAddress,
  writeGalleryAddress,
} from "../../src/view/address/gallery-address.ts";
import { EVERYTHING, type GalleryQuery } from "../../src/view/gallery/gallery-query.ts";

const KNOWN = { notebooks: ["a5", "a6"], tags: ["sowing", "Müll & mehr"] };
const read = (hash: string) => readGalleryAddress(hash, KNOWN);

describe("the gallery's address", () => {
  it.each<[string, Partial<GalleryQuery>]>([
    ["", {}],
    ["#on=a6", { notebook: "a6" }],
    ["#for=week", { purposes: ["week"] }],
    ["#for=month.week", { purposes: ["month", "week"] }],
    ["#tag=sowing", { tag: "sowing" }],
    ["#tag=M%C3%BCll+%26+mehr", { tag: "Müll & mehr" }],
    ["#fit=fits", { fit: "fits" }],
    ["#fit=even", { fit: "even" }],
    ["#pages=2", { pages: "2" }],
    ["#lines=few", { lines: "few" }],
    ["#sort=lines", { sort: "lines" }],
    ["#find=seed+list", { query: "seed list" }],
    [
      "#on=a5&for=year.page&tag=sowing&fit=even&pages=1&lines=many&sort=title&find=a%26b",
      {
        notebook: "a5",
        purposes: ["year", "page"],
        tag: "sowing",
        fit: "even",
        pages: "1",
        lines: "many",
        sort: "title",
        query: "a&b",
      },
    ],
  ])("%s says it and nothing else, and is written so", (hash, said) => {
    const state = { ...EVERYTHING, ...said };
    expect(read(hash)).toEqual(state);
    expect(writeGalleryAddress(state)).toBe(hash);
  });

  it("is the same for the same query, in whatever order they came", () => {
    const state: GalleryQuery = { ...EVERYTHING, purposes: ["week", "year"] };
    expect(writeGalleryAddress(state)).toBe("#for=year.week");
  });
});

describe("what an address says wrongly counts as not said", () => {
  it.each<[string, string, Partial<GalleryQuery>]>([
    ["a notebook that the book lacks", "#on=a9", {}],
    ["a purpose that there is not", "#for=week.decade", { purposes: ["week"] }],
    ["a purpose said twice", "#for=week.week", { purposes: ["week"] }],
    ["a tag that no pattern has", "#tag=harvest", {}],
    ["three pages", "#pages=3", {}],
    ["a fit of another kind", "#fit=yes", {}],
    ["a range that there is not", "#lines=12", {}],
    ["an order that there is not", "#sort=colour", {}],
    ["a key that there is not", "#on=a6&size=large", { notebook: "a6" }],
    ["a key said twice", "#on=a6&on=a5", { notebook: "a6" }],
    ["a name of every object", "#on=constructor&tag=__proto__", {}],
    ["a place on the page", "#week", {}],
    ["a broken escape", "#find=%E0%A4%A&on=a6", { notebook: "a6", query: "\ufffd%A" }],
    ["blanks around a search", "#find=++seed+", { query: "seed" }],
    ["nothing but signs", "#&&==&", {}],
  ])("%s", (_, hash, said) => {
    expect(read(hash)).toEqual({ ...EVERYTHING, ...said });
  });

  it("a search of any length is cut off", () => {
    expect(read(`#find=${"x".repeat(5000)}`).query).toHaveLength(LONGEST_QUERY);
  });
});

describe("the way back", () => {
  it.each<[string, string, string]>([
    ["", "#on=a5&for=week", "push"],
    ["#on=a5&for=week", "#on=a5&for=week&fit=even", "push"],
    ["#on=a5&for=week", "#on=a6&for=week", "replace"],
    ["#on=a5", "#on=a6&for=week", "push"],
    ["#on=a5", "#on=a5&find=g", "push"],
    ["#on=a5&find=g", "#on=a5&find=gr", "replace"],
    ["#on=a5&find=g", "#on=a5", "push"],
    ["#on=a5&find=g", "#on=a5&for=week&find=gr", "push"],
  ])("from %j to %j: %s", (before, next, step) => {
    expect(galleryStep(read(next), read(before))).toBe(step);
  });
});

describe("any address", () => {
  it("is read as something that is written and read as the same", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
        const once = read(`#${text}`);
        expect(read(writeGalleryAddress(once))).toEqual(once);
      }),
      { seed: 60_201, numRuns: 500 },
    );
  });

  it("of any query is read as this query", () => {
    const filters: fc.Arbitrary<GalleryQuery> = fc.record({
      notebook: fc.constantFrom("", ...KNOWN.notebooks),
      purposes: fc.subarray([...PURPOSES]),
      tag: fc.constantFrom("", ...KNOWN.tags),
      pages: fc.constantFrom("", "1", "2"),
      fit: fc.constantFrom("", "fits", "even"),
      lines: fc.constantFrom("", "few", "some", "many"),
      sort: fc.constantFrom("purpose", "title", "lines"),
      query: fc.string({ unit: "binary", maxLength: LONGEST_QUERY }).map((text) => text.trim()),
    });
    fc.assert(
      fc.property(filters, (state) => {
        expect(read(writeGalleryAddress(state))).toEqual(state);
      }),
      { seed: 60_202, numRuns: 500 },
    );
  });
});
