/** What a set-up's file says, checked: which pages come next in a notebook, in which order, and for which days. */
import type { DayRange } from "../calendar/span.ts";
import type { Place } from "../issue/facts/place.ts";
import type { Reading } from "../issue/facts/reading.ts";
import type { NamedSlug } from "../source/schema/named-slugs.ts";
import type { StripRecipe } from "./strip-recipe.ts";

/** Which of the spans that lie across an end of the set-up's days are meant. */
export const BORDERS = ["both", "first", "last"] as const;
export type Borders = (typeof BORDERS)[number];

/** What a block can be repeated for, the smaller ones first. */
export const EACH_KINDS = ["day", "week", "month", "quarter"] as const;
export type EachKind = (typeof EACH_KINDS)[number];

export type SetupEntry = PatternEntry | EachEntry;

/** A pattern: a dated one for each of its spans, another one so many times. */
export interface PatternEntry {
  readonly kind: "pattern";
  readonly pattern: string;
  /** 1 where left out. */
  readonly times: number;
  readonly borders: Borders;
  /** Where the pattern's name is written, and where `times` is, if it is. */
  readonly place?: Place;
  readonly timesPlace?: Place;
}

/** Entries that come once for each unit of a kind, one unit after another. */
export interface EachEntry {
  readonly kind: "each";
  readonly each: EachKind;
  readonly borders: Borders;
  readonly pages: readonly SetupEntry[];
  /** Where the kind is written. */
  readonly place?: Place;
}

/** A checked set-up. */
export interface SetupRecipe
  extends Pick<StripRecipe, "slug" | "title" | "lanes" | "make" | "width"> {
  readonly dates: DayRange;
  /** The number of the first free page. */
  readonly first: number;
  readonly pages: readonly SetupEntry[];
  /** The pattern that goes on a page that stays free. */
  readonly fill?: string;
  readonly fillPlace?: Place;
  /** Where `dates` and `pages` are written. */
  readonly datesPlace?: Place;
  readonly pagesPlace?: Place;
  /** The Markdown text below the front matter. */
  readonly body: string;
}

/** The patterns that it names are known even where something else in it is wrong, so that both are told at once. */
export type SetupReading = Reading<SetupRecipe> & { readonly named: readonly NamedSlug[] };
