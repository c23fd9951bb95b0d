/** Languages by their tags, and that each has all of its names. */
import { describe, expect, it } from "vitest";
import { weekday } from "../../src/calendar/day.ts";
import { findLanguage, tagOf } from "../../src/calendar/language.ts";
import { LANGUAGES } from "../../src/calendar/names/languages.ts";
import { NAME_ROWS } from "../../src/calendar/names/name-rows.ts";
import {
  MONTH_FORMS,
  monthName,
  namesOf,
  WEEKDAY_FORMS,
  weekdayName,
} from "../../src/calendar/names.ts";

describe("a tag stands for", () => {
  it.each([
    ["en", "en"],
    ["en-US", "en"],
    ["en-GB", "en-GB"],
    ["en-NZ", "en-GB"],
    ["en-AU", "en-AU"],
    ["EN-gb", "en-GB"],
    ["de-AT", "de-AT"],
    ["de-IT", "de-AT"],
    ["de-LU", "de"],
    ["de-Latn-AT", "de-AT"],
    ["de-AT-1996", "de-AT"],
    ["de-CH-u-co-phonebk", "de-CH"],
    ["es-MX", "es-MX"],
    ["es-GT", "es-419"],
    ["es-ES", "es"],
    ["pt-MZ", "pt-PT"],
    ["no", "nb"],
    ["no-NO", "nb"],
    ["iw", "he"],
    ["sr", "sr"],
    ["sr-RS", "sr"],
    ["sr-Cyrl-RS", "sr"],
    ["sr-Latn", "sr-Latn"],
    ["sr-Latn-RS", "sr-Latn"],
    ["sr-Latn-BA", "sr-Latn-BA"],
    ["sr-ME", "sr-Latn-ME"],
    ["sr-Cyrl-ME", "sr"],
    ["sh", "sr-Latn"],
    ["zh", "zh"],
    ["zh-CN", "zh"],
    ["zh-Hans-CN", "zh"],
    ["zh-Hans-TW", "zh"],
    ["zh-TW", "zh-Hant"],
    ["zh-Hant-HK", "zh-Hant"],
    ["uz", "uz"],
    ["uz-Latn-UZ", "uz"],
    ["uz-Cyrl", undefined],
    ["kk-Arab", undefined],
    ["tlh", undefined],
    ["", undefined],
    ["e", undefined],
    ["english", undefined],
    ["de_AT", undefined],
    ["de-", undefined],
    ["de--AT", undefined],
    ["constructor", undefined],
  ])("%s: %s", (tag, expected) => {
    expect(findLanguage(tag)?.tag).toBe(expected);
    expect(namesOf(tag)?.language).toBe(expected);
  });

  it.each([
    ["EN", "en"],
    ["sr-latn-rs", "sr-Latn-RS"],
    ["ES-419", "es-419"],
    ["DE-ch-1996", "de-CH-1996"],
    ["en-gb-U-CA-gregory", "en-GB-u-ca-gregory"],
  ])("%s is written %s", (tag, expected) => {
    expect(tagOf(tag)).toBe(expected);
  });
});

describe("each language", () => {
  it("has a row, and each row a language", () => {
    const tags = LANGUAGES.map(({ tag }) => tag);
    expect(Object.keys(NAME_ROWS).sort()).toEqual([...tags].sort());
    expect(new Set(tags).size).toBe(tags.length);
    expect(tags.filter((tag) => !tag.includes("-")).length).toBeGreaterThan(60);
  });

  it("has tags that no other has", () => {
    const all = LANGUAGES.flatMap(({ tag, also = "" }) => [
      tag,
      ...also.split(" ").filter((other) => other !== ""),
    ]);
    expect(new Set(all).size).toBe(all.length);
    expect(all.filter((tag) => tagOf(tag) !== tag)).toEqual([]);
  });

  it.each(LANGUAGES.map(({ tag }) => tag))("%s has all its names", (tag) => {
    const names = namesOf(tag);
    if (!names) throw new RangeError(tag);
    const lists = [
      ...MONTH_FORMS.flatMap((form) => [names.months[form], names.monthsInDate[form]]),
      ...WEEKDAY_FORMS.map((form) => names.weekdays[form]),
    ];
    expect(lists.map((list) => list.length)).toEqual([12, 12, 12, 12, 12, 12, 7, 7, 7, 7]);
    expect(lists.flat().filter((name) => name === "" || name !== name.trim())).toEqual([]);
    // Names in full tell a month or a weekday from all others.
    expect(new Set(names.months.wide).size).toBe(12);
    expect(new Set(names.monthsInDate.wide).size).toBe(12);
    expect(new Set(names.weekdays.wide).size).toBe(7);
  });

  it("repeats in a region's row what its language has", () => {
    const [austrian, german] = [namesOf("de-AT"), namesOf("de")];
    expect(austrian?.months.narrow).toEqual(german?.months.narrow);
    expect(austrian?.weekdays).toEqual(german?.weekdays);
    expect(austrian?.months.wide[0]).toBe("Jänner");
    expect(austrian?.months.wide[1]).toBe("Februar");
  });

  it("runs from right to left in Arabic and Hebrew only", () => {
    const tags = LANGUAGES.filter(({ tag }) => namesOf(tag)?.isRightToLeft).map(({ tag }) => tag);
    expect([...new Set(tags.map((tag) => tag.split("-")[0]))].sort()).toEqual(["ar", "he"]);
  });
});

describe("a name", () => {
  const polish = namesOf("pl");
  if (!polish) throw new RangeError("Polish is known");

  it("of a month differs in a date", () => {
    expect(monthName(polish, 3, { form: "wide", inDate: false })).toBe("marzec");
    expect(monthName(polish, 3, { form: "wide", inDate: true })).toBe("marca");
  });

  it("of a weekday is counted from Monday", () => {
    expect(weekdayName(polish, weekday(7), "wide")).toBe("niedziela");
    expect(weekdayName(polish, weekday(1), "short")).toBe("pon");
  });

  it("is there for months 1 to 12", () => {
    expect(() => monthName(polish, 13, { form: "wide", inDate: false })).toThrow(
      "there is no name with the number 13",
    );
  });
});
