/** The set-up that follows another one: the same pages for the next days, on the next free page. */
import { civilDate, type Day, day, dayOf, isWithinYears } from "../calendar/day.ts";
import { type DayRange, isBeyondYears, spanHolding } from "../calendar/span.ts";
import { ISO_WEEKS } from "../calendar/week.ts";
import { SETUP_LIMITS } from "../recipe/setup-keys.ts";
import type { SetupRecipe } from "../recipe/setup-recipe.ts";

/**
 * The one after a set-up of so many pages, without a name of its own, since the old one may say the old days; nothing where the calendar, or the
 * numbers of pages, end.
 */
export function nextSetup(recipe: SetupRecipe, pages: number): SetupRecipe | undefined {
  const dates = daysBeside(recipe.dates, 1);
  const first = recipe.first + pages;
  if (!dates || first > SETUP_LIMITS.first.max) return undefined;
  return { ...recipe, title: "", slug: "", body: "", dates, first };
}

/** Days of the same kind so many times later: whole months for whole months, else as many days; nothing beyond the calendar. */
export function daysBeside(dates: DayRange, by: number): DayRange | undefined {
  const months = wholeMonths(dates);
  const length = dates.to - dates.from + 1;
  const from = months === 0 ? day(dates.from + by * length) : monthsLater(dates.from, by * months);
  const to = months === 0 ? day(dates.to + by * length) : day(monthsLater(from, months) - 1);
  return isWithinYears(from) && isWithinYears(to) ? { from, to } : undefined;
}

/** How many whole months some days are; 0 where they are none. */
function wholeMonths({ from, to }: DayRange): number {
  const last = spanHolding("month", to, ISO_WEEKS);
  const [start, end] = [civilDate(from), civilDate(to)];
  if (start.day !== 1 || isBeyondYears(last) || last.to !== to) return 0;
  return (end.year - start.year) * 12 + end.month - start.month + 1;
}

/** The first of the month so many months after one that begins on a day. */
function monthsLater(from: Day, by: number): Day {
  const { year, month } = civilDate(from);
  const count = year * 12 + month - 1 + by;
  return dayOf({ year: Math.floor(count / 12), month: (((count % 12) + 12) % 12) + 1, day: 1 });
}
