/** Which days a recurrence rule allows, by its parts and by what it takes from its start (RFC 5545, 3.3.10). */
import { civilDate, type Day, dayOf, daysInMonth, isLeapYear, weekdayOf } from "../calendar/day.ts";
import { weekOf, weeksInYear } from "../calendar/week.ts";
import type { Rule, RuleWeekday } from "./rule.ts";

/** The rule with the parts written out that it takes from the day it starts on. */
export function withStart(rule: Rule, start: Day): Rule {
  const { frequency, months, weeks, yearDays, monthDays, weekdays } = rule;
  const { month, day } = civilDate(start);
  const onWeekday = { ...rule, weekdays: [{ weekday: weekdayOf(start), nth: 0 }] };
  if (weekdays.length > 0 || monthDays.length > 0 || yearDays.length > 0) return rule;
  if (frequency === "WEEKLY" || weeks.length > 0) return onWeekday;
  if (frequency === "MONTHLY") return { ...rule, monthDays: [day] };
  if (frequency !== "YEARLY") return rule;
  return { ...rule, months: months.length > 0 ? months : [month], monthDays: [day] };
}

/** Tells of a day whether the rule, with its start's parts, allows it. */
export function allowsDay(rule: Rule, of: Day): boolean {
  const { months, weeks, yearDays, monthDays, weekdays } = rule;
  const { year, month, day } = civilDate(of);
  if (months.length > 0 && !months.includes(month)) return false;
  if (monthDays.length > 0 && !counts(monthDays, day, daysInMonth(year, month))) return false;
  if (yearDays.length > 0) {
    const before = of - dayOf({ year, month: 1, day: 1 });
    if (!counts(yearDays, before + 1, isLeapYear(year) ? 366 : 365)) return false;
  }
  if (weekdays.length > 0 && !weekdays.some((one) => isSuch(one, rule, of))) return false;
  return weeks.length === 0 || isInWeeks(rule, of);
}

/** Is a number, or the same counted from the end, in the list? */
function counts(list: readonly number[], number: number, last: number): boolean {
  return list.includes(number) || list.includes(number - last - 1);
}

/** The n-th of its weekday is counted in the month, and in the year only by a yearly rule without months. */
function isSuch({ weekday, nth }: RuleWeekday, { frequency, months }: Rule, of: Day): boolean {
  if (weekdayOf(of) !== weekday) return false;
  if (nth === 0) return true;
  const { year, month, day } = civilDate(of);
  const isOfYear = frequency === "YEARLY" && months.length === 0;
  const before = isOfYear ? of - dayOf({ year, month: 1, day: 1 }) : day - 1;
  const length = isOfYear ? (isLeapYear(year) ? 366 : 365) : daysInMonth(year, month);
  return nth > 0
    ? Math.floor(before / 7) + 1 === nth
    : -Math.floor((length - 1 - before) / 7) - 1 === nth;
}

function isInWeeks({ weeks, firstWeekday }: Rule, of: Day): boolean {
  const weekRule = { firstWeekday, weekOne: 4 };
  const week = weekOf(of, weekRule);
  return week !== undefined && counts(weeks, week.number, weeksInYear(week.year, weekRule));
}
