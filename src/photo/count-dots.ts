/** Counts the dots of a page in a photo, or says why it does not: a doubtful count is never given. */
import { countLines } from "./count-lines.ts";
import { type ExtendedGrid, extendGrid, spread } from "./extend-grid.ts";
import { type FoundRuling, findRuling } from "./find-ruling.ts";
import { findSpots } from "./find-spots.ts";
import { type Grey, medianOf, type SummedGrey, sumUp } from "./grey.ts";
import { hasBareLine, residuals, tornPart, unevenness } from "./grid-checks.ts";
import { type Looking, longerAt, readLine, stepAt } from "./grid-reader.ts";
import { growLattice, type Node, regularNodes } from "./grow-lattice.ts";
import { largestLattice } from "./largest-lattice.ts";
import { lookForDots, noFainter } from "./look.ts";
import { type CountedGrid, PHOTO_SIDES, type PhotoCount, type PhotoDoubt } from "./photo-count.ts";
import { type LatticePoint, seenAt } from "./plane-view.ts";
import { isSharp } from "./sharpness.ts";
import { rimReach } from "./spot.ts";

/** Spots of 3 to 9 pixels are looked for. */
const REACHES = [1, 2, 3, 4] as const;
const LEAST_NODES = 60;
const LEAST_DOTS = 100;
const LEAST_FILL = 0.8;
/** Half of all dots lie no farther than so many steps from halfway between their neighbours, on curled paper too. */
const MOST_UNEVEN = 0.08;
/** So many neighbours may be torn apart: dots that are none. */
const MOST_TORN = 0.002;
/** One pitch is at most so many times the other; seen askew, too. Else it is that of every third line. */
const LONGEST_RATIO = 1.8;
/** A line beyond the last with more dots than this may be one. */
const MOST_BEYOND = 0.36;
/** And one that more lines of ink lie on may hide one. */
const MOST_HIDDEN = 0.3;
/** So much of a lattice between the dots may look like dots; so many places tell. */
const MOST_BETWEEN = 0.25;
const BETWEEN = 300;
/** A crossing of squares is at least so strong, as a part of the one that a lattice begins with. */
const LEAST_STRENGTH = 0.35;
/** What is seen of the lines around a crossing, in pixels. */
const SQUARES_AROUND = 12;

/**
 * Gives now and then what part of the work is done, so that whoever asks can pause or stop. Lines and squares are counted
 * by lines. Of dots the first size whose grid stands up to all checks is taken; of refusals the one that has seen most.
 */
export function* countDots(photo: Grey): Generator<number, PhotoCount> {
  yield 0;
  const grey = sumUp(photo);
  const found = findRuling(grey);
  if (found) {
    yield 1 / 2;
    const ruled = found.ruling === "lines" ? countLines(grey, found) : countSquares(grey, found);
    // Strokes of ink may look like squares where nothing else does.
    if (ruled.ok || ruled.doubt.kind !== "too-few") return ruled;
  }
  let most: readonly Node[] = [];
  let doubtful: PhotoCount | undefined;
  for (const reach of REACHES) {
    yield reach / (REACHES.length + 1);
    const spots = findSpots(grey, reach);
    const nodes = largestLattice(grey, spots);
    // Larger spots than those of the grid would show even less of it.
    if (2 * nodes.length < most.length) break;
    const look = lookForDots(grey, reach);
    const looking = { grey, look, kind: "dot", around: rimReach(reach) + 1 } as const;
    const count = nodes.length < LEAST_NODES ? undefined : countedFrom(looking, nodes);
    if (count?.ok) return count;
    if (nodes.length <= most.length) continue;
    most = nodes;
    doubtful = count;
  }
  return doubtful ?? refused(isSharp(photo) ? tooFew(most) : { kind: "blurred" }, most);
}

/** From one seed after the other; what is much fainter than it is no crossing. */
function countSquares(grey: SummedGrey, { look, seeds }: FoundRuling): PhotoCount {
  let most: readonly Node[] = [];
  let doubtful: PhotoCount | undefined;
  for (const seed of seeds) {
    const grown = growLattice(seed, noFainter(look, LEAST_STRENGTH * seed.spot.strength));
    const nodes = regularNodes(grown);
    if (nodes.length < LEAST_NODES || nodes.length <= most.length) continue;
    most = nodes;
    doubtful = countedFrom({ grey, look, kind: "crossing", around: SQUARES_AROUND }, nodes);
    if (doubtful.ok) return doubtful;
  }
  return doubtful ?? refused(tooFew(most), most);
}

