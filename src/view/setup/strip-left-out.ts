/** What the strip of a set-up had to leave out. */
import { sayLeftOut } from "../../issue/words/say-strip-note.ts";
import type { Strip } from "../../strip/strip.ts";
import type { LeftOutLine } from "./setup-view.ts";

/** A line for each, said once. */
export function stripLeftOutLines({ sides, patterns }: Strip): readonly LeftOutLine[] {
  const titleOf = (slug: string) => patterns.find((one) => one.slug === slug)?.title ?? slug;
  const lines = sides.flatMap(({ leftOut }) =>
    leftOut
      .filter(({ kind }) => kind !== "no-split")
      .map((fact) => ({ title: titleOf(fact.pattern), why: sayLeftOut(fact) })),
  );
  const known = new Set<string>();
  return lines.filter(({ title, why }) => {
    const isNew = !known.has(`${title} ${why}`);
    known.add(`${title} ${why}`);
    return isNew;
  });
}
