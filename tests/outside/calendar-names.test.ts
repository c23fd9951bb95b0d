/** Names of months and weekdays beside CLDR's own, and beside the letters that our font has. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create } from "fontkit";
import { describe, expect, it } from "vitest";
import { LANGUAGES } from "../../src/calendar/names/languages.ts";
import { namesOf } from "../../src/calendar/names.ts";
import { STAND_ALONE_NAMES } from "../calendar/stand-alone-names.ts";

it("there are 26 languages to compare", () => {
  expect(STAND_ALONE_NAMES).toHaveLength(26);
});

describe("names that stand alone are CLDR 48's", () => {
  it.each(STAND_ALONE_NAMES)("%s", (language, ...lists) => {
    const names = namesOf(language);
    const { wide, abbreviated, narrow } = names?.months ?? {};
    const days = names?.weekdays;
    const found = [
      ...[wide, abbreviated, narrow],
      ...[days?.wide, days?.abbreviated, days?.short, days?.narrow],
    ];
    expect(found.map((list) => list?.join(" "))).toEqual(lists);
  });
});

/** Read in the same files, under `months.format`: a date's month, where it is another word than the month alone. */
describe("months in a date are CLDR 48's", () => {
  it.each([
    ["cs", "wide", 3, "března"],
    ["pl", "wide", 3, "marca"],
    ["fi", "wide", 3, "maaliskuuta"],
    ["el", "wide", 1, "Ιανουαρίου"],
    ["ru", "wide", 5, "мая"],
    ["ru", "abbreviated", 5, "мая"],
    ["uk", "wide", 2, "лютого"],
    ["ca", "wide", 4, "d’abril"],
    ["de", "abbreviated", 1, "Jan."],
    ["de", "abbreviated", 3, "März"],
    ["nb", "abbreviated", 1, "jan."],
    ["de-AT", "wide", 1, "Jänner"],
    ["en", "wide", 3, "March"],
    ["ja", "wide", 3, "3月"],
  ] as const)("%s, %s, month %i: %s", (language, form, month, expected) => {
    expect(namesOf(language)?.monthsInDate[form][month - 1]).toBe(expected);
  });
});

describe("Fira Sans has every letter of the names", () => {
  const require = createRequire(import.meta.url);
  const fonts = ["latin", "latin-ext", "vietnamese", "cyrillic", "cyrillic-ext", "greek"].map(
    (part) =>
      create(
        readFileSync(
          require.resolve(`@fontsource/fira-sans/files/fira-sans-${part}-400-normal.woff`),
        ),
      ),
  );
  const isDrawn = (letter: string) =>
    fonts.some(
      (font) =>
        "hasGlyphForCodePoint" in font && font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0),
    );
  const isOurs = (script = "Latn") => ["Latn", "Grek", "Cyrl"].includes(script);

  it("of Latin, Greek and Cyrillic languages", () => {
    const missing = LANGUAGES.filter(({ script }) => isOurs(script)).flatMap(({ tag, name }) => {
      const names = namesOf(tag);
      const text = JSON.stringify([name, names?.months, names?.monthsInDate, names?.weekdays]);
      return [...new Set(text)]
        .filter((letter) => !isDrawn(letter))
        .map((letter) => `${tag}: ${letter}`);
    });
    expect(missing).toEqual([]);
  });

  it("and of no others", () => {
    const others = LANGUAGES.filter(({ script }) => !isOurs(script)).map(({ tag }) => tag);
    const languages = new Set(others.map((tag) => tag.split("-")[0]));
    expect([...languages].sort()).toEqual(["ar", "he", "hi", "ja", "ko", "zh"]);
    expect(["월", "月", "ا", "ש", "म"].filter(isDrawn)).toEqual([]);
  });
});
