/** Writes the regions, how their weeks begin, and what they are called in English: see `cldr.mjs` for how to run it. */
import { display, inOrder, quoted, supplemental, writeTable } from "./cldr.mjs";

const { firstDay, minDays } = supplemental("weekData").weekData;
const { territoryInfo } = supplemental("territoryInfo");
const { territoryAlias } = supplemental("aliases").metadata.alias;
const { territories } = display("en", "territories");

/** ZZ stands for a region that is not known. */
const isRegion = (code) => /^([A-Z]{2}|001)$/.test(code) && code !== "ZZ";

const known = [...new Set(["001", ...Object.keys(territoryInfo), ...Object.keys(firstDay)])]
  .filter(isRegion)
  .sort();

const codesWith = (table, value) => quoted(known.filter((code) => table[code] === value).join(" "));

/** Stops where the tables could no longer say what CLDR says. */
function checkWeeks() {
  const days = new Set(known.map((code) => firstDay[code] ?? "mon"));
  const least = new Set(known.map((code) => minDays[code] ?? "1"));
  const isAsEver =
    [...days].sort().join() === "fri,mon,sat,sun" && [...least].sort().join() === "1,4";
  if (!isAsEver || firstDay["001"] !== "mon" || minDays["001"] !== "1") {
    throw new Error("CLDR's weeks have changed");
  }
}

checkWeeks();

const renamed = Object.entries(territoryAlias)
  .filter(([code, { _replacement }]) => isRegion(code) && known.includes(_replacement))
  .map(([code, { _replacement }]) => `${code}: ${quoted(_replacement)}`);

writeTable(
  "regions.ts",
  "The regions of the world, and how their weeks begin. Where none is listed: on Monday, and 1 day makes week 1.",
  [
    "/** Every region's code, 001 for the whole world. */",
    `export const REGIONS = ${quoted(known.join(" "))};`,
    "",
    `export const BEGIN_ON_SUNDAY = ${codesWith(firstDay, "sun")};`,
    `export const BEGIN_ON_SATURDAY = ${codesWith(firstDay, "sat")};`,
    `export const BEGIN_ON_FRIDAY = ${codesWith(firstDay, "fri")};`,
    "",
    "/** Where week 1 is the first with four days in the year. */",
    `export const FOUR_DAYS_IN_WEEK_ONE = ${codesWith(minDays, "4")};`,
    "",
    "/** Codes that are no longer used, or never were official, and the one to use. */",
    "export const RENAMED_REGIONS: Readonly<Record<string, string>> = {",
    `  ${renamed.join(", ")},`,
    "};",
  ],
);

const named = known
  .filter((code) => code !== "001" && territories[code])
  .sort((a, b) => inOrder(territories[a], territories[b]))
  .map((code) => `[${quoted(code)}, ${quoted(territories[code])}],`);

writeTable(
  "region-names.ts",
  "What regions are called in English, in the order of a list to choose from.",
  [
    "/** Code and name. */",
    "export const REGION_NAMES: readonly (readonly [string, string])[] = [",
    ...named.flatMap((_, index) =>
      index % 4 === 0 ? [`  ${named.slice(index, index + 4).join(" ")}`] : [],
    ),
    "];",
  ],
);
