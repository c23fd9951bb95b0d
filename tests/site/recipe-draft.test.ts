/** The recipe page: what it keeps, and that it reads and plans as the build does. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openDevice } from "../../site/script/device/device.ts";
import { textRangeOf } from "../../site/script/lazy/editor/editor-part.ts";
import { FIRST_RECIPE, initialRecipe } from "../../site/script/recipe/initial-recipe.ts";
import { planRecipe } from "../../site/script/recipe/plan-recipe.ts";
import { sayAddressIssue } from "../../src/issue/words/say-address-issue.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import {
  packText,
  type RecipeDraft,
  readKeptRecipe,
  readRecipeAddress,
  unpackText,
  writeRecipeAddress,
} from "../../src/view/address/recipe-address.ts";
import { type DatesChoice, readDatesField } from "../../src/view/fields/span-fields.ts";
import { anyNotebook } from "../random/any-notebook.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";
import { demoText } from "../setup/demo-files.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";

const { content, catalogue } = await demoCatalogue();
const textOf = (slug: string) => demoText(`patterns/${slug}.md`);

const DATES: readonly (DatesChoice | undefined)[] = ["2027-03", "2028-02-29", "2027-W09", ""].map(
  (text) => {
    const days = readDatesField(text);
    const picked = days.ok && days.value && { from: days.value.from, to: days.value.to };
    return picked ? { picked, calendar: text.includes("W") ? { week: "sunday" } : {} } : undefined;
  },
);

function anyDraft(): fc.Arbitrary<RecipeDraft> {
  const text = fc.oneof(
    fc.string({ unit: "grapheme", maxLength: 400 }),
    fc.constantFrom(...content.recipes.map(({ slug }) => textOf(slug))),
  );
  const notebook = anyNotebook().map((one) => ({ ...one, title: "", slug: "", body: "" }));
  const dates = fc.constantFrom(...DATES);
  return fc
    .record({ notebook, slug: fc.constantFrom("", "mine", "0-a"), text, dates })
    .map(({ dates: days, ...draft }) => ({ ...draft, ...(days && { dates: days }) }));
}

it.each(content.notebooks)("the first recipe fits $title", (notebook) => {
  const recipe = readRecipe({ path: "patterns/x.md", text: FIRST_RECIPE });
  expect(recipe.ok && planPattern(recipe.value, notebook).fits).toBe(true);
});

describe("the recipe page's address", () => {
  it("is read as it was written, whatever the page holds", () => {
    fc.assert(
      fc.property(anyDraft(), (draft) => {
        const address = writeRecipeAddress(draft);
        const { slug, ...rest } = draft;
        const expected = slug === "" ? rest : draft;
        expect(readRecipeAddress(address, catalogue.slugs)).toEqual({ ok: true, value: expected });
        expect(readKeptRecipe(address, catalogue.slugs)).toEqual(draft);
      }),
      { seed: 70_020, numRuns: 300 },
    );
  });

  it("is short enough for a link, for every recipe of the book", () => {
    const [notebook] = content.notebooks;
    if (!notebook) throw new Error("the demo book has no notebook");
    const lengths = content.recipes.map(
      ({ slug }) => writeRecipeAddress({ notebook, slug, text: textOf(slug) }).length,
    );
    expect(Math.max(...lengths)).toBeLessThan(2_000);
  });

  it.each<[string, string]>([
    [
      "#v=1&from=gone",
      "The value of “from” names “gone”, which is not in this book, or is named twice.",
    ],
    ["#v=1&text=%C3%A9", "The value of “text” was changed or cut off on its way."],
    ["#v=1&text=AAAA", "The value of “text” was changed or cut off on its way."],
    [
      "#v=1&mine=..%2Fx",
      "The value of “mine” is not valid. A file name has small letters a–z, figures and hyphens, not a hyphen first; Windows keeps a few for devices, such as con.",
    ],
    [
      "#v=1&recipe=..%2Fx",
      "The value of “recipe” is not valid. A file name has small letters a–z, figures and hyphens, not a hyphen first; Windows keeps a few for devices, such as con.",
    ],
  ])("that is broken gets words: %s", (hash, sentence) => {
    const reading = readRecipeAddress(hash, catalogue.slugs);
    expect(reading.ok ? "" : sayAddressIssue(reading.issue)).toBe(sentence);
  });
});

describe("packed text", () => {
  it("comes apart only as what was packed, or not at all", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), fc.nat(), (text, at) => {
        const packed = packText(text);
        expect(unpackText(packed)).toBe(text);
        const cut = packed.slice(0, at % (packed.length + 1));
        expect(["string", "undefined"]).toContain(typeof unpackText(cut));
      }),
      { seed: 70_021, numRuns: 500 },
    );
  });

  it("may not grow beyond what a recipe may have", () => {
    expect(unpackText(packText("a".repeat(256 * 1024)))).toHaveLength(256 * 1024);
    expect(unpackText(packText("a".repeat(256 * 1024 + 1)))).toBeUndefined();
  });
});

describe("what the page holds first", () => {
  const device = openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
  const texts = { "seed-list": textOf("seed-list") };
  const start = (hash: string) => initialRecipe(hash, { device, catalogue, texts });

  it("is a small recipe that is all right", () => {
    expect(start("").draft.text).toBe(FIRST_RECIPE);
    expect(readRecipe({ path: "patterns/x.md", text: FIRST_RECIPE }).ok).toBe(true);
  });

  it("is the pattern that the address starts from, and what was kept is not lost", () => {
    const { draft } = start("");
    device.set("recipe", writeRecipeAddress({ ...draft, text: "mine" }));
    expect(start("#v=1&from=seed-list")).toMatchObject({
      draft: { text: texts["seed-list"] },
      kept: { text: "mine" },
    });
    expect(start("").draft.text).toBe("mine");
  });

  it("is the layout of one's own that the address names, under its name", () => {
    device.set("patterns/nights.md", "of mine");
    expect(start("#v=1&mine=nights").draft).toMatchObject({ text: "of mine", slug: "nights" });
  });

  it("is what is kept where a layout is kept no longer, and that is said", () => {
    const { draft, issue } = start("#v=1&mine=gone");
    expect(draft.text).toBe("mine");
    expect(issue && sayAddressIssue(issue)).toBe("The layout “gone” is not kept on this device.");
  });

  it("is what is kept where the address is broken, with what is wrong", () => {
    expect(start("#v=7")).toMatchObject({ draft: { text: "mine" }, issue: { version: "7" } });
  });
});

describe("a recipe on the page", () => {
  it("comes to the build's plan, for every pattern of the book on the first notebook", () => {
    const [notebook] = content.notebooks;
    if (!notebook) throw new Error("the demo book has no notebook");
    for (const recipe of content.recipes) {
      const draft = { notebook, slug: recipe.slug, text: textOf(recipe.slug) };
      const result = planRecipe(draft, { readRecipe }, content);
      expect(result.ok && planJson(result.plan)).toBe(planJson(planPattern(recipe, notebook)));
    }
  });

  it("is called after its title where its file has no name yet", () => {
    const [notebook] = content.notebooks;
    if (!notebook) throw new Error("the demo book has no notebook");
    const draft = { notebook, slug: "", text: FIRST_RECIPE };
    const result = planRecipe(draft, { readRecipe }, content);
    expect(result.ok && result.recipe.slug).toBe("a-page-of-my-own");
  });
});

describe("a place in a recipe", () => {
  const text = "---\ntitle: A\n\nend";
  it.each<[string, readonly [number, number, number], string]>([
    ["is marked where it is", [2, 8, 1], "A"],
    ["ends with its line at the latest", [2, 1, 99], "title: A"],
    ["on an empty line marks nothing", [3, 1, 4], ""],
    ["on the last line is found", [4, 1, 3], "end"],
    ["beyond the end marks nothing", [9, 9, 9], ""],
  ])("%s", (_, [line, column, width], marked) => {
    const [from, to] = textRangeOf(text, { file: "x", line, column, width });
    expect(text.slice(from, to)).toBe(marked);
  });
});
