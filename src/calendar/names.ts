/** What months and weekdays are called in a language, in their longer and shorter forms. */

import type { Weekday } from "./day.ts";
import { findLanguage } from "./language.ts";
import { NAME_ROWS } from "./names/name-rows.ts";

/** Forms of a month's name, the longer ones first. */
export const MONTH_FORMS = ["wide", "abbreviated", "narrow"] as const;
export type MonthForm = (typeof MONTH_FORMS)[number];

/** Forms of a weekday's name, the longer ones first. */
export const WEEKDAY_FORMS = ["wide", "abbreviated", "short", "narrow"] as const;
export type WeekdayForm = (typeof WEEKDAY_FORMS)[number];

/** All names of one language, as plain data. */
export interface Names {
  /** The BCP 47 tag that they are kept by: the one asked for, or one that it falls back to. */
  readonly language: string;
  /** Does its text run from right to left? */
  readonly isRightToLeft: boolean;
  /** January first, as a heading has them. */
  readonly months: Readonly<Record<MonthForm, readonly string[]>>;
  /** January first, as a date with its day has them (`5 marca`, where the month alone is `marzec`). */
  readonly monthsInDate: Readonly<Record<MonthForm, readonly string[]>>;
  /** Monday first, as a heading has them. */
  readonly weekdays: Readonly<Record<WeekdayForm, readonly string[]>>;
}

/** The names of a language by its BCP 47 tag; nothing where neither it nor what it falls back to is known. */
export function namesOf(tag: string): Names | undefined {
  const language = findLanguage(tag);
  if (!language) return undefined;
  const lists = listsOf(language.tag).map((list) => list.split(","));
  const at = (index: number): readonly string[] => lists[index] ?? [];
  return {
    language: language.tag,
    isRightToLeft: language.rtl === true,
    months: { wide: at(0), abbreviated: at(1), narrow: at(2) },
    monthsInDate: { wide: at(3), abbreviated: at(4), narrow: at(5) },
    weekdays: { wide: at(6), abbreviated: at(7), short: at(8), narrow: at(9) },
  };
}

/** A month's name; month 1 is January. */
export function monthName(
  names: Names,
  month: number,
  { form, inDate }: { readonly form: MonthForm; readonly inDate: boolean },
): string {
  return named((inDate ? names.monthsInDate : names.months)[form], month);
}

/** A weekday's name. */
export function weekdayName(names: Names, weekday: Weekday, form: WeekdayForm): string {
  return named(names.weekdays[form], weekday);
}

function named(list: readonly string[], number: number): string {
  const name = list[number - 1];
  if (name === undefined) throw new RangeError(`there is no name with the number ${number}`);
  return name;
}

/**
 * The ten lists of a row: months alone, months in a date, weekdays, each in their forms. An empty one repeats what
 * `REPEATED` says, and in the row of a region what its language has.
 */
function listsOf(tag: string): readonly string[] {
  const lists = (NAME_ROWS[tag] ?? "").split("|");
  const usual = REGIONAL.test(tag) ? listsOf(tag.replace(REGIONAL, "")) : undefined;
  const full: string[] = [];
  lists.forEach((list, index) => {
    full.push(list || (usual ? usual[index] : full[REPEATED[index] ?? -1]) || "");
  });
  return full;
}

const REGIONAL = /-([A-Z]{2}|\d{3})$/;

/** Weekdays of one form less, and months in a date like those that stand alone. */
const REPEATED: readonly (number | undefined)[] = [
  undefined,
  0,
  undefined,
  0,
  1,
  2,
  undefined,
  6,
  7,
  undefined,
];
