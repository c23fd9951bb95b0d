/** What each purpose is called on the site, and what it gathers. */
import type { Purpose } from "../../recipe/recipe.ts";

export const PURPOSE_WORDS: Readonly<
  Record<Purpose, { readonly title: string; readonly about: string }>
> = {
  year: { title: "Year", about: "Twelve months on one sheet, or on two." },
  quarter: { title: "Quarter", about: "Three months side by side." },
  month: { title: "Month", about: "Four to six weeks, as a grid or as a list of days." },
  week: { title: "Week", about: "Seven days, often with room for the next week." },
  day: { title: "Day", about: "One day, by the hour or by task." },
  tracker: { title: "Tracker", about: "Something small, marked day by day." },
  list: { title: "List", about: "Lines with a box, a number or columns beside them." },
  notes: { title: "Notes", about: "Room to write, with a heading or a side column." },
  reference: { title: "Reference", about: "Tables and keys to look things up in." },
  page: { title: "Page", about: "A page in plain parts, to fill as you like." },
};
