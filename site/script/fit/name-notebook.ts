/** What a notebook that someone filled in is called, and under which file name it goes. */
import { AXES } from "../../../src/measure/axis.ts";
import { toMm } from "../../../src/measure/length.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import type { UnnamedNotebook } from "./read-fields.ts";
import { slugFor } from "./slug-for.ts";

/**
 * The notebook with its title and slug. One that is a notebook of the book in all but its name is that notebook,
 * unless it was given another name; every other one goes by its own name, else by its paper and its dots.
 */
export function nameNotebook(unnamed: UnnamedNotebook, known: readonly Notebook[]): Notebook {
  const twin = known.find(
    (notebook) =>
      isSame(unnamed, notebook) && (unnamed.title === "" || unnamed.title === notebook.title),
  );
  if (twin) return twin;
  const title = unnamed.title || usualTitle(unnamed);
  const taken = known.map(({ slug }) => slug);
  return { ...unnamed, title, slug: slugFor(title, { fallback: "notebook", taken }) };
}

function isSame(one: UnnamedNotebook, two: Notebook): boolean {
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
