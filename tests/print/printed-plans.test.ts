/** What is planned for a book on paper, and when: as little as memory allows, and no more of it at once. */
import { describe, expect, it } from "vitest";
import { openPrintedPlans } from "../../src/build/artifacts/pdf/printed-plans.ts";
import { bookSheets } from "../../src/print/sheets/book-sheets.ts";
import { BOOK, bookEntry, notebookOf, plansOf } from "./demo-book.ts";

const notebook = notebookOf("a6");
const plans = [...plansOf(notebook).values()];
const fitting = plans.filter(({ fits }) => fits);
const [misfit] = plans.filter(({ fits }) => !fits);

/** Plans that are any pattern's, with the names of those that were asked for. */
function openPlans(plan = plans[0]) {
  const planned: string[] = [];
  const printed = openPrintedPlans((pattern) => {
    planned.push(pattern);
    if (!plan) throw new Error("no plan");
    return plan;
  });
  return { planned, ...printed };
}

describe("the plan of a pattern", () => {
  it("is made once for its page, the count of the book and its page in the book", () => {
    const { plan, pageCount, planned } = openPlans();
    for (const ask of [plan, pageCount, plan]) ask("week", "a5");
    expect(planned).toEqual(["week"]);
  });

  it("is another one on another notebook", () => {
    const { plan, planned } = openPlans();
    for (const slug of ["a5", "a6", "a5"]) plan("week", slug);
    expect(planned).toEqual(["week", "week"]);
  });

  it("of a book of a thousand is let go of and made again, but its pages are not counted again", () => {
    const { plan, pageCount, planned } = openPlans();
    const slugs = Array.from({ length: 1_000 }, (_, index) => `week-${index}`);
    for (const slug of slugs) plan(slug, "a5");
    for (const slug of slugs) pageCount(slug, "a5");
    expect(planned).toHaveLength(1_000);
    for (const slug of slugs) plan(slug, "a5");
    expect(planned).toHaveLength(2_000);
  });

  it("that does not fit has no pages", () => {
    expect(openPlans(misfit).pageCount("week", "a6")).toBe(0);
    expect(openPlans(fitting[0]).pageCount("week", "a6")).toBeGreaterThan(0);
  });
});

describe("the sheets of a book", () => {
  it("are drawn one pattern at a time, the first one before all to choose the paper", () => {
    const drawn: string[] = [];
    const entries = fitting.map((plan) => ({
      ...bookEntry(plan),
      plan: () => {
        drawn.push(plan.pattern);
        return plan;
      },
    }));
    const { sheets } = bookSheets({
      title: BOOK.title,
      notebook,
      groups: [{ title: "All", entries }],
      paper: "A4",
    });
    const [first = "", second = ""] = fitting.map(({ pattern }) => pattern);
    expect(drawn).toEqual([first]);
    let titled = 0;
    for (const sheet of sheets) {
      if (sheet.title === fitting[1]?.recipe.title) break;
      titled += 1;
    }
    expect(titled).toBeGreaterThan(1);
    expect(drawn).toEqual([first, first, second]);
  });
});
