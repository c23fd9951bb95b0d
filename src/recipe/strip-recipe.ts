/** What a strip's recipe says, checked: which patterns a strip carries and how it is made. */
import type { Reading } from "../issue/facts/reading.ts";
import type { NamedSlug } from "../source/schema/named-slugs.ts";

/** Both sides on one face, the second turned round; one sheet folded lengthwise; or two strips. */
export const MAKES = ["edges", "fold", "two"] as const;
export type Make = (typeof MAKES)[number];

/** A checked recipe. Patterns are slugs, most used first. */
export interface StripRecipe {
  readonly slug: string;
  readonly title: string;
  readonly across: readonly string[];
  readonly down: readonly string[];
  /** At most so many lanes a side. */
  readonly lanes: number;
  readonly make: Make;
  /** In millimetres. */
  readonly width: number;
  /** The Markdown text below the front matter. */
  readonly body: string;
}

/** The patterns that it names are known even where something else in it is wrong, so that both are told at once. */
export type StripReading = Reading<StripRecipe> & { readonly named: readonly NamedSlug[] };
