/** What a notebook that someone filled in is called, and under which file name it goes. */
import { AXES } from "../../measure/axis.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { nameOwn } from "./name-own.ts";
import type { UnnamedNotebook } from "./read-notebook-fields.ts";

/** The notebook with its title and slug: where it is none of the book's and has no name, it goes by its paper and its dots. */
export function nameNotebook(asked: UnnamedNotebook, known: readonly Notebook[]): Notebook {
  const usual = usualTitle(asked);
  return nameOwn(asked, known, { isSame: isSameGrid, usualTitle: usual, fallback: "notebook" });
}

/**
 * A notebook of the book as it begins on the fit page: by its numbers it is known again, and once they are changed it
 * goes by its new ones, since nobody typed its name.
 */
export function unnamed(notebook: Notebook): UnnamedNotebook {
  return { ...notebook, title: "", slug: "", body: "" };
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
