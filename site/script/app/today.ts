/** The day of today by the device's clock, in its own time zone: the only clock that dates are picked by. */
import { type Day, dayOf } from "../../../src/calendar/day.ts";

export function deviceToday(): Day {
  const now = new Date();
  return dayOf({ year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() });
}
