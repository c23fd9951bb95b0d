/** Grows the sure middle of a lattice line by line to its ends, and says what lies beyond each. */
import { fitView, type Sighting } from "./fit-view.ts";
import { numberAt } from "./grey.ts";
import { type Answers, type LineAnswers, type Looking, readLine } from "./grid-reader.ts";
import { type Node, placeKey } from "./grow-lattice.ts";
import { PHOTO_SIDES, type PhotoSide } from "./photo-count.ts";
import type { LatticePoint, PlaneView } from "./plane-view.ts";

/** The first and the last column and row, of the lattice. */
export type Range = Readonly<Record<PhotoSide, number>>;

export interface ExtendedGrid {
  readonly range: Range;
  readonly view: PlaneView;
  readonly answers: Answers;
  /** The line after the last one, at each side. */
  readonly beyond: Readonly<Record<PhotoSide, LineAnswers>>;
}

/** A line with so many of its dots belongs to the grid. */
const LEAST_SHARE = 0.6;
/** Ink may hide one line of the grid: so much of it has a dot, or a line of ink, all the same. Bare paper has neither. */
const LEAST_SIGN = 0.3;
/** And so much a dot: the fold between two pages is a line as well, and has none. */
export const LEAST_SEEN = 0.15;
/** So many dots tell how the next lines are seen. */
const ENOUGH = 400;
/** A view is fitted anew once there are so many times as many dots. */
const GROWN = 1.2;
/** No grid has more lines than this one way. */
const MOST_ROUNDS = 420;

const OUTWARD = {
  left: { across: -1, down: 0 },
  top: { across: 0, down: -1 },
  right: { across: 1, down: 0 },
  bottom: { across: 0, down: 1 },
} as const;

/** Nothing where the lattice is too small for a view. */
export function extendGrid(looking: Looking, nodes: readonly Node[]): ExtendedGrid | undefined {
  const spots = nodes.map(({ across, down, spot }) => [placeKey(across, down), spot] as const);
  const known = { ...looking, grown: new Map(spots) };
  let range = middlePart(nodes);
  const answers = startAnswers(nodes, range);
  let view = fitView(some(answers), looking.grey);
  if (view) range = shrunk(known, view, range, answers);
  let fitted = answers.size;
  for (let round = 0; view && round < MOST_ROUNDS; round++) {
    const before = range;
    for (const side of PHOTO_SIDES) {
      const lines = nextLines(known, view, { range, side }, answers);
      for (const one of lines.flatMap(({ found }) => found))
        answers.set(placeKey(one.across, one.down), one);
      range = moved(range, side, lines.length);
    }
    const isDone = range === before;
    if (isDone && answers.size === fitted) break;
    // A few dots more hardly change the view; the last line is only said with the view that all dots give.
    if (!isDone && answers.size < GROWN * fitted) continue;
    view = fitView(some(answers), looking.grey);
    fitted = answers.size;
  }
  if (!view) return undefined;
  readAll(looking, view, range, answers);
  // A slight lens only shows in all of them.
  view = fitView([...answers.values()], looking.grey) ?? view;
  const last = view;
  const beyond = (side: PhotoSide) => lineBeyond(looking, last, { range, side }, answers);
  return {
    ...{ range, view, answers },
    beyond: {
      left: beyond("left"),
      top: beyond("top"),
      right: beyond("right"),
      bottom: beyond("bottom"),
    },
  };
}

/** Enough dots for a view on the way. */
function some(answers: Answers): readonly Sighting[] {
  return spread([...answers.values()], ENOUGH);
}

