/** A written strip reads back as the same strip. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import type { StripRecipe } from "../../src/recipe/strip-recipe.ts";
import { writeStripRecipe } from "../../src/recipe/write-strip-recipe.ts";
import { anyStrip } from "../random/any-strip.ts";
import { demoNames, demoText } from "../setup/demo-files.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

/** The strip that a text is. */
function read(slug: string, text: string): StripRecipe {
  const reading = readStripRecipe({ path: `strips/${slug}.md`, text });
  if (!reading.ok) throw new Error(`${slug} is not all right: ${text}`);
  return reading.value;
}

describe("a strip that is written and read", () => {
  it.each(demoNames("strips"))("is the same: %s", (name) => {
    const slug = name.replace(".md", "");
    const strip = read(slug, demoText(`strips/${name}`));
    expect(read(slug, writeStripRecipe(strip))).toEqual(strip);
  });

  it("is the same, whatever it is", () => {
    const slug = fc.oneof(
      fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,12}$/),
      fc.constantFrom("null", "true", "1e3", "0x1f", "12", "0-1", "yes"),
    );
    const body = fc.string().map((text) => text.replace(/\r/g, "").trim());
    const strips = fc
      .tuple(anyStrip(slug), body)
      .map(([strip, text]): StripRecipe => ({ ...strip, body: text }));
    fc.assert(
      fc.property(strips, (strip) => {
        expect(read(strip.slug, writeStripRecipe(strip))).toEqual(strip);
      }),
      { seed: 20_033, numRuns: checkRuns(1_000) },
    );
  });
});
