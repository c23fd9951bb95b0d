/** What someone chose for their strip: what it carries, for which days, and how it is made. */
import { spanText } from "../../calendar/write-span.ts";
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import { AXES } from "../../measure/axis.ts";
import { isLonger } from "../../recipe/read/read-days.ts";
import { STRIP_BOUNDS, STRIP_DEFAULTS, STRIP_TITLE } from "../../recipe/strip-bounds.ts";
import { entrySource } from "../../recipe/strip-entry-source.ts";
import { MAKES, type StripEntry, type StripRecipe } from "../../recipe/strip-recipe.ts";
import { plainSlug } from "../../source/slug.ts";
import { nameOwn } from "./name-own.ts";
import type { FieldReading } from "./read-notebook-fields.ts";
import { readDatesField } from "./span-fields.ts";
import {
  takeChoiceField,
  takeMmField,
  takeSlugField,
  takeTextField,
  takeWholeField,
} from "./take-fields.ts";

/** A strip as it is asked for: its title and its slug are "" where none was given. */
export type StripChoice = StripRecipe;

/** What lies on each side. */
export type StripLists = Pick<StripRecipe, "across" | "down">;

/** What is typed or picked beside the two lists; all text. */
export interface StripFields {
  /** "" where it has no name of its own. */
  readonly title: string;
  /** The file's name without its ending; "" to go by the title. */
  readonly slug: string;
  /** "" for none. */
  readonly dates: string;
  readonly lanes: string;
  readonly make: string;
  /** In mm. */
  readonly width: string;
}

export type StripFieldName = keyof StripFields;

export const STRIP_FIELD_NAMES = ["title", "slug", "dates", "lanes", "make", "width"] as const;

/** The fields that read as this strip. */
export function stripFieldsOf({
  title,
  slug,
  dates,
  lanes,
  make,
  width,
}: StripChoice): StripFields {
  const days = dates ? spanText(dates) : "";
  return { title, slug, dates: days, lanes: `${lanes}`, make, width: `${width}` };
}

/** A strip that carries nothing yet. */
export const NO_STRIP: StripChoice = {
  title: "",
  slug: "",
  across: [],
  down: [],
  ...STRIP_DEFAULTS,
  body: "",
};

export const USUAL_STRIP_FIELDS = stripFieldsOf(NO_STRIP);

/** The checked choice, or every problem with its field. The title is "" where none was given. */
export function readStripFields(
  fields: StripFields,
  { across, down }: StripLists,
): FieldReading<StripChoice, StripFieldName> {
  const issues: FieldIssue<StripFieldName>[] = [];
  const note = (issue: FieldIssue<StripFieldName>) => issues.push(issue);
  const at = <F extends StripFieldName>(field: F) => ({ field, text: fields[field], note });
  const title = takeTextField({ ...at("title"), expected: STRIP_TITLE }) ?? "";
  const slug = takeSlugField(at("slug"));
  const dates = takeDates(fields.dates, note);
  const lanes = takeWholeField({ ...at("lanes"), expected: LANES });
  const make = takeChoiceField({ ...at("make"), allowed: MAKES });
  const width = takeMmField({ ...at("width"), expected: WIDTH });
  if (issues.length > 0 || lanes === undefined || !make || width === undefined)
    return { ok: false, issues };
  const days = dates ? { dates } : {};
  return { ok: true, value: { title, slug, across, down, ...days, lanes, make, width, body: "" } };
}

const LANES = { kind: "whole", unit: "lanes", ...STRIP_BOUNDS.lanes } as const;
const WIDTH = { kind: "millimetres", ...STRIP_BOUNDS.width } as const;

function takeDates(text: string, note: (issue: FieldIssue<"dates">) => void) {
  const reading = readDatesField(text);
  if (!reading.ok) for (const issue of reading.issues) note(issue);
  if (!reading.ok || !reading.value) return undefined;
  const limit = STRIP_BOUNDS.years;
  if (isLonger(reading.value, limit)) note({ field: "dates", kind: "too-many-years", limit });
  // A month that was typed is no more than its days.
  const { from, to } = reading.value;
  return { from, to };
}

/** The uses that someone typed for an entry: nothing for an empty field, or what is wrong with it. */
export function readUsesField(text: string): FieldReading<number | undefined, "uses"> {
  if (text.trim() === "") return { ok: true, value: undefined };
  const issues: FieldIssue<"uses">[] = [];
  const note = (issue: FieldIssue<"uses">) => issues.push(issue);
  const value = takeWholeField({ field: "uses", text, expected: USES, note });
  return value === undefined ? { ok: false, issues } : { ok: true, value };
}

const USES = { kind: "whole", unit: "uses", ...STRIP_BOUNDS.uses } as const;

/** The strip with its names: where it is none of the book's and has no name of its own, it is just somebody's strip. */
export function nameStrip(choice: StripChoice, known: readonly StripRecipe[]): StripChoice {
  return nameOwn(choice, known, { isSame, usualTitle: "My strip", fallback: "strip" });
}

function isSame(one: StripChoice, two: StripChoice): boolean {
  const words = (choice: StripChoice) => {
    const { dates, lanes, make, width } = stripFieldsOf(choice);
    const lists = AXES.map((axis) => choice[axis].map((entry) => entrySource(entry, axis)));
    return JSON.stringify([lists, dates, lanes, make, width]);
  };
  return words(one) === words(two);
}

/** The entry; a plain division that is called as a pattern is has a word before its title. */
export function withFreeTitle(entry: StripEntry, patterns: ReadonlySet<string>): StripEntry {
  if (entry.kind === "pattern" || !patterns.has(entry.slug)) return entry;
  const title = `Plain ${entry.title}`;
  return { ...entry, title, slug: plainSlug(title) };
}
