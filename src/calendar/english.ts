/** The names of months and weekdays in English, for books that name no language: without the table of all others. */
import type { Names } from "./names.ts";

const MONTHS = {
  wide: [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
  ],
  abbreviated: ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"],
  narrow: ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"],
};

/** As the Unicode CLDR has them for `en`; a test compares the two. */
export const ENGLISH: Names = {
  language: "en",
  isRightToLeft: false,
  months: MONTHS,
  monthsInDate: MONTHS,
  weekdays: {
    wide: ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"],
    abbreviated: ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"],
    short: ["Mo", "Tu", "We", "Th", "Fr", "Sa", "Su"],
    narrow: ["M", "T", "W", "T", "F", "S", "S"],
  },
};
