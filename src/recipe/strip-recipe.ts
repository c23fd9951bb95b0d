/** What a strip's recipe says, checked: what a strip carries and how it is made. */
import type { DayRange } from "../calendar/span.ts";
import type { Reading } from "../issue/facts/reading.ts";
import { AXES, type Axis } from "../measure/axis.ts";
import type { NamedSlug } from "../source/schema/named-slugs.ts";
import type { MarginKey, Split } from "./recipe.ts";

/** Both sides on one face, the second turned round; one sheet folded lengthwise; or two strips. */
export const MAKES = ["edges", "fold", "two"] as const;
export type Make = (typeof MAKES)[number];

/** What is said of a strip as a whole. */
export interface StripHead {
  readonly slug: string;
  readonly title: string;
  /** At most so many lanes a side. */
  readonly lanes: number;
  readonly make: Make;
  /** In millimetres. */
  readonly width: number;
}

/** A checked recipe. Where no entry says how often it is used, the most used one comes first. */
export interface StripRecipe extends StripHead, Readonly<Record<Axis, readonly StripEntry[]>> {
  /** The days for which its dated patterns are drawn; left out: none, and they are drawn for their largest case. */
  readonly dates?: DayRange;
  /** The Markdown text below the front matter. */
  readonly body: string;
}

export type StripEntry = PatternEntry | DivisionEntry;

export interface PatternEntry {
  readonly kind: "pattern";
  readonly slug: string;
  /** How often it is drawn; left out where the list does not say. */
  readonly uses?: number;
}

/** A plain division of the page, with no pattern behind it. */
export interface DivisionEntry {
  readonly kind: "division";
  readonly title: string;
  /** Made of the title: what tells it apart on the strip. */
  readonly slug: string;
  readonly split: Split;
  /** Empty steps at the two ends of the page's axis. */
  readonly margin: { readonly start: number; readonly end: number };
  readonly uses?: number;
}

/** The sides of the page at the two ends of an axis: the keys of a division's margin. */
export const END_SIDES = {
  across: ["left", "right"],
  down: ["top", "bottom"],
} as const satisfies Readonly<Record<Axis, readonly MarginKey[]>>;

/** A pattern in a list that does not say how often it is used. */
export function patternEntry(slug: string): PatternEntry {
  return { kind: "pattern", slug };
}

/** The patterns of both sides, each once, in order of first mention. */
export function patternsOf(recipe: Pick<StripRecipe, Axis>): readonly string[] {
  const slugs = AXES.flatMap((axis) =>
    recipe[axis].flatMap(({ kind, slug }) => (kind === "pattern" ? [slug] : [])),
  );
  return [...new Set(slugs)];
}

/** Does any entry say how often it is used? Then the most used runs are kept, on both sides. */
export function isByUse(recipe: Pick<StripRecipe, Axis>): boolean {
  return AXES.some((axis) => recipe[axis].some(({ uses }) => uses !== undefined));
}

/** What it names is known even where something else in it is wrong, so that both are told at once. */
export type StripReading = Reading<StripRecipe> & {
  /** Its patterns. */
  readonly named: readonly NamedSlug[];
  /** The slugs of its plain divisions, which no pattern may have. */
  readonly divisions: readonly NamedSlug[];
};
