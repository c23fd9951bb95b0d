/** What a strip's recipe says, checked: which patterns a strip carries and how it is made. */
import type { Axis } from "../measure/axis.ts";
import type { Place } from "../problem/place.ts";

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
  /** Where each pattern is named, in the order of the two lists; a strip that nobody wrote has none. */
  readonly places?: Readonly<Record<Axis, readonly Place[]>>;
}
