/** Where equal steps are not equal on paper: a part that begins or ends at the edge beside twins on dots. */
import type { UnequalOnPaper } from "../../issue/facts/plan-note.ts";
import { COUNTS, type Count, type GridAxis, positionLength } from "../../measure/grid-axis.ts";
import { type Length, length, toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type PlanPage, type PlanSplit, trackIntervals } from "../plan.ts";

/** The notes of a plan, once for each way in which parts differ on a page. */
export function paperNotes(
  pages: readonly PlanPage[],
  notebook: Notebook,
): readonly UnequalOnPaper[] {
  const notes = new Map<string, UnequalOnPaper>();
  for (const page of pages) {
    for (const split of page.splits) {
      for (const note of splitNotes(page, split, notebook.axes[split.axis])) {
        const same = [note.side, note.axis, note.steps, note.mm, note.twinMm].join(" ");
        if (!notes.has(same)) notes.set(same, note);
      }
    }
  }
  return [...notes.values()];
}

/** One note for each track that differs on paper from its twins, the tracks with as many steps. */
function splitNotes(page: PlanPage, split: PlanSplit, axis: GridAxis): readonly UnequalOnPaper[] {
  const widths = trackLengths(split, axis);
  return [...new Set(split.sizes)].flatMap((steps) => {
    const twins = widths.flatMap((width, index) =>
      split.sizes[index] === steps ? [{ width, index }] : [],
    );
    const plain = steps * axis.pitch;
    const usual = twins.find(({ width }) => width === plain) ?? twins.at(-1);
    if (!usual) return [];
    return twins
      .filter(({ width }) => width !== usual.width)
      .map(({ width, index }) => ({
        kind: "unequal-on-paper" as const,
        side: page.side,
        path: split.path,
        axis: split.axis,
        tracks: [index],
        steps,
        mm: toMm(width),
        twinMm: toMm(usual.width),
        alike: alikeCount(axis),
      }));
  });
}

function trackLengths(split: PlanSplit, axis: GridAxis): readonly Length[] {
  return trackIntervals(split).map(({ from, length: steps }) =>
    length(positionLength(axis, from + steps) - positionLength(axis, from)),
  );
}

/** The way of counting that uses most of the paper among those whose steps are all alike. */
function alikeCount(axis: GridAxis): Count {
  const lastDot = axis.firstDot + (axis.dots - 1) * axis.pitch;
  const isAlike = {
    "edge-to-edge": axis.firstDot === axis.pitch && axis.paper - lastDot === axis.pitch,
    "edge-to-dot": axis.firstDot === axis.pitch,
    "dot-to-edge": axis.paper - lastDot === axis.pitch,
    "dot-to-dot": true,
  } satisfies Record<Count, boolean>;
  const byUse: readonly Count[] = ["edge-to-edge", ...COUNTS];
  return byUse.find((count) => isAlike[count]) ?? "dot-to-dot";
}
