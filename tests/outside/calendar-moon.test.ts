/** The moon's quarters beside the worked examples of the method, and beside tables that others printed. */
import { describe, expect, it } from "vitest";
import { day, dayOf } from "../../src/calendar/day.ts";
import { moonPhaseOn, moonPhasesIn } from "../../src/calendar/moon.ts";
import {
  EVEN_PACE,
  EVEN_START,
  phaseMoment,
  quarterOfPhase,
} from "../../src/calendar/moon-series.ts";
import { date } from "../calendar/dates.ts";
import { MOON_DAYS } from "../calendar/moon-days.ts";

const yearOf = (year: number) => ({
  from: dayOf({ year, month: 1, day: 1 }),
  to: dayOf({ year, month: 12, day: 31 }),
});

/** Jean Meeus, Astronomical Algorithms, examples 49.a and 49.b: Julian days of dynamical time. */
describe("the method's own examples", () => {
  it.each([
    ["new moon of February 1977", "new", 2443192.65118],
    ["last quarter of January 2044", "last", 2467636.49186],
  ])("%s", (_, quarter, julianDay) => {
    const number = Math.round((julianDay - 2440587.5 - EVEN_START) / EVEN_PACE);
    expect(quarterOfPhase(number)).toBe(quarter);
    // To the five decimals that the book prints: 0.4 seconds.
    expect(phaseMoment(number) + 2440587.5).toBeCloseTo(julianDay, 5);
  });
});

/** The phases of 2026 as astronomy-engine 2.1.19 prints them: UTC, cut to the minute. N new, 1 and 3 quarters, F full. */
const PHASES_OF_2026 =
  "F 01-03T10:03 · 3 01-10T15:49 · N 01-18T19:52 · 1 01-26T04:47 · F 02-01T22:09 · 3 02-09T12:43 · N 02-17T12:01 · 1 02-24T12:28 · F 03-03T11:38 · 3 03-11T09:39 · N 03-19T01:24 · 1 03-25T19:18 · F 04-02T02:12 · 3 04-10T04:52 · N 04-17T11:52 · 1 04-24T02:32 · F 05-01T17:23 · 3 05-09T21:11 · N 05-16T20:01 · 1 05-23T11:11 · F 05-31T08:45 · 3 06-08T10:00 · N 06-15T02:54 · 1 06-21T21:55 · F 06-29T23:57 · 3 07-07T19:29 · N 07-14T09:44 · 1 07-21T11:06 · F 07-29T14:36 · 3 08-06T02:21 · N 08-12T17:37 · 1 08-20T02:46 · F 08-28T04:19 · 3 09-04T07:51 · N 09-11T03:27 · 1 09-18T20:44 · F 09-26T16:49 · 3 10-03T13:25 · N 10-10T15:50 · 1 10-18T16:13 · F 10-26T04:12 · 3 11-01T20:28 · N 11-09T07:02 · 1 11-17T11:48 · F 11-24T14:54 · 3 12-01T06:09 · N 12-09T00:52 · 1 12-17T05:43 · F 12-24T01:28 · 3 12-30T19:00".split(
    " · ",
  );
const SIGNS = { new: "N", first: "1", full: "F", last: "3" };

describe("the phases of 2026", () => {
  const found = moonPhasesIn(yearOf(2026), 0);

  it("come in the printed order", () => {
    const printed = PHASES_OF_2026.map((text) => text.split(" ")[0]);
    expect(found.map(({ quarter }) => SIGNS[quarter])).toEqual(printed);
  });

  it("come within a minute and a half of the printed minute", () => {
    const wrong = PHASES_OF_2026.filter((text, index) => {
      const [, month, ofMonth, hour, minute] = /(\d\d)-(\d\d)T(\d\d):(\d\d)/.exec(text) ?? [];
      const at = date(`2026-${month}-${ofMonth}`) * 1440 + Number(hour) * 60 + Number(minute);
      // The middle of the minute that was cut off.
      return Math.abs((found[index]?.moment ?? 0) * 1440 - at - 0.5) > 1.5;
    });
    expect(wrong).toEqual([]);
  });
});

describe("the days of the quarters, in UTC", () => {
  it.each(MOON_DAYS)("of %i begin with %s", (year, first, days) => {
    const found = moonPhasesIn(yearOf(year), 0);
    expect(found.map((phase) => phase.day - yearOf(year).from + 1).join(" ")).toBe(days);
    expect(found[0]?.quarter).toBe(first);
  });

  /** The United States Naval Observatory's tables, as the repository cosinekitty/astronomy keeps them (moonphases.txt). */
  it.each([
    ["2090-12-21", "new"],
    ["2100-01-26", "full"],
    ["2100-12-16", "full"],
  ])("%s: %s", (of, quarter) => {
    expect(moonPhaseOn(date(of), 0)).toBe(quarter);
  });

  /** Counted in what astronomy-engine 2.1.19 prints. */
  it("are 13 full moons of 2026, 2028 and 2031, else 12, from 2024 to 2032", () => {
    const counts = Array.from({ length: 9 }, (_, index) => {
      const phases = moonPhasesIn(yearOf(2024 + index), 0);
      return phases.filter(({ quarter }) => quarter === "full").length;
    });
    expect(counts).toEqual([12, 12, 13, 12, 13, 12, 12, 13, 12]);
  });

  it.each([
    ["2026-05-01", "2026-05-31"],
    ["2028-12-02", "2028-12-31"],
    ["2031-09-01", "2031-09-30"],
  ])("two full moons in one month: %s and %s", (...days) => {
    expect(days.map((of) => moonPhaseOn(date(of), 0))).toEqual(["full", "full"]);
  });
});

describe("a phase has its day by the offset from UTC", () => {
  /** 2026-06-29T23:57 UTC. */
  it.each([
    [0, "2026-06-29"],
    [60, "2026-06-30"],
    [120, "2026-06-30"],
    [-720, "2026-06-29"],
    [840, "2026-06-30"],
  ])("%i minutes ahead: %s", (offset, of) => {
    const around = ["2026-06-28", "2026-06-29", "2026-06-30", "2026-07-01"];
    const days = around.filter((each) => moonPhaseOn(date(each), offset) === "full");
    expect(days).toEqual([of]);
  });

  it("whichever days are asked for, each phase comes once", () => {
    for (const offset of [-720, 0, 840]) {
      const { from, to } = yearOf(2026);
      const whole = moonPhasesIn({ from, to }, offset);
      const single = Array.from({ length: 365 }, (_, index) => day(from + index)).flatMap((of) =>
        moonPhasesIn({ from: of, to: of }, offset),
      );
      expect(single).toEqual(whole);
    }
  });
});

it("keeps an even pace to less than two days in all years, so that no phase is missed", () => {
  const years = [1, 500, 1000, 1500, 2000, 3000, 5000, 9999];
  const counts = years.map((year) => moonPhasesIn(yearOf(year), 0).length);
  // 365.2425 days are 49.47 quarters of a mean month.
  expect(counts.filter((count) => count < 49 || count > 50)).toEqual([]);
  const numbers = Array.from({ length: 11_300 }, (_, index) => index * 45 - 99_000);
  const off = numbers.map((n) => Math.abs(phaseMoment(n) - EVEN_START - EVEN_PACE * n));
  expect(Math.max(...off)).toBeLessThan(2);
});