function countedFrom(looking: Looking, nodes: readonly Node[]): PhotoCount {
  const grid = extendGrid(looking, nodes);
  return grid ? judged(looking, grid) : refused(tooFew(nodes), nodes);
}

function tooFew(nodes: readonly Node[]): PhotoDoubt {
  return { kind: "too-few", dots: nodes.length };
}

function refused(doubt: PhotoDoubt, nodes: readonly Node[]): PhotoCount {
  return { ok: false, doubt, found: nodes.map(({ spot: { x, y } }) => ({ x, y })) };
}

/** The grid, if all that is asked of it holds. */
function judged(looking: Looking, extended: ExtendedGrid): PhotoCount {
  const grid = gridOf(extended, looking.kind === "dot" ? "dots" : "squares");
  const doubt = doubtOf(looking, extended, grid);
  return doubt ? { ok: false, doubt, found: grid.dots } : { ok: true, of: "grid", grid };
}

function gridOf(extended: ExtendedGrid, ruling: CountedGrid["ruling"]): CountedGrid {
  const { range, view, answers } = extended;
  const [across, down] = [range.right - range.left + 1, range.bottom - range.top + 1];
  const corners = [
    { across: range.left, down: range.top },
    { across: range.right, down: range.top },
    { across: range.right, down: range.bottom },
    { across: range.left, down: range.bottom },
  ];
  return {
    ...{ across, down, ruling, view },
    first: { across: range.left, down: range.top },
    corners: corners.map((corner) => seenAt(view, corner)),
    dots: [...answers.values()].map(({ x, y }) => ({ x, y })),
    residual: medianOf(residuals(extended)),
    unevenness: unevenness(extended),
    step: stepAt(view, middleOf(extended)),
    fill: answers.size / (across * down),
  };
}

function middleOf({ range: { left, right, top, bottom } }: ExtendedGrid): LatticePoint {
  return { across: (left + right) / 2, down: (top + bottom) / 2 };
}

function doubtOf(
  looking: Looking,
  extended: ExtendedGrid,
  { dots, fill, residual, step, ruling, unevenness: uneven }: CountedGrid,
): PhotoDoubt | undefined {
  const { beyond, view } = extended;
  if (dots.length < LEAST_DOTS) return { kind: "too-few", dots: dots.length };
  // A lattice that is not the grid's own says nothing of the grid's ends.
  const isAskew = longerAt(view, middleOf(extended)) > LONGEST_RATIO * step;
  if (isAskew || tornPart(extended) > MOST_TORN) return { kind: "no-grid", residual };
  const off = PHOTO_SIDES.filter((side) => !beyond[side].isInPhoto);
  if (off.length > 0) return { kind: "cut-off", sides: off };
  if (hasBareLine(extended)) return { kind: "bare-line" };
  if (fill < LEAST_FILL) return { kind: "gaps", fill };
  if (uneven > MOST_UNEVEN * step || hasDotsBetween(looking, extended))
    return { kind: "no-grid", residual };
  const unsure = PHOTO_SIDES.filter(
    (side) =>
      beyond[side].share > MOST_BEYOND || (ruling === "dots" && beyond[side].covered > MOST_HIDDEN),
  );
  return unsure.length > 0 ? { kind: "unsure-end", sides: unsure } : undefined;
}

/** Are there dots half a step off as well? Then the lattice is not the grid's own. */
function hasDotsBetween(looking: Looking, { range, view, answers }: ExtendedGrid): boolean {
  const dots = [...answers.values()];
  const usual = medianOf(dots.map(({ strength }) => strength));
  const tried = spread(dots, BETWEEN);
  const offsets = [
    { across: 0.5, down: 0.5 },
    { across: 0.5, down: 0 },
    { across: 0, down: 0.5 },
  ];
  return offsets.some((inward) => {
    const places = tried.map(({ across, down }) => ({
      across: across + inward.across,
      down: down + inward.down,
    }));
    const inside = places.filter(({ across, down }) => across < range.right && down < range.bottom);
    const { found } = readLine(looking, view, { places: inside, inward }, new Map());
    const strong = found.filter(({ strength }) => strength >= usual / 2);
    return strong.length > MOST_BETWEEN * inside.length;
  });
}
