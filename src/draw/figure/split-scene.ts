/** The drawing of one split by itself: a slice of the page with its tracks, their steps, and what is left over. */
import { saySplitParts, saySplitTitle } from "../../issue/words/say-figure.ts";
import type { StepInterval } from "../../measure/box.ts";
import { middlesOf } from "../../measure/grid-axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type PlanSplit, trackIntervals } from "../../plan/plan.ts";
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
  const parts = partsOf(split);
  return {
    id,
    title: saySplitTitle(split.length, split.sizes.length, notebook.title),
    description: saySplitParts(parts),
    frame: {
      x: -ROOM.aside,
      y: -ROOM.above,
      width: width + 2 * ROOM.aside,
      height: height + ROOM.above + ROOM.below,
    },
    marks: [
      sheetMark("paper", place.paper),
      gridMark(place),
      ...parts.flatMap((part) => partMarks(place, part)),
      ...stepTexts(place, parts, labels),
      ...positionMarks(place, parts, notebook),
      ...middleSigns([{ place, axis: "across", end: "start" }], notebook.middle),
    ],
  };
}

/** A part of the slice. A gap has no line of its own. */
interface SplitPart extends StepInterval {
  readonly kind: "track" | "gap" | "leftover";
}

/** Everything the split is made of, from its first step to its last. */
function partsOf(split: PlanSplit): readonly SplitPart[] {
  const { from, length, gaps, before, after } = split;
  const tracks = trackIntervals(split).flatMap((track, index): readonly SplitPart[] => [
    { kind: "track", ...track },
    { kind: "gap", from: track.from + track.length, length: gaps[index] ?? 0 },
  ]);
  const parts: readonly SplitPart[] = [
    { kind: "leftover", from, length: before },
    ...tracks,
    { kind: "leftover", from: from + length - after, length: after },
  ];
  return parts.filter((part) => part.length > 0);
}

function gridMark({ dots, pitch, paper }: PagePlace): Mark {
  const rows = dots.down.map((y) =>
    dottedRow({ columns: dots.across, y, end: paper.width }, () => true),
  );
  return { kind: "path", role: "grid", d: rows.join(""), dash: [0, pitch.across] };
}

/** A track's outline, from one row of dots to the other; hatching where nothing could be placed. */
function partMarks(place: PagePlace, part: SplitPart): readonly Mark[] {
  const rect = rectOfPart(place, part);
  const { x, y, width, height } = rect;
  if (part.kind === "track") {
    return [{ kind: "path", role: "edge", d: rectData(x, y, width, height) }];
  }
  return part.kind === "gap" ? [] : [{ kind: "path", role: "fill", d: hatchData(rect) }];
}

function rectOfPart({ lines }: PagePlace, { from, length }: SplitPart): Rect {
  const [x = 0, end = 0] = [lines.across[from], lines.across[from + length]];
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
  parts: readonly SplitPart[],
  labels: readonly string[],
): readonly TextMark[] {
  const tracks = parts.filter(({ kind }) => kind === "track");
  return tracks.map((track, index) => {
    const { x, y, width, height } = rectOfPart(place, track);
    const named = `${labels[index] ?? ""} ${track.length}`.trim();
    const isRoomy = textWidth(named, SIZE.steps) < width - 1;
    return {
      kind: "text",
      role: "label",
      x: x + width / 2,
      y: y + height / 2 + SIZE.steps * BASELINE,
      size: SIZE.steps,
      anchor: "middle",
      text: isRoomy ? named : String(track.length),
    };
  });
}

/** A tick for every position, and the numbers of those where something begins or ends. */
function positionMarks(
  { lines, paper }: PagePlace,
  parts: readonly SplitPart[],
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
    others: parts.flatMap(({ from, length }) => [from, from + length]),
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
