/** What a notebook that someone filled in is called, and under which file name it goes. */
import { AXES } from "../../measure/axis.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { UnnamedNotebook } from "./read-notebook-fields.ts";
import { slugFor } from "./slug-for.ts";

/**
 * The notebook with its title and slug. One that is a notebook of the book in all but its name is that notebook,
 * unless it was given another name; every other one goes by its own name, else by its paper and its dots.
 */
export function nameNotebook(asked: UnnamedNotebook, known: readonly Notebook[]): Notebook {
  const twin = known.find(
    (notebook) =>
      isSameGrid(asked, notebook) &&
      (asked.title === "" || asked.title === notebook.title) &&
      (asked.slug === "" || asked.slug === notebook.slug),
  );
  if (twin) return twin;
  const title = asked.title || usualTitle(asked);
  const taken = known.map(({ slug }) => slug);
  return { ...asked, title, slug: asked.slug || slugFor(title, { fallback: "notebook", taken }) };
}

/** Are they one notebook but for their names? */
export function isSameGrid(one: UnnamedNotebook, two: UnnamedNotebook): boolean {
  return (
    one.ruling === two.ruling &&
    one.binding === two.binding &&
    one.middle === two.middle &&
    AXES.every((axis) => {
      const [a, b] = [one.axes[axis], two.axes[axis]];
      return (
        a.dots === b.dots &&
        a.pitch === b.pitch &&
        a.firstDot === b.firstDot &&
        a.paper === b.paper &&
        a.count === b.count
      );
    })
  );
}

/** `A5, 26 × 38`, or `148 × 210 mm, 26 × 38` for paper without a name. */
function usualTitle({ paperName, axes: { across, down } }: UnnamedNotebook): string {
  const paper = paperName ?? `${toMm(across.paper)} × ${toMm(down.paper)} mm`;
  return `${paper}, ${across.dots} × ${down.dots}`;
}
