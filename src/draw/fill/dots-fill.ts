/** The fill `dots`: stronger dots, every so many steps both ways. */
import { lineAlong } from "../along.ts";
import { type Leaf, leafStretch } from "../leaf.ts";
import { type Stretch, stretchAlong } from "../rect.ts";
import type { DrawFill } from "./fill-marks.ts";
import { innerSteps } from "./rule-lines.ts";

/** One dotted line a row of dots: the dots are evenly apart, for inside a box every position is a dot of the grid. */
export const dotsFill: DrawFill = (leaf) => {
  const apart = leaf.box.every * leaf.pitch.across;
  const columns = innerSteps(leaf, "across").map((step) => leaf.lines.across[step] ?? 0);
  const d = innerSteps(leaf, "down")
    .map((step) => leaf.lines.down[step] ?? 0)
    .flatMap((y) => dotRuns(leaf, columns, y).map((run) => lineAlong("across", tail(run, leaf), y)))
    .join("");
  return { dots: { d, apart } };
};

/** A dash counts from the line's start: a line that ended at its last dot could lose it to rounding. */
function tail({ from, to }: Stretch, leaf: Leaf): Stretch {
  return { from, to: Math.min(to + leaf.pitch.across / 3, leafStretch(leaf, "across").to) };
}

/** The first and last dot of each run of dots in a row that the label leaves. */
function dotRuns({ taken }: Leaf, columns: readonly number[], y: number): readonly Stretch[] {
  const first = columns[0];
  const last = columns.at(-1);
  if (first === undefined || last === undefined) return [];
  const rows = taken && stretchAlong(taken, "down");
  if (!taken || !rows || y < rows.from || y > rows.to) return [{ from: first, to: last }];
  const { from, to } = stretchAlong(taken, "across");
  const before = columns.filter((x) => x < from);
  const after = columns.filter((x) => x > to);
  return [before, after].flatMap((run) => {
    const [start, end] = [run[0], run.at(-1)];
    return start === undefined || end === undefined ? [] : [{ from: start, to: end }];
  });
}
