/** What somebody's notebook and strip are called, and under which file names they go. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SLUG } from "../../src/source/slug.ts";
import { nameNotebook, unnamed } from "../../src/view/fields/name-notebook.ts";
import {
  fieldsOf,
  type NotebookFields,
  USUAL_FIELDS,
} from "../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../src/view/fields/read-notebook-fields.ts";
import { slugFault, slugFor } from "../../src/view/fields/slug-for.ts";
import { NO_STRIP, nameStrip } from "../../src/view/fields/strip-fields.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { catalogue } = await demoCatalogue();

function named(change: Partial<NotebookFields>) {
  const reading = readFields({ ...USUAL_FIELDS, ...change });
  if (!reading.ok) throw new Error("the fields are not all right");
  const { title, slug } = nameNotebook(reading.value, catalogue.notebooks);
  return [title, slug];
}

describe("a notebook", () => {
  it.each<[string, Partial<NotebookFields>, readonly [string, string]]>([
    ["that the book has goes by the book's name", {}, ["A5, 26 × 38", "a5"]],
    ["without a name goes by paper and dots", { dotsAcross: "25" }, ["A5, 25 × 38", "a5-25-38"]],
    [
      "of its own size goes by that",
      { paper: "own", width: "150.5", height: "200" },
      ["150.5 × 200 mm, 26 × 38", "150-5-200-mm-26-38"],
    ],
    ["with a name goes by it", { title: "Férn’s book" }, ["Férn’s book", "fern-s-book"]],
    ["never takes a name of the book's", { title: "a5", dotsDown: "37" }, ["a5", "a5-2"]],
    [
      "goes under the file name that was given",
      { title: "Ferns", slug: "a5", dotsDown: "37" },
      ["Ferns", "a5"],
    ],
    ["with no letter in its name has a file name all the same", { title: "★" }, ["★", "notebook"]],
  ])("%s", (_, change, names) => {
    expect(named(change)).toEqual(names);
  });
});

it("a notebook of the book that is changed is not called what nobody typed", () => {
  const [a5] = catalogue.notebooks.filter(({ slug }) => slug === "a5");
  if (!a5) throw new Error("the demo book has an A5 notebook");
  const begun = unnamed(a5);
  expect(nameNotebook(begun, catalogue.notebooks)).toBe(a5);
  const changed = readFields({
    ...fieldsOf(begun),
    paper: "B6",
    dotsAcross: "24",
    dotsDown: "35",
    firstLeft: "",
    firstTop: "",
  });
  if (!changed.ok) throw new Error("the fields are not all right");
  const { title, slug } = nameNotebook(changed.value, catalogue.notebooks);
  expect([title, slug]).toEqual(["B6, 24 × 35", "b6-24-35"]);
});

describe("a strip", () => {
  const everyday = catalogue.strips.find(({ slug }) => slug === "everyday");
  const asked = { ...NO_STRIP, ...everyday, title: "", slug: "" };
  it.each([
    ["that the book has goes by the book's name", {}, ["Everyday strip", "everyday"]],
    ["without a name is somebody's", { lanes: 11 }, ["My strip", "my-strip"]],
    ["with a name goes by it", { title: "Shed" }, ["Shed", "shed"]],
  ] as const)("%s", (_, change, names) => {
    const { title, slug } = nameStrip({ ...asked, ...change }, catalogue.strips);
    expect([title, slug]).toEqual(names);
  });
});

describe("a file name", () => {
  it.each([
    ["My Slug!", "my-slug"],
    ["-2024", "2024"],
    ["Größe", "gro-e"],
    ["★", undefined],
  ])("that is not valid has a nearest one: %s", (typed, nearest) => {
    const fault = { field: "slug", kind: "no-file-name" } as const;
    expect(slugFault("slug", typed)).toEqual(nearest === undefined ? fault : { ...fault, nearest });
  });

  it("is always one that the book takes, and never one that is taken", () => {
    const taken = fc.array(fc.constantFrom("a", "a-2", "a-3", "x"), { maxLength: 4 });
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.constant("a")), taken, (title, others) => {
        const slug = slugFor(title, { fallback: "file", taken: others });
        expect(slug).toMatch(SLUG);
        expect(slug.length).toBeLessThanOrEqual(80);
        expect(others).not.toContain(slug);
      }),
      { seed: 70_011, numRuns: 1_000 },
    );
  });
});
