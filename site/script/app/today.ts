/** The day of today by the device's clock, in its own time zone: the only clock that dates are picked by. */
import { type Day, dayOf } from "../../../src/calendar/day.ts";

/** A clock that shows a year outside of the calendar counts as one in its first or last year. */
export function deviceToday(): Day {
  const now = new Date();
  const year = Math.min(Math.max(now.getFullYear(), 1), 9999);
  return dayOf({ year, month: now.getMonth() + 1, day: now.getDate() });
}
