import { describe, expect, it } from "vitest";
import { readUtcOffset } from "../../src/calendar/utc-offset.ts";

/** The offsets in use are from memory: New York, Berlin, Kathmandu, Kiritimati, Baker Island. The form is RFC 3339's. */
describe("an offset from UTC", () => {
  it.each([
    ["+00:00", 0],
    ["-00:00", 0],
    ["-05:00", -300],
    ["+01:00", 60],
    ["+05:45", 345],
    ["+14:00", 840],
    ["-12:00", -720],
  ])("%s is %i minutes", (written, minutes) => {
    expect(readUtcOffset(written)).toBe(minutes);
  });

  it.each([
    "",
    "0",
    "Z",
    "1:00",
    "+1:00",
    "01:00",
    "+0100",
    "+14:01",
    "-12:01",
    "+00:60",
    "+01:00 ",
  ])("%j is none", (written) => {
    expect(readUtcOffset(written)).toBeUndefined();
  });
});
