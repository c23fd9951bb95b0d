/** A written set-up reads back as the same set-up. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSetup } from "../../src/recipe/read/read-setup.ts";
import type { SetupRecipe } from "../../src/recipe/setup-recipe.ts";
import { writeSetupRecipe } from "../../src/recipe/write-setup-recipe.ts";
import { withoutPlaces } from "../../src/view/address/setup-address.ts";
import { anySetup } from "../random/any-setup.ts";
import { demoNames, demoText } from "../setup/demo-files.ts";

/** The set-up that a text is, wherever its parts stand in it. */
function read(slug: string, text: string): SetupRecipe {
  const reading = readSetup({ path: `setups/${slug}.md`, text });
  if (!reading.ok) throw new Error(`${slug} is not all right: ${text}`);
  const { fillPlace: _, datesPlace: __, pagesPlace: ___, ...setup } = reading.value;
  const { from, to } = setup.dates;
  return { ...setup, dates: { from, to }, pages: setup.pages.map(withoutPlaces) };
}

describe("a set-up that is written and read", () => {
  it.each(demoNames("setups"))("is the same: %s", (name) => {
    const slug = name.replace(".md", "");
    const setup = read(slug, demoText(`setups/${name}`));
    expect(read(slug, writeSetupRecipe(setup))).toEqual(setup);
  });

  it("is the same, whatever it is", () => {
    const slug = fc.oneof(
      fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,12}$/),
      fc.constantFrom("null", "true", "1e3", "0x1f", "12", "0-1", "yes"),
    );
    const body = fc.string().map((text) => text.replace(/\r/g, "").trim());
    const setups = fc
      .tuple(anySetup(slug), body)
      .map(([setup, text]): SetupRecipe => ({ ...setup, body: text }));
    fc.assert(
      fc.property(setups, (setup) => {
        expect(read(setup.slug, writeSetupRecipe(setup))).toEqual(setup);
      }),
      { seed: 20_034, numRuns: 200 },
    );
  });

  it("has each entry in a line of its own, with nothing that is usual", () => {
    const text = writeSetupRecipe(
      read("march-on-the-lane", demoText("setups/march-on-the-lane.md")),
    );
    expect(text.split("\n").slice(1, 10)).toEqual([
      "title: March on the Lane",
      "dates: 2027-03",
      "first: 42",
      "pages:",
      "  - month-opener",
      "  - month-spread",
      "  - {each: week, borders: first, pages: [two-row-week, side-column-notes]}",
      "  - habit-tracker",
      "  - {pattern: committee-notes, times: 2}",
    ]);
  });
});
