/** How weeks begin in the regions of the world, beside CLDR's own table. */
import { describe, expect, it } from "vitest";
import { weeksIn } from "../../src/calendar/calendar.ts";
import { REGION_NAMES } from "../../src/calendar/names/region-names.ts";
import { REGIONS } from "../../src/calendar/names/regions.ts";

const ALL = REGIONS.split(" ");
const those = (has: (region: string) => boolean) => ALL.filter(has).join(" ");
const beginning = (weekday: number) => (region: string) => weeksIn(region).firstWeekday === weekday;

/** Read in cldr-core 48.2.0, `supplemental/weekData.json`, beside the script that makes our tables. */
describe("CLDR 48", () => {
  it.each([
    [
      "Sunday",
      7,
      "AG AS BD BR BS BT BW BZ CA CO DM DO ET GT GU HK HN ID IL IN IS JM JP KE KH KR LA MH MM MO MT MX MZ NI NP PA PE PH PK PR PT PY SA SG SV TH TT TW UM US VE VI WS YE ZA ZW",
    ],
    ["Saturday", 6, "AF BH DJ DZ EG IQ IR JO KW LY OM QA SD SY"],
    ["Friday", 5, "MV"],
    ["Tuesday", 2, ""],
  ])("begins weeks on %s there", (_, weekday, regions) => {
    expect(those(beginning(weekday))).toBe(regions);
  });

  it("begins them on Monday everywhere else", () => {
    expect(["001", "AE", "AU", "CN", "DE", "FR", "GB", "NZ"].filter(beginning(1))).toHaveLength(8);
    expect(ALL.filter(beginning(1))).toHaveLength(ALL.length - 56 - 14 - 1);
  });

  it("has four days in week 1 in 44 regions, one day in all others", () => {
    expect(those((region) => weeksIn(region).weekOne === 4)).toBe(
      "AD AN AT AX BE BG CH CZ DE DK EE ES FI FJ FO FR GB GF GG GI GP GR HU IE IM IS IT JE LI LT LU MC MQ NL NO PL PT RE RU SE SJ SK SM VA",
    );
    expect(ALL.filter((region) => weeksIn(region).weekOne === 1)).toHaveLength(ALL.length - 44);
  });
});

describe("the regions", () => {
  it("are those of ISO 3166-1 and a few more, each once", () => {
    expect(new Set(ALL).size).toBe(ALL.length);
    // ISO 3166-1 has 249 codes of two letters (from memory).
    expect(ALL.length).toBeGreaterThan(249);
    expect(ALL.length).toBeLessThan(265);
  });

  it("have names, but for the world and one that is no more", () => {
    const named = REGION_NAMES.map(([code]) => code);
    expect([...named].sort()).toEqual(ALL.filter((code) => code !== "001" && code !== "AN"));
    expect(REGION_NAMES.find(([code]) => code === "GB")).toEqual(["GB", "United Kingdom"]);
    expect(named[0]).toBe("AF");
    expect(named.at(-1)).toBe("ZW");
  });
});
