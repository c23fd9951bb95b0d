/** Any checked notebook, for property tests. */
import fc from "fast-check";
import { COUNTS, type GridAxis } from "../../src/measure/grid-axis.ts";
import { length } from "../../src/measure/length.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";

export interface NotebookLimits {
  /** The fewest and the most dots an axis may have; at least 2. */
  readonly dots: readonly [number, number];
}

const NM_PER_MM = 1_000_000;

/** A notebook of any grid, ruling, binding and way of counting. */
export function arbitraryNotebook(
  { dots }: NotebookLimits = { dots: [2, 60] },
): fc.Arbitrary<Notebook> {
  const grid = arbitraryGrid(dots);
  return fc.record({
    slug: fc.constantFrom("shed-book", "bed-book", "rota-book"),
    title: fc.constantFrom("Shed book", "Bed book", "Rota book"),
    axes: fc.record({ across: grid, down: grid }),
    ruling: fc.constantFrom("dots", "squares", "lines"),
    binding: fc.constantFrom("left", "right", "top", "none"),
    middle: fc.constantFrom("lower", "higher", "both"),
    body: fc.constant(""),
  });
}

/** Pitches of 4 to 6 mm and a quarter inch; often the first dot is one pitch from the edge. */
function arbitraryGrid([least, most]: readonly [number, number]): fc.Arbitrary<GridAxis> {
  const pitch = fc.constantFrom(4_000_000, 5_000_000, 6_000_000, 6_350_000);
  const margin = fc.option(fc.integer({ min: 0, max: 20 * NM_PER_MM }), { nil: undefined });
  return fc
    .record({
      dots: fc.integer({ min: least, max: most }),
      pitch,
      before: margin,
      after: margin,
      count: fc.constantFrom(...COUNTS),
    })
    .map(({ dots, pitch, before = pitch, after = pitch, count }) => ({
      dots,
      pitch: length(pitch),
      firstDot: length(before),
      paper: length(before + (dots - 1) * pitch + after),
      count,
    }));
}
