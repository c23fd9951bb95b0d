/** When the moon is new, at its first quarter, full and at its last quarter, and on which day that is at an offset from UTC. */
import { type Day, day } from "./day.ts";
import {
  EVEN_PACE,
  EVEN_START,
  type MoonQuarter,
  phaseMoment,
  quarterOfPhase,
} from "./moon-series.ts";
import type { DayRange } from "./span.ts";

/** A phase of the moon, with its day in a place so many minutes ahead of UTC. */
export interface MoonPhase {
  readonly quarter: MoonQuarter;
  /**
   * In days since 1970-01-01T00:00 UTC, with the fraction of the day: good to a minute from 2020 to 2060, to about two from
   * 1900 to 2100. What is lacking is mostly how far the earth's own turning lags: about three hours in the year 1.
   */
  readonly moment: number;
  readonly day: Day;
}

/** The phase that the moon reaches on a day, where there is one, in a place so many minutes ahead of UTC. */
export function moonPhaseOn(of: Day, utcOffsetMinutes: number): MoonQuarter | undefined {
  return moonPhasesIn({ from: of, to: of }, utcOffsetMinutes)[0]?.quarter;
}

/** All phases of a run of days, in their order. */
export function moonPhasesIn(
  { from, to }: DayRange,
  utcOffsetMinutes: number,
): readonly MoonPhase[] {
  // The moon is less than two days ahead of an even pace or behind it, and no place's clock a whole one.
  const first = Math.floor((from - 3 - EVEN_START) / EVEN_PACE);
  const last = Math.ceil((to + 4 - EVEN_START) / EVEN_PACE);
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const number = first + index;
    const moment = phaseMoment(number) - TERRESTRIAL_AHEAD / 86_400;
    const at = day(Math.floor(moment + utcOffsetMinutes / 1440));
    return { quarter: quarterOfPhase(number), moment, day: at };
  }).filter((phase) => phase.day >= from && phase.day <= to);
}

/** Terrestrial time less UTC in seconds: 32.184, and the 37 leap seconds that there have been since 2017 (IERS, Bulletin C). */
const TERRESTRIAL_AHEAD = 69.184;
