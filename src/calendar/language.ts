/** Which of the known languages a BCP 47 tag stands for, the tag's own or one that it falls back to. */
import { LANGUAGES, type Language } from "./names/languages.ts";

/**
 * The known language of a tag, in any case of its letters. It falls back from a longer tag to a shorter one (`de-LU` to
 * `de`), but not to other letters (`uz-Cyrl` is not `uz`, which is written in Latin ones). Nothing where none is known.
 */
export function findLanguage(tag: string): Language | undefined {
  if (!isWellFormedTag(tag)) return undefined;
  const [language = "", ...rest] = tagOf(tag).split("-");
  const script = rest.find((part, index) => index === 0 && isScript(part));
  const usual = withTag(language);
  // `de-Latn-AT` is `de-AT`: these are the letters that German is usually written with.
  const isUsual = usual !== undefined && script === scriptOf(usual);
  const parts = [language, ...(isUsual ? rest.slice(1) : rest)];
  const found = parts.map((_, index) => withTag(parts.slice(0, index + 1).join("-")));
  return found.findLast((known) => known && (!script || script === scriptOf(known)));
}

/** A tag with its letters in the cases that BCP 47 recommends: `sr-Latn-RS`, but `en-u-ca-gregory`. */
export function tagOf(tag: string): string {
  const [language = "", ...rest] = tag.toLowerCase().split("-");
  const extension = rest.findIndex((part) => part.length === 1);
  const parts = rest.map((part, index) => {
    if (extension >= 0 && index > extension) return part;
    if (part.length === 2) return part.toUpperCase();
    return isScript(part) ? `${part.charAt(0).toUpperCase()}${part.slice(1)}` : part;
  });
  return [language, ...parts].join("-");
}

/** A language of two or three letters, then parts of up to eight. */
const WELL_FORMED = /^[a-z]{2,3}(-[a-z0-9]{1,8})*$/i;

/** Is it written as a tag at all, known or not? */
export function isWellFormedTag(tag: string): boolean {
  return WELL_FORMED.test(tag);
}

function withTag(tag: string): Language | undefined {
  return LANGUAGES.find((known) => known.tag === tag || known.also?.split(" ").includes(tag));
}

function scriptOf(language: Language): string {
  return language.script ?? "Latn";
}

function isScript(part: string): boolean {
  return /^[a-z]{4}$/i.test(part);
}
