/** Which pages of which set-ups are drawn, as the device keeps it: a line for each set-up on a notebook. */

import { spanText } from "../../calendar/write-span.ts";
import type { SetupRecipe } from "../../recipe/setup-recipe.ts";

/**
 * What a set-up of one's own is called among the ticks: `own/2027-03/43`. Its days and its first page are where it lies
 * in the notebook; its name may change meanwhile.
 */
export function ownTicksName({ dates, first }: Pick<SetupRecipe, "dates" | "first">): string {
  return `own/${spanText(dates)}/${first}`;
}

/** The numbers of the drawn pages of one set-up, such as `march-on-the-lane/a5`. */
export function ticksOf(kept: string, setup: string): ReadonlySet<number> {
  const [, ...numbers] = linesOf(kept).find(([name]) => name === setup) ?? [];
  return new Set(numbers.map(Number).filter((number) => Number.isInteger(number)));
}

/** What is kept then: the lines of other set-ups stay. */
export function withTicks(kept: string, setup: string, drawn: Iterable<number>): string {
  const others = linesOf(kept).filter(([name]) => name !== setup);
  const numbers = [...drawn].toSorted((a, b) => a - b);
  const own = numbers.length > 0 ? [[setup, ...numbers]] : [];
  return [...others, ...own].map((line) => line.join(" ")).join("\n");
}

function linesOf(kept: string): readonly (readonly string[])[] {
  return kept
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => line.split(" "));
}
