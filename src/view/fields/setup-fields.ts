/** What someone chose for a set-up of their own: its days, its first page, what comes on its pages, and how its strip is made. */
import type { DayRange } from "../../calendar/span.ts";
import type { WeekRule } from "../../calendar/week.ts";
import { spanText } from "../../calendar/write-span.ts";
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import { asSentence } from "../../issue/words/say-count.ts";
import { isLonger } from "../../recipe/read/read-days.ts";
import { setupEntrySource } from "../../recipe/setup-entry-source.ts";
import { SETUP_LIMITS } from "../../recipe/setup-keys.ts";
import type { SetupEntry, SetupRecipe } from "../../recipe/setup-recipe.ts";
import { STRIP_BOUNDS, STRIP_DEFAULTS, STRIP_TITLE } from "../../recipe/strip-bounds.ts";
import { MAKES } from "../../recipe/strip-recipe.ts";
import { rangeTitle } from "../pattern/span-words.ts";
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

/** A set-up as it is asked for: its title and its slug are "" where none was given, and it may have no pages yet. */
export type SetupChoice = SetupRecipe;

/** What is typed or picked beside the list of pages; all text. */
export interface SetupFields {
  /** "" where it has no name of its own. */
  readonly title: string;
  /** The file's name without its ending; "" to go by the title. */
  readonly slug: string;
  readonly dates: string;
  /** The number of the first free page. */
  readonly first: string;
  /** The pattern on pages that stay free; "" for none. */
  readonly fill: string;
  readonly lanes: string;
  readonly make: string;
  /** Of the strip, in mm. */
  readonly width: string;
}

export type SetupFieldName = keyof SetupFields;

export const SETUP_FIELD_NAMES = [
  "title",
  "slug",
  "dates",
  "first",
  "fill",
  "lanes",
  "make",
  "width",
] as const;

/** The fields that read as this set-up. */
export function setupFieldsOf(setup: SetupChoice): SetupFields {
  const { title, slug, dates, first, fill = "", lanes, make, width } = setup;
  const numbers = { first: `${first}`, lanes: `${lanes}`, width: `${width}` };
  return { title, slug, dates: spanText(dates), fill, make, ...numbers };
}

/** A set-up for some days that draws nothing yet. */
export function blankSetup(dates: DayRange): SetupChoice {
  return { title: "", slug: "", dates, first: 1, pages: [], ...STRIP_DEFAULTS, body: "" };
}

/** The checked choice, or every problem with its field. Whether there is such a pattern to fill with is not known here. */
export function readSetupFields(
  fields: SetupFields,
  pages: readonly SetupEntry[],
): FieldReading<SetupChoice, SetupFieldName> {
  const issues: FieldIssue<SetupFieldName>[] = [];
  const note = (issue: FieldIssue<SetupFieldName>) => issues.push(issue);
  const at = <F extends SetupFieldName>(field: F) => ({ field, text: fields[field], note });
  const title = takeTextField({ ...at("title"), expected: STRIP_TITLE }) ?? "";
  const slug = takeSlugField(at("slug"));
  const dates = takeDays(fields.dates, note);
  const first = takeWholeField({ ...at("first"), expected: FIRST });
  const fill = takeSlugField(at("fill"));
  const lanes = takeWholeField({ ...at("lanes"), expected: LANES });
  const make = takeChoiceField({ ...at("make"), allowed: MAKES });
  const width = takeMmField({ ...at("width"), expected: WIDTH });
  const isWhole = dates && first !== undefined && lanes !== undefined && make;
  if (issues.length > 0 || !isWhole || width === undefined) return { ok: false, issues };
  const filling = fill === "" ? {} : { fill };
  return {
    ok: true,
    value: { title, slug, dates, first, pages, ...filling, lanes, make, width, body: "" },
  };
}

const FIRST = { kind: "whole", unit: "pages", ...SETUP_LIMITS.first } as const;
const LANES = { kind: "whole", unit: "lanes", ...STRIP_BOUNDS.lanes } as const;
const WIDTH = { kind: "millimetres", ...STRIP_BOUNDS.width } as const;

function takeDays(text: string, note: (issue: FieldIssue<"dates">) => void): DayRange | undefined {
  const reading = readDatesField(text);
  if (!reading.ok) for (const issue of reading.issues) note(issue);
  else if (!reading.value) note({ field: "dates", kind: "no-span" });
  if (!reading.ok || !reading.value) return undefined;
  const limit = SETUP_LIMITS.years;
  if (isLonger(reading.value, limit)) note({ field: "dates", kind: "too-many-years", limit });
  const { from, to } = reading.value;
  return { from, to };
}

/** The set-up with its names: without one of its own it is called by its days, unless it is one of the book's. */
export function nameSetup(
  choice: SetupChoice,
  known: readonly SetupRecipe[],
  rule: WeekRule,
): SetupChoice {
  const usualTitle = asSentence(rangeTitle(choice.dates, rule));
  return nameOwn(choice, known, { isSame, usualTitle, fallback: "set-up" });
}

function isSame(one: SetupChoice, two: SetupChoice): boolean {
  const words = (setup: SetupChoice) => {
    const { title: _, slug: __, ...fields } = setupFieldsOf(setup);
    return JSON.stringify([fields, setup.pages.map(setupEntrySource)]);
  };
  return words(one) === words(two);
}
