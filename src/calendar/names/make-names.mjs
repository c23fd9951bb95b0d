/** Writes the languages and their names of months and weekdays: see `cldr.mjs` for how to run it. */
import {
  display,
  gregorian,
  inOrder,
  isRightToLeft,
  locales,
  quoted,
  supplemental,
  writeTable,
} from "./cldr.mjs";

/**
 * Languages of Latin, Greek and Cyrillic letters that CLDR covers well (levels "modern" and "moderate" of its
 * coverageLevels.json) and that Fira Sans has every letter of; four of level "basic" (ast, fy, lb, mt); and the much used
 * ones of other letters.
 */
const LANGUAGES = `
  af ak az ba be bg br bs ca ceb cs cy da de dsb el en eo es et eu fi fil fo fr ga gd gl ha hr hsb hu ia id ig is it jv kk
  ky lt lv mi mk mn ms nb nl nn pl pt qu rm ro ru sc sk sl so sq sr sr-Latn sv sw tg tr tt uk uz vec vi wo xh yo zu
  ast fy lb mt
  ar he hi ja ko zh zh-Hant
`
  .trim()
  .split(/\s+/);

/** Of regions that have the same names, the one that their row is called by; else the first. */
const CALLED_BY = ["GB", "AT", "419", "PT", "SY"];

const MONTHS = Array.from({ length: 12 }, (_, index) => String(index + 1));
const WEEKDAYS = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];
const MONTH_FORMS = ["wide", "abbreviated", "narrow"];
const WEEKDAY_FORMS = ["wide", "abbreviated", "short", "narrow"];

const { likelySubtags } = supplemental("likelySubtags");
const { languageAlias } = supplemental("aliases").metadata.alias;

/** The names of a locale, a list of each kind, in the order of a row. */
function namesIn(tag) {
  const { months, days } = gregorian(tag);
  const listed = (names, keys) => {
    const list = keys.map((key) => names[key]);
    const odd = list.find((name) => typeof name !== "string" || /[,|"\\]/.test(name));
    if (odd !== undefined) throw new Error(`${tag}: ${odd} cannot stand in a row`);
    return list.join(",");
  };
  return [
    ...MONTH_FORMS.map((form) => listed(months["stand-alone"][form], MONTHS)),
    ...MONTH_FORMS.map((form) => listed(months.format[form], MONTHS)),
    ...WEEKDAY_FORMS.map((form) => listed(days["stand-alone"][form], WEEKDAYS)),
  ];
}

/** Which list of a row an empty one repeats, as `names.ts` reads it. */
const REPEATED = [undefined, 0, undefined, 0, 1, 2, undefined, 6, 7, undefined];

/** A row without what it would only repeat: of itself, or of its language where it is a region's. */
function rowOf(lists, language) {
  const isRepeated = (list, index) =>
    list === (language ? language[index] : lists[REPEATED[index]]);
  return lists.map((list, index) => (isRepeated(list, index) ? "" : list)).join("|");
}

/** The regions of a language that have other names than it has: one for each set of names, and which share it. */
function regionsOf(language) {
  const groups = new Map();
  const usual = namesIn(language).join("|");
  for (const tag of locales()) {
    const region = tag.startsWith(`${language}-`) ? tag.slice(language.length + 1) : "";
    if (!/^([A-Z]{2}|\d{3})$/.test(region)) continue;
    const own = namesIn(tag).join("|");
    if (own !== usual) groups.set(own, [...(groups.get(own) ?? []), tag]);
  }
  return [...groups.values()].map((tags) => {
    const preferred = CALLED_BY.map((region) => `${language}-${region}`);
    const [called = tags[0]] = preferred.filter((tag) => tags.includes(tag));
    return { tag: called, also: tags.filter((tag) => tag !== called) };
  });
}

/** What a language or a variety of it calls itself, such as `español (México)`. */
function ownName(tag) {
  const [language, ...rest] = tag.split("-");
  const name = display(tag, "languages").languages[language];
  if (rest.length === 0) return name;
  const { scripts } = display(tag, "scripts");
  const { territories } = display(tag, "territories");
  const within = rest.map((part) => scripts[part] ?? territories[part]).join(", ");
  const { localePattern } = display(tag, "localeDisplayNames").localeDisplayPattern;
  return localePattern.replace("{0}", name).replace("{1}", within);
}

/** Other tags of a language: by CLDR's aliases, or by a region that writes it in this script (zh-TW for zh-Hant). */
function otherTags(tag) {
  const [language, script] = tag.split("-");
  const aliases = Object.entries(languageAlias)
    .filter(([other, { _replacement }]) => /^[a-z]{2}$/.test(other) && _replacement === tag)
    .map(([other]) => other);
  if (tag === "nb") return [...aliases, "no"];
  if (!script) return aliases;
  const byRegion = Object.entries(likelySubtags)
    .filter(([other, full]) => full === `${language}-${script}-${other.slice(-2)}`)
    .map(([other]) => other)
    .filter((other) => other.startsWith(`${language}-`));
  return [...aliases, ...byRegion];
}

/** A language and its regions, as entries of the tables. */
function entriesOf(language) {
  const usual = namesIn(language);
  const regions = regionsOf(language);
  const regionOf = (other) =>
    regions.find(({ tag }) => tag === `${language}-${other.split("-")[1]}`);
  const others = otherTags(language);
  const script = language.split("-")[1] ?? likelySubtags[language].split("-")[1];
  const shared = { script, rtl: isRightToLeft(language) };
  const own = { tag: language, also: others.filter((other) => !regionOf(other)) };
  return [
    { ...shared, ...own, name: ownName(language), row: rowOf(usual) },
    ...regions.map((region) => ({
      ...shared,
      tag: region.tag,
      also: [...region.also, ...others.filter((other) => regionOf(other) === region)],
      name: ownName(region.tag),
      row: rowOf(namesIn(region.tag), usual),
    })),
  ];
}

const entries = LANGUAGES.flatMap(entriesOf).sort(
  (a, b) => inOrder(a.name, b.name) || inOrder(a.tag, b.tag),
);

writeTable(
  "languages.ts",
  "The languages whose names are known, by what they call themselves, in the order of a list to choose from.",
  [
    "/** A language, or a variety of it with names of its own. */",
    "export interface Language {",
    "  /** Its BCP 47 tag. */",
    "  readonly tag: string;",
    "  /** In itself. */",
    "  readonly name: string;",
    "  /** By ISO 15924; Latin where left out. */",
    "  readonly script?: string;",
    "  /** Does its text run from right to left? */",
    "  readonly rtl?: true;",
    "  /** Other tags that stand for it, with spaces between them. */",
    "  readonly also?: string;",
    "}",
    "",
    "export const LANGUAGES: readonly Language[] = [",
    ...entries.map(({ tag, name, script, rtl, also }) => {
      const parts = [
        `tag: ${quoted(tag)}, name: ${quoted(name)}`,
        ...(script === "Latn" ? [] : [`script: ${quoted(script)}`]),
        ...(rtl ? ["rtl: true"] : []),
        ...(also.length === 0 ? [] : [`also: ${quoted(also.join(" "))}`]),
      ];
      return `  { ${parts.join(", ")} },`;
    }),
    "];",
  ],
);

writeTable(
  "name-rows.ts",
  "Names of months and weekdays, a row for each language; `names.ts` says what stands where in it.",
  [
    "export const NAME_ROWS: Readonly<Record<string, string>> = {",
    ...entries.map(({ tag, row }) => {
      const key = tag.includes("-") ? quoted(tag) : tag;
      return `  ${key}: ${quoted(row)},`;
    }),
    "};",
  ],
);
