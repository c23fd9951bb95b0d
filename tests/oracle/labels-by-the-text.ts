/** What a label of a dated pattern says with its placeholders written out, in the widest names. */
import { type Days, plainDate, type Weeks, weekAround, weekdayNumber } from "./rata-die.ts";

export interface NameLists {
  /** As they stand alone, and as they stand in a date; January first. */
  readonly months: readonly string[];
  readonly inDate: readonly string[];
  /** Monday first. */
  readonly weekdays: readonly string[];
}

const MONTHS =
  "January February March April May June July August September October November December".split(
    " ",
  );

/** Unicode CLDR 48, `ca-gregorian.json`: wide names of `en` and `pl`. */
export const NAME_LISTS: Readonly<Record<"en" | "pl", NameLists>> = {
  en: {
    months: MONTHS,
    inDate: MONTHS,
    weekdays: "Monday Tuesday Wednesday Thursday Friday Saturday Sunday".split(" "),
  },
  pl: {
    months:
      "styczeń luty marzec kwiecień maj czerwiec lipiec sierpień wrzesień październik listopad grudzień".split(
        " ",
      ),
    inDate:
      "stycznia lutego marca kwietnia maja czerwca lipca sierpnia września października listopada grudnia".split(
        " ",
      ),
    weekdays: "poniedziałek wtorek środa czwartek piątek sobota niedziela".split(" "),
  },
};

export interface LabelFacts {
  readonly days: Days;
  /** Of a track of `weekdays`. */
  readonly weekday?: number | undefined;
  readonly weeks: Weeks;
  readonly names: NameLists;
}

/** The year that a week is counted in is not one of 1 to 9999. */
export class OutsideYears extends Error {}

export function labelByTheText(label: string, { days, weekday, weeks, names }: LabelFacts): string {
  const [first, last] = [plainDate(days.from), plainDate(days.to)];
  const has = (name: string) => label.replaceAll("{{", "").includes(`{${name}}`);
  const nameOf = (month: number, isInDate: boolean) =>
    (isInDate ? names.inDate : names.months)[month - 1];
  const week = () => {
    const found = weekAround(days.from, weeks);
    if (found.year < 1 || found.year > 9999) throw new OutsideYears(label);
    return found;
  };
  const said: Readonly<Record<string, () => string | number | undefined>> = {
    day: () => first.day,
    weekday: () => names.weekdays[(weekday ?? weekdayNumber(days.from)) - 1],
    week: () => week().week,
    "week year": () => week().year,
    month: () => nameOf(first.month, has("day")),
    "month number": () => first.month,
    quarter: () => Math.ceil(first.month / 3),
    year: () => first.year,
    "last day": () => last.day,
    "last month": () => nameOf(last.month, has("last day")),
    "last year": () => last.year,
  };
  return label.replace(/\{\{|\{([^}]*)\}/g, (written, name) =>
    written === "{{" ? "{" : String(said[name]?.()),
  );
}
