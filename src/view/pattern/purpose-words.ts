/** What each purpose is called on the site, and what it gathers. */
import type { Purpose } from "../../recipe/recipe.ts";

export const PURPOSE_WORDS: Readonly<
  Record<Purpose, { readonly title: string; readonly about: string }>
> = {
  year: { title: "Year", about: "Twelve months on one sheet, or on two." },
  quarter: { title: "Quarter", about: "Three months side by side." },
  month: { title: "Month", about: "Four to six weeks, as a grid or as a list of days." },
  week: { title: "Week", about: "Seven days, and often a place for what comes after." },
  day: { title: "Day", about: "One day by the hour, or by what it is made of." },
  tracker: { title: "Tracker", about: "The same small thing, marked again and again." },
  list: { title: "List", about: "Lines with something in front of them or behind." },
  notes: { title: "Notes", about: "Room to write, with a little order in it." },
  reference: { title: "Reference", about: "What is looked up more often than it is changed." },
  page: { title: "Page", about: "The bare division of a page, to be filled as you like." },
};
