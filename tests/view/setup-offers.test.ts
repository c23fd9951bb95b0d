/** What typed words offer for a set-up's pages. */
import { describe, expect, it } from "vitest";
import { setupOffers } from "../../src/view/setup/setup-offers.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { catalogue } = await demoCatalogue();
const offers = (text: string) =>
  setupOffers(text, { recipes: catalogue.recipes, own: new Set(["habit-month"]) });

describe("the offers", () => {
  it.each([
    ["ea", "Each week"],
    ["every", "Each week"],
    ["each m", "Each month"],
    ["each day", "Each day"],
    ["page before", "Page before a month"],
    ["month-grid", "Month on one page"],
    ["two r", "Week in two rows"],
    ["hab", "Month of small duties"],
  ])("for “%s” begin with %s", (text, title) => {
    expect(offers(text)[0]?.title).toBe(title);
  });

  it("for a word that is none are none, and a block is none for a layout's words", () => {
    expect(offers("xyzzy")).toEqual([]);
    expect(offers("week").map(({ entry }) => entry.kind)).not.toContain("each");
    expect(offers("each week in two rows")).toEqual([]);
  });

  it("for nothing are blocks and what a month is set up with", () => {
    const titles = offers("").map(({ title }) => title);
    expect(titles.slice(0, 2)).toEqual(["Each week", "Each day"]);
    expect(titles.length).toBeGreaterThan(4);
  });

  it("say which layouts are the keeper's", () => {
    expect(offers("small duties")[0]?.about).toContain("yours");
    expect(offers("two rows")[0]?.about).not.toContain("yours");
  });
});