/** About so many of a list: evenly spread by the golden section, so that of dots no line is preferred. */
export function spread<One>(list: readonly One[], count: number): readonly One[] {
  const part = count / list.length;
  return list.filter((_, index) => (index * GOLDEN) % 1 < part);
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where the middle third of the nodes lies, both ways. */
function middlePart(nodes: readonly Node[]): Range {
  const quarters = (values: readonly number[]) => {
    const sorted = values.toSorted((a, b) => a - b);
    return [1 / 3, 2 / 3].map((part) => numberAt(sorted, Math.floor(part * (sorted.length - 1))));
  };
  const [left = 0, right = 0] = quarters(nodes.map(({ across }) => across));
  const [top = 0, bottom = 0] = quarters(nodes.map(({ down }) => down));
  return { left, top, right, bottom };
}

type KnownDots = Map<number, LineAnswers["found"][number]>;

function startAnswers(nodes: readonly Node[], range: Range): KnownDots {
  const inside = nodes.filter((node) => isInside(range, node));
  return new Map(
    inside.map(({ across, down, spot: { x, y, strength } }) => [
      placeKey(across, down),
      { across, down, x, y, strength },
    ]),
  );
}

interface Place {
  readonly range: Range;
  readonly side: PhotoSide;
}

/** The next line if it belongs to the grid, or two where ink hides the first; else none. */
function nextLines(
  looking: Looking,
  view: PlaneView,
  { range, side }: Place,
  answers: Answers,
): readonly LineAnswers[] {
  const next = lineBeyond(looking, view, { range, side }, answers);
  if (!next.isInPhoto) return [];
  if (next.share >= LEAST_SHARE) return [next];
  if (next.share < LEAST_SEEN || next.share + next.covered < LEAST_SIGN) return [];
  const farther = lineBeyond(looking, view, { range: moved(range, side, 1), side }, answers);
  return farther.isInPhoto && farther.share >= LEAST_SHARE ? [next, farther] : [];
}

/** Without lines at its sides that are none: a lattice may have grown over noise beyond the grid. */
function shrunk(looking: Looking, view: PlaneView, start: Range, answers: KnownDots): Range {
  let range = start;
  for (const side of PHOTO_SIDES) {
    let inner = moved(range, side, -1);
    while (inner.left < inner.right && inner.top < inner.bottom) {
      if (lineBeyond(looking, view, { range: inner, side }, answers).share >= LEAST_SHARE) break;
      range = inner;
      inner = moved(range, side, -1);
    }
  }
  for (const [key, { across, down }] of answers)
    if (!isInside(range, { across, down })) answers.delete(key);
  return range;
}

function isInside({ left, top, right, bottom }: Range, { across, down }: LatticePoint): boolean {
  return across >= left && across <= right && down >= top && down <= bottom;
}

function lineBeyond(
  looking: Looking,
  view: PlaneView,
  { range, side }: Place,
  answers: Answers,
): LineAnswers {
  const outward = OUTWARD[side];
  const line = range[side] + outward.across + outward.down;
  const places: LatticePoint[] =
    outward.across === 0
      ? wholesFrom(range.left, range.right).map((across) => ({ across, down: line }))
      : wholesFrom(range.top, range.bottom).map((down) => ({ across: line, down }));
  const inward = { across: -outward.across, down: -outward.down };
  return readLine(looking, view, { places, inward }, answers);
}

/** The whole numbers from one to another, both included. */
export function wholesFrom(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}

function moved(range: Range, side: PhotoSide, lines: number): Range {
  const { across, down } = OUTWARD[side];
  return lines === 0 ? range : { ...range, [side]: range[side] + (across + down) * lines };
}

/** Looks once more for what the last view shows, row by row; dots that lie far off are let go. */
function readAll(looking: Looking, view: PlaneView, range: Range, answers: KnownDots): void {
  for (const down of wholesFrom(range.top, range.bottom)) {
    const places = wholesFrom(range.left, range.right).map((across) => ({ across, down }));
    const inward = { across: 0, down: down === range.top ? 1 : -1 };
    const { found } = readLine(looking, view, { places, inward }, answers);
    for (const { across } of places) answers.delete(placeKey(across, down));
    for (const one of found) answers.set(placeKey(one.across, one.down), one);
  }
}
