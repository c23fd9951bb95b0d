/** What the strip page starts with where layouts of one's own lie on it: those of a link, those that are kept, and those that nobody has. */
import { describe, expect, it } from "vitest";
import { type StartLayouts, startStrip } from "../../site/script/app/start-strip.ts";
import { openDevice } from "../../site/script/device/device.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { patternEntry } from "../../src/recipe/strip-recipe.ts";
import { packText } from "../../src/view/address/recipe-address.ts";
import { writeStripAddress } from "../../src/view/address/strip-address.ts";
import { NO_STRIP } from "../../src/view/fields/strip-fields.ts";
import { type OwnLayout, stripResult } from "../../src/view/strip/strip-result.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";

const { catalogue } = await demoCatalogue();

function layout(slug: string, parts: number): OwnLayout {
  const text = `---\ntitle: Mine\npurpose: page\npage: {columns: ${parts}}\n---\n`;
  const reading = readRecipe({ path: `patterns/${slug}.md`, text });
  if (!reading.ok) throw new Error(slug);
  return { slug, text, packed: packText(text), recipe: reading.value };
}

const strip = (...slugs: readonly string[]) => ({
  ...NO_STRIP,
  across: slugs.map((slug) => patternEntry(slug)),
});
const [halves, thirds] = [layout("mine", 2), layout("mine", 3)];

/** The marks across of what is shown. */
function shown(hash: string, kept: string, own: StartLayouts) {
  const device = openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
  if (kept !== "") device.set("strip", `1 ${kept}`);
  const start = startStrip(hash, device, catalogue, own);
  const [across] = stripResult(start.asked, catalogue).strip.sides;
  const lanes = across?.lanes.flatMap(({ runs }) => runs) ?? [];
  return { parts: lanes.map(({ marks }) => marks.length - 1), ...start };
}

describe("a strip of one's own layouts", () => {
  const mine = writeStripAddress({ strip: strip("mine") });

  it("that is kept is drawn by what is kept", () => {
    const { parts, missing } = shown("", mine, { carried: [], kept: [thirds] });
    expect([parts, missing]).toEqual([[3], []]);
  });

  it("of a link is drawn by what came along, though another layout here has the name", () => {
    const hash = writeStripAddress({ strip: strip("mine", "seed-list"), own: [halves] });
    const { parts, kept } = shown(hash, mine, { carried: [halves], kept: [thirds] });
    expect(parts[0]).toBe(2);
    expect(kept.own).toEqual([thirds]);
  });

  it("that is the keeper's own goes on with a layout that was changed since its address was written", () => {
    const hash = writeStripAddress({ strip: strip("mine"), own: [halves] });
    const { parts } = shown(hash, mine, { carried: [halves], kept: [thirds] });
    expect(parts).toEqual([3]);
  });

  it.each([
    ["of a link", mine, ""],
    ["that is kept", "", mine],
  ])("%s is without what nobody has, and says so", (_, hash, kept) => {
    const { parts, missing, asked } = shown(hash, kept, { carried: [], kept: [] });
    expect([parts, missing, asked.strip.across]).toEqual([[], ["mine"], []]);
  });

  it("says nothing of what is missing on a strip that is not shown", () => {
    const hash = writeStripAddress({ strip: strip("seed-list") });
    expect(shown(hash, mine, { carried: [], kept: [] }).missing).toEqual([]);
  });
});
