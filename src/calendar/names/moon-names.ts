/** What the moon's phases are called on the day that it reaches them: in English, for the CLDR has no names of them. */
import type { Day } from "../day.ts";
import { moonPhaseOn } from "../moon.ts";
import type { MoonQuarter } from "../moon-series.ts";
import type { MonthForm } from "../names.ts";

/** A phase's name in as many forms as a month's has, the longer ones first. */
export type MoonName = Readonly<Record<MonthForm, string>>;

/** The name of the phase that the moon reaches on a day, where it reaches one. */
export type MoonOn = (of: Day) => MoonName | undefined;

/** The moon in a place whose clock is always so many minutes ahead of UTC. */
export function moonAt(utcOffsetMinutes: number): MoonOn {
  return (of) => {
    const quarter = moonPhaseOn(of, utcOffsetMinutes);
    return quarter && NAMES[quarter];
  };
}

/** The narrow ones are those that almanacs print in their tables (common practice, no source). */
const NAMES: Readonly<Record<MoonQuarter, MoonName>> = {
  new: { wide: "New moon", abbreviated: "New", narrow: "NM" },
  first: { wide: "First quarter", abbreviated: "First", narrow: "FQ" },
  full: { wide: "Full moon", abbreviated: "Full", narrow: "FM" },
  last: { wide: "Last quarter", abbreviated: "Last", narrow: "LQ" },
};
