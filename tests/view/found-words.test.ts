/** The words that people search a planner's layouts by: each finds, among its first three, a layout that is meant by it. */
import markdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { searchIndex } from "../../src/build/pages/search-index.ts";
import { openSearch } from "../../src/view/gallery/open-search.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { content } = await demoCatalogue();
const search = openSearch(searchIndex(content, markdownIt()));
const found = (query: string) =>
  search(query).places.map((place) => content.recipes[place]?.slug ?? "");

/** What people call it, and the layouts of which one is enough. */
const MEANT: readonly (readonly [query: string, ...slugs: readonly string[]])[] = [
  ["habit", "habit-tracker"],
  ["habit tracker", "habit-tracker"],
  ["mood", "mood-squares"],
  ["sleep", "sleep-in-squares"],
  ["checklist", "checklist"],
  ["to-do", "to-do-by-when", "checklist"],
  ["todo", "to-do-by-when", "checklist"],
  ["to do list", "to-do-by-when", "checklist"],
  ["index", "contents-page", "index-by-letters"],
  ["contents", "contents-page"],
  ["project", "project-on-a-page", "project-notes"],
  ["project plan", "project-on-a-page"],
  ["budget", "budget-planned-spent", "month-budget", "year-budget"],
  ["expenses", "spending"],
  ["money", "budget-planned-spent", "month-budget", "spending"],
  ["savings", "savings-squares"],
  ["reading list", "reading-list"],
  ["books", "bookshelf", "reading-list"],
  ["meal plan", "meal-plan"],
  ["menu", "meal-plan", "week-with-meals"],
  ["birthdays", "birthdays"],
  ["packing", "packing-list"],
  ["cleaning", "cleaning-plan"],
  ["year overview", "year-overview-table", "year-in-twelve"],
  ["plan ahead", "year-plan-ahead"],
  ["goals", "quarter-goals", "year-goals-by-quarter", "month-goals-by-week"],
  ["review", "weekly-review", "month-review", "year-review"],
  ["gratitude", "gratitude-week", "gratitude-and-diary"],
  ["daily", "day-in-three-parts", "gratitude-and-diary"],
  ["weekly", "week-on-one-page", "weekly-review"],
  ["monthly", "month-by-weeks", "month-grid"],
  ["planner", "year-planner", "week-on-one-page"],
  ["agenda", "week-on-one-page"],
  ["calendar", "year-in-small-months", "month-grid"],
  ["week on two pages", "week-in-columns", "four-days"],
  ["two days a page", "two-days-first-half"],
  ["workout", "workout-log"],
  ["water", "water-and-meals"],
  ["weather", "weather-month"],
  ["garden", "garden-bed-plan"],
  ["diary", "gratitude-and-diary", "habits-and-a-line"],
  ["journal", "gratitude-and-diary", "habits-and-a-line"],
  ["shopping", "shopping-list"],
  ["groceries", "shopping-list"],
  ["films", "series-and-films"],
  ["recipes", "recipe-cards"],
  ["chores", "to-do-by-when", "cleaning-plan"],
  ["exercise", "workout-log"],
  ["expense tracker", "spending"],
  ["daily planner", "day-in-three-parts"],
  ["weekly planner", "week-on-one-page"],
  ["meeting notes", "committee-notes"],
  ["travel", "trip-plan", "packing-list"],
  ["timetable", "class-timetable"],
  ["key", "signs-and-colours"],
];

describe("what people search for", () => {
  it.each(MEANT)("%s finds one of %s and its like", (query, ...slugs) => {
    const first = found(query).slice(0, 3);
    expect(
      first.filter((slug) => slugs.includes(slug)),
      first.join(", "),
    ).not.toEqual([]);
  });

  it.each([
    ["habbits", "habits", "habit-tracker"],
    ["calandar", "calendar", "year-in-small-months"],
    ["expences", "expenses", "spending"],
    ["gratitute", "gratitude", "gratitude-week"],
    ["birhtdays", "birthdays", "birthdays"],
  ])("%s is taken for %s", (query, meant, slug) => {
    expect(search(query)).toMatchObject({ isNear: true, meant });
    expect(found(query).slice(0, 3)).toContain(slug);
  });

  /** Three letters that a longer word begins with, and words of which only three letters are alike. */
  it.each(["sleigh", "moon landing strip of mars", "habitat", "gardenia", "packet of crisps"])(
    "%j finds nothing by three letters alone",
    (query) => {
      const near = ["habit-tracker", "sleep-in-squares", "packing-list", "garden-bed-plan"];
      expect(found(query).filter((slug) => near.includes(slug))).toEqual([]);
    },
  );
});
