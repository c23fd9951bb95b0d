/** What someone chose for their strip: the patterns in their order of use, and how it is made. */
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import { AXES, type Axis } from "../../measure/axis.ts";
import { STRIP_BOUNDS, STRIP_DEFAULTS, STRIP_TITLE } from "../../recipe/strip-bounds.ts";
import {
  isByUse,
  MAKES,
  patternEntry,
  type StripHead,
  type StripRecipe,
} from "../../recipe/strip-recipe.ts";
import { nameOwn } from "./name-own.ts";
import type { FieldReading } from "./read-notebook-fields.ts";
import {
  takeChoiceField,
  takeMmField,
  takeSlugField,
  takeTextField,
  takeWholeField,
} from "./take-fields.ts";

/** Slugs of patterns by side, most used first. */
export type StripLists = Readonly<Record<Axis, readonly string[]>>;

/** What is typed or picked beside the two lists; all text. */
export interface StripFields {
  /** "" where it has no name of its own. */
  readonly title: string;
  /** The file's name without its ending; "" to go by the title. */
  readonly slug: string;
  readonly lanes: string;
  readonly make: string;
  /** In mm. */
  readonly width: string;
}

export type StripFieldName = keyof StripFields;

/** A strip of patterns alone as it is asked for: its title and its slug are "" where none was given. */
export interface StripChoice extends StripHead, StripLists {
  readonly body: string;
}

/** Has it nothing but patterns, on no days, in their order, so that it can be a choice? */
export function isListOfPatterns(recipe: StripRecipe): boolean {
  const isPlain = AXES.every((axis) => recipe[axis].every(({ kind }) => kind === "pattern"));
  return isPlain && !recipe.dates && !isByUse(recipe);
}

/** A strip's patterns and how it is made. */
export function choiceOfStrip({
  slug,
  title,
  lanes,
  make,
  width,
  body,
  ...sides
}: StripRecipe): StripChoice {
  const slugs = (axis: Axis) =>
    sides[axis].flatMap((entry) => (entry.kind === "pattern" ? [entry.slug] : []));
  return { slug, title, lanes, make, width, body, across: slugs("across"), down: slugs("down") };
}

/** The recipe that a choice is. */
export function stripOfChoice(choice: StripChoice): StripRecipe {
  return {
    ...choice,
    across: choice.across.map(patternEntry),
    down: choice.down.map(patternEntry),
  };
}

/** The fields that read as this strip. */
export function stripFieldsOf({ title, slug, lanes, make, width }: StripChoice): StripFields {
  return { title, slug, lanes: `${lanes}`, make, width: `${width}` };
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
  const lanes = takeWholeField({ ...at("lanes"), expected: LANES });
  const make = takeChoiceField({ ...at("make"), allowed: MAKES });
  const width = takeMmField({ ...at("width"), expected: WIDTH });
  if (issues.length > 0 || lanes === undefined || !make || width === undefined)
    return { ok: false, issues };
  return { ok: true, value: { title, slug, across, down, lanes, make, width, body: "" } };
}

const LANES = { kind: "whole", unit: "lanes", ...STRIP_BOUNDS.lanes } as const;
const WIDTH = { kind: "millimetres", ...STRIP_BOUNDS.width } as const;

/** The strip with its names: where it is none of the book's and has no name of its own, it is just somebody's strip. */
export function nameStrip(choice: StripChoice, known: readonly StripRecipe[]): StripChoice {
  return nameOwn(choice, known.map(choiceOfStrip), {
    isSame,
    usualTitle: "My strip",
    fallback: "strip",
  });
}

function isSame(one: StripChoice, two: StripChoice): boolean {
  const words = ({ across, down, lanes, make, width }: StripChoice) =>
    JSON.stringify([across, down, lanes, make, width]);
  return words(one) === words(two);
}
