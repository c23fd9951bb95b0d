/**
 * Reads packages of the Unicode CLDR for the scripts beside it, and writes what they make of them. The packages are too
 * large to keep in the project; get them in some other folder and say where they are:
 *
 *   npm install cldr-core@48.2.0 cldr-dates-full@48.2.0 cldr-localenames-full@48.2.0 cldr-misc-full@48.2.0
 *   node src/calendar/names/make-names.mjs THAT_FOLDER/node_modules
 *   node src/calendar/names/make-regions.mjs THAT_FOLDER/node_modules
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const FOLDER = process.argv[2];
if (!FOLDER) throw new Error("Say where the CLDR packages are, as cldr.mjs shows");

const read = (path) => JSON.parse(readFileSync(join(FOLDER, path), "utf8"));

/** What holds for all locales. */
export const supplemental = (name) => read(`cldr-core/supplemental/${name}.json`).supplemental;

/** All locales. */
export const locales = () => readdirSync(join(FOLDER, "cldr-dates-full/main"));

/** What a locale calls languages, scripts or territories. */
export const display = (tag, name) =>
  read(`cldr-localenames-full/main/${tag}/${name}.json`).main[tag].localeDisplayNames;

export const gregorian = (tag) =>
  read(`cldr-dates-full/main/${tag}/ca-gregorian.json`).main[tag].dates.calendars.gregorian;

export const isRightToLeft = (tag) =>
  read(`cldr-misc-full/main/${tag}/layout.json`).main[tag].layout.orientation.characterOrder ===
  "right-to-left";

/** The tables are put into an order once, here: not by each machine that reads them. */
export const inOrder = new Intl.Collator("en").compare;

export const quoted = (value) => JSON.stringify(value);

const { version } = read("cldr-core/package.json");

/** Writes a table, and the licence beside it. The formatter leaves its lines alone. */
export function writeTable(name, says, lines) {
  const head = [
    `/** ${says}`,
    ` * Made from CLDR ${version} by a script beside it; Unicode License V3, see LICENSE. */`,
    "// biome-ignore-all format: one line for each entry, as its script writes it",
    "",
  ];
  writeFileSync(new URL(name, import.meta.url), `${[...head, ...lines].join("\n")}\n`);
  const licence = readFileSync(join(FOLDER, "cldr-core/LICENSE"));
  writeFileSync(new URL("LICENSE", import.meta.url), licence);
}
