/** A set-up that somebody asks for in the page: what is wrong with it, where, and what each entry comes to. */
import { describe, expect, it } from "vitest";
import { planSetup } from "../../src/setup/plan-setup.ts";
import { setupJson } from "../../src/setup/setup-json.ts";
import { readSetupAddress } from "../../src/view/address/setup-address.ts";
import { unnamed } from "../../src/view/fields/name-notebook.ts";
import { openPlanner } from "../../src/view/planner.ts";
import { entryWords } from "../../src/view/setup/entry-words.ts";
import { layoutViews } from "../../src/view/setup/layout-views.ts";
import { setupResult } from "../../src/view/setup/setup-result.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { content, catalogue } = await demoCatalogue();

/** On the book's notebook with the name. */
function resultOf(said: string, notebook = "a5") {
  const reading = readSetupAddress(`#v=1&${said}`);
  if (!reading.ok || !reading.value.setup) throw new Error(`${said} is no set-up`);
  const { setup, calendar = {} } = reading.value;
  const of = catalogue.notebooks.find(({ slug }) => slug === notebook);
  if (!of) throw new Error(`there is no ${notebook}`);
  return setupResult({ notebook: unnamed(of), setup, calendar }, { catalogue, own: [] });
}

const worked = (said: string, notebook?: string) => {
  const { question, when } = resultOf(said, notebook);
  if (!question) throw new Error(`${said} is not all right`);
  return { setup: planSetup(question), rule: when.rule };
};

describe("what is wrong", () => {
  it.each([
    [
      "pages=no-such",
      "0",
      "Neither the book nor this device has a layout “no-such”.",
      "take it out",
    ],
    ['pages=[{"each":"week","pages":["no-such"]}]', "0.0", "“no-such”", "Open its file"],
    [
      'pages=[{"each":"week","pages":["month-grid"]}]',
      "0.0",
      "is for a month, and stands inside each week",
      "Put it outside",
    ],
    [
      'pages=["seed-list",{"pattern":"month-grid","times":2}]',
      "1",
      "it cannot have times",
      "Leave times out",
    ],
    ["pages=month-grid&fill=month-grid", "fill", "has dates", "without dates"],
    ["pages=month-grid&fill=no-such", "fill", "“no-such”", "take it out"],
    [
      'pages=[{"pattern":"seed-list","times":400},{"pattern":"seed-list","times":400},{"pattern":"seed-list","times":400}]',
      "pages",
      "more than 1000 pages",
      "second set-up",
    ],
  ])("%s is told at %s, with a remedy", (said, at, words, remedy) => {
    const { faults, question } = resultOf(`dates=2027-03&${said}`);
    expect(faults.map((fault) => fault.at)).toContain(at);
    const fault = faults.find((one) => one.at === at);
    expect(fault?.sentence).toContain(words);
    expect(fault?.hint).toContain(remedy);
    expect(question).toBeUndefined();
  });

  it.each(["", "&pages="])("a set-up without pages is nothing yet, and no fault%s", (pages) => {
    const { faults, question } = resultOf(`dates=2027-03${pages}`);
    expect([faults, question]).toEqual([[], undefined]);
  });
});

describe("what is counted once", () => {
  it.each<readonly [said: string, titles: readonly string[]]>([
    ["pages=seed-list", ["Seed list"]],
    [
      'pages=[{"each":"week","pages":["two-row-week"]},"seed-list"]',
      ["Week in two rows, right pages", "Week in two rows, left pages", "Seed list"],
    ],
    [
      "pages=ninths-spread",
      ["Two pages in ninths, left pages", "Two pages in ninths, right pages"],
    ],
  ])("%s has a head for each way of marking: %j", (said, heads) => {
    const { setup, rule } = worked(`dates=2027-03&${said}`);
    const of = catalogue.notebooks.find(({ slug }) => slug === "a5");
    if (!of) throw new Error("there is no a5");
    expect(layoutViews(setup, of, rule).map(({ titles }) => titles.join(", "))).toEqual(heads);
  });
});

describe("what is right", () => {
  it.each(content.setups.map(({ slug }) => slug))(
    "is planned as the build plans it: %s",
    (slug) => {
      const setup = content.setups.find((one) => one.slug === slug);
      const of = catalogue.notebooks[0];
      if (!setup || !of) throw new Error("the demo has set-ups and notebooks");
      const sources = { catalogue, own: [] };
      const { question } = setupResult({ notebook: unnamed(of), setup, calendar: {} }, sources);
      if (!question) throw new Error(`${slug} is not all right`);
      expect(setupJson(planSetup(question))).toBe(
        setupJson(openPlanner(content).setupOn(slug, of.slug)),
      );
    },
  );

  it("is called by its days, and begins weeks as it is asked to", () => {
    const { recipe, when } = resultOf("dates=2027-03&pages=month-grid&region=US");
    expect([recipe.title, recipe.slug, when.rule.firstWeekday]).toEqual([
      "March 2027",
      "march-2027",
      7,
    ]);
  });

  it("says of each entry which pages it takes, and which stay free before a spread", () => {
    const { setup, rule } = worked(
      'dates=2027-03&from=43&pages=["month-spread",{"each":"week","borders":"first","pages":["two-row-week","side-column-notes"]},"habit-tracker"]',
    );
    expect(entryWords(setup, "0", rule)).toEqual({
      pages: "2 pages, 44–45",
      notes: ["Page 43 stays free: a spread begins on an even page."],
    });
    expect(entryWords(setup, "1", rule).pages).toBe("10 pages, 46–55");
    expect(entryWords(setup, "1.0", rule).pages).toBe("5 pages between 46 and 54");
    expect(entryWords(setup, "1.1", rule).pages).toBe("5 pages between 47 and 55");
    expect(entryWords(setup, "2", rule).pages).toBe("1 page, 56");
  });
});
