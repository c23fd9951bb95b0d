/** The day of today by a device's clock, whatever that shows: midnight, 1970, the ends of the calendar. */
import { afterEach, describe, expect, it, vi } from "vitest";
import { deviceToday } from "../../site/script/app/today.ts";
import { openDevice } from "../../site/script/device/device.ts";
import { startSetup } from "../../site/script/setup/start-setup.ts";
import { isoText } from "../../src/calendar/day.ts";
import { readSetupAddress, writeSetupAddress } from "../../src/view/address/setup-address.ts";
import { setupResult } from "../../src/view/setup/setup-result.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";

const { catalogue } = await demoCatalogue();

afterEach(() => {
  vi.useRealTimers();
});

const local = (...parts: readonly [number, number, number, number?, number?, number?, number?]) => {
  const [year, month, day, ...clock] = parts;
  const date = new Date(2000, month - 1, day, ...clock);
  date.setFullYear(year, month - 1, day);
  return date;
};

describe("the day of today", () => {
  it.each([
    ["right before midnight", local(2027, 3, 27, 23, 59, 59, 999), "2027-03-27"],
    ["at midnight", local(2027, 3, 28), "2027-03-28"],
    [
      "in the hour that summer time leaves out in much of Europe",
      local(2027, 3, 28, 2, 30),
      "2027-03-28",
    ],
    ["in the hour that comes twice", local(2027, 10, 31, 2, 30), "2027-10-31"],
    ["on a leap day", local(2028, 2, 29, 12), "2028-02-29"],
    ["of a clock that lost its time", local(1970, 1, 1), "1970-01-01"],
    ["before that", local(1969, 12, 31, 23, 59), "1969-12-31"],
  ])("%s", (_, now, day) => {
    vi.useFakeTimers({ now });
    expect(isoText(deviceToday())).toBe(day);
  });

  it.each([
    ["1970", local(1970, 1, 1)],
    ["the first year", local(1, 1, 1)],
    ["the last month", local(9999, 12, 31)],
    ["a year beyond the calendar", local(12_027, 3, 5)],
    ["a year before it", local(-5, 3, 5)],
  ])("in %s begins a set-up whose address is read again", (_, now) => {
    vi.useFakeTimers({ now });
    const device = openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
    const { asked } = startSetup("", device, catalogue);
    expect(setupResult(asked, { catalogue, own: [] }).faults).toEqual([]);
    expect(readSetupAddress(writeSetupAddress(asked)).ok).toBe(true);
  });
});
