/** The fills of all boxes of a page in few marks. */
import type { FillMarks } from "../fill/fill-marks.ts";
import type { Mark, PathMark } from "../scene.ts";

/** All thin lines, then all dots, then all numbers. */
export function gatherFills(fills: readonly FillMarks[]): readonly Mark[] {
  return [...lineMarks(fills), ...dotMarks(fills), ...fills.flatMap(({ texts }) => texts ?? [])];
}

/** All thin lines in one path. */
function lineMarks(fills: readonly FillMarks[]): readonly PathMark[] {
  const d = fills.map(({ lines }) => lines ?? "").join("");
  return d === "" ? [] : [{ kind: "path", role: "fill", d }];
}

/** One path for each distance between dots. */
function dotMarks(fills: readonly FillMarks[]): readonly PathMark[] {
  const byDistance = new Map<number, string>();
  for (const { dots } of fills) {
    if (!dots || dots.d === "") continue;
    byDistance.set(dots.apart, (byDistance.get(dots.apart) ?? "") + dots.d);
  }
  return [...byDistance].map(([apart, d]) => ({
    kind: "path",
    role: "fill-dots",
    d,
    dash: [0, apart],
  }));
}
