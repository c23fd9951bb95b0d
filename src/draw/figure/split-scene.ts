/** The drawing of one split by itself: a slice of the page with its tracks, their steps, and what is left over. */
import { saySplitParts, saySplitTitle } from "../../issue/words/say-figure.ts";
import { middlesOf } from "../../measure/grid-axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { PlanSplit } from "../../plan/plan.ts";
import { dottedRow } from "../geometry/dotted-row.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { lineData, rectData } from "../geometry/path-data.ts";
import type { Rect } from "../geometry/rect.ts";
import { countedPositions } from "../page/counted-positions.ts";
import { middleSigns } from "../page/middle-marks.ts";
import { sheetMark } from "../page/paper-marks.ts";
import type { Mark, Scene, TextMark } from "../scene.ts";
import { BASELINE, textWidth } from "../text-width.ts";
import { slicePlace } from "./slice-place.ts";

export interface SplitDrawing {
  readonly id: string;
  readonly notebook: Notebook;
  readonly split: PlanSplit;
  /** One for each track, "" where it has none. */
  readonly labels?: readonly string[];
}

/** In millimetres: sizes of the numbers in and below the slice, ticks, and room around it. */
const SIZE = { steps: 3.6, positions: 3.1 };
const TICK = { from: 0.8, to: 2.4, number: 6 };
const ROOM = { aside: 3.2, above: 4, below: 7.4 };
/** From one line of a hatching to the next. */
const HATCH = 1.25;

/** In millimetres of paper; 0, 0 is the paper's edge at the top of the slice. */
export function splitScene({ id, notebook, split, labels = [] }: SplitDrawing): Scene {
  const place = slicePlace(notebook, split.axis);
  const { width, height } = place.paper;
  const stretches = stretchesOf(split);
  return {
    id,
    title: saySplitTitle(split.length, split.sizes.length, notebook.title),
    description: saySplitParts(stretches),
    frame: {
      x: -ROOM.aside,
      y: -ROOM.above,
      width: width + 2 * ROOM.aside,
      height: height + ROOM.above + ROOM.below,
    },
    marks: [
      sheetMark("paper", place.paper),
      gridMark(place),
      ...stretches.flatMap((interval) => partMarks(place, interval)),
      ...stepTexts(place, stretches, labels),
      ...positionMarks(place, stretches, notebook),
      ...middleSigns([{ place, axis: "across", end: "start" }], notebook.middle),
    ],
  };
}

/** A part of the slice, in steps from position 0. A gap has no line of its own. */
interface SplitPart {
  readonly kind: "track" | "gap" | "leftover";
  readonly from: number;
  readonly steps: number;
}

/** Everything the split is made of, from its first step to its last. */
function stretchesOf({ from, sizes, gaps, before, after }: PlanSplit): readonly SplitPart[] {
  const parts = [
    { kind: "leftover", steps: before } as const,
    ...sizes.flatMap((steps, index) => [
      { kind: "track", steps } as const,
      { kind: "gap", steps: gaps[index] ?? 0 } as const,
    ]),
    { kind: "leftover", steps: after } as const,
  ];
  let at = from;
  const placed = parts.map(({ kind, steps }) => {
    const interval: SplitPart = { kind, from: at, steps };
    at += steps;
    return interval;
  });
  return placed.filter(({ steps }) => steps > 0);
}

function gridMark({ dots, pitch, paper }: PagePlace): Mark {
  const rows = dots.down.map((y) =>
    dottedRow({ columns: dots.across, y, end: paper.width }, () => true),
  );
  return { kind: "path", role: "grid", d: rows.join(""), dash: [0, pitch.across] };
}

/** A track's outline, from one row of dots to the other; hatching where nothing could be placed. */
function partMarks(place: PagePlace, interval: SplitPart): readonly Mark[] {
  const rect = rectOfPart(place, interval);
  const { x, y, width, height } = rect;
  if (interval.kind === "track") {
    return [{ kind: "path", role: "edge", d: rectData(x, y, width, height) }];
  }
  return interval.kind === "gap" ? [] : [{ kind: "path", role: "fill", d: hatchData(rect) }];
}

function rectOfPart({ lines }: PagePlace, { from, steps }: SplitPart): Rect {
  const [x = 0, end = 0] = [lines.across[from], lines.across[from + steps]];
  const [y = 0, bottom = 0] = lines.down;
  return { x, y, width: end - x, height: bottom - y };
}

/** Slanting lines, each cut off at the sides. */
function hatchData({ x, y, width, height }: Rect): string {
  const count = Math.ceil((width + height) / HATCH);
  return Array.from({ length: count }, (_, index) => (index + 0.5) * HATCH)
    .filter((reach) => reach < width + height)
    .map((reach) => {
      const [left, right] = [Math.max(0, reach - height), Math.min(width, reach)];
      return lineData(x + left, y + reach - left, x + right, y + reach - right);
    })
    .join("");
}

/** How many steps each track has, with its label where there is room for it. */
function stepTexts(
  place: PagePlace,
  stretches: readonly SplitPart[],
  labels: readonly string[],
): readonly TextMark[] {
  const tracks = stretches.filter(({ kind }) => kind === "track");
  return tracks.map((track, index) => {
    const { x, y, width, height } = rectOfPart(place, track);
    const named = `${labels[index] ?? ""} ${track.steps}`.trim();
    const isRoomy = textWidth(named, SIZE.steps) < width - 1;
    return {
      kind: "text",
      role: "label",
      x: x + width / 2,
      y: y + height / 2 + SIZE.steps * BASELINE,
      size: SIZE.steps,
      anchor: "middle",
      text: isRoomy ? named : String(track.steps),
    };
  });
}

/** A tick for every position, and the numbers of those where something begins or ends. */
function positionMarks(
  { lines, paper }: PagePlace,
  stretches: readonly SplitPart[],
  { middle }: Notebook,
): readonly Mark[] {
  const last = lines.across.length - 1;
  const ticks = lines.across
    .map((x) => lineData(x, paper.height + TICK.from, x, paper.height + TICK.to))
    .join("");
  const positions = countedPositions({
    axis: "across",
    lines: lines.across,
    middles: middlesOf(last, middle),
    others: stretches.flatMap(({ from, steps }) => [from, from + steps]),
    size: SIZE.positions,
  });
  const texts = (["count", "total", "middle"] as const).flatMap((role) =>
    positions
      .filter((one) => one.role === role)
      .map(
        ({ position }): TextMark => ({
          kind: "text",
          role,
          x: lines.across[position] ?? 0,
          y: paper.height + TICK.number,
          size: SIZE.positions,
          anchor: "middle",
          text: String(position),
        }),
      ),
  );
  return [{ kind: "path", role: "tick", d: ticks }, ...texts];
}
