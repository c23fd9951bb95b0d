/** Counts the dots of a page in a photo, or says why it does not: a doubtful count is never given. */
import { type ExtendedGrid, extendGrid } from "./extend-grid.ts";
import { findSeeds } from "./find-seeds.ts";
import { findSpots } from "./find-spots.ts";
import { type Grey, medianOf, type SummedGrey, sumUp } from "./grey.ts";
import { hasBareLine, residuals, unevenness } from "./grid-checks.ts";
import { type Looking, readLine, stepAt } from "./grid-reader.ts";
import { growLattice, type Node, placeKey, regularNodes } from "./grow-lattice.ts";
import { nearSpots } from "./near-spots.ts";
import { type CountedGrid, PHOTO_SIDES, type PhotoCount, type PhotoDoubt } from "./photo-count.ts";
import { seenAt } from "./plane-view.ts";
import { isSharp } from "./sharpness.ts";
import { type Spot, spotAt } from "./spot.ts";

/** Spots of 3 to 9 pixels are looked for. */
const REACHES = [1, 2, 3, 4] as const;
const LEAST_NODES = 60;
/** A lattice of so many of all spots is the one: half of them may be one with twice the step. */
const ENOUGH = 0.8;
const LEAST_DOTS = 100;
const LEAST_FILL = 0.8;
/** Half of all dots lie no farther than so many steps from halfway between their neighbours, on curled paper too. */
const MOST_UNEVEN = 0.08;
/** A line beyond the last with more dots than this may be one. */
const MOST_BEYOND = 0.36;
/** And one that more lines of ink lie on may hide one. */
const MOST_HIDDEN = 0.3;
/** So much of a lattice between the dots may look like dots. */
const MOST_BETWEEN = 0.25;
/** Spots that are part of a line: so many tell of lined paper. */
const LEAST_LINE_SPOTS = 200;
/** Spots of this reach are asked for lines. */
const LINE_REACH = 1;
/** A line is so strong, as a part of where two cross. */
const LINE_STRENGTH = 0.3;

/**
 * Gives now and then what part of the work is done, so that whoever asks can pause or stop. The first size of spots whose
 * grid stands up to all checks is taken; of refusals the one that has seen most.
 */
export function* countDots(photo: Grey): Generator<number, PhotoCount> {
  const grey = sumUp(photo);
  let most: readonly Node[] = [];
  let doubtful: PhotoCount | undefined;
  let lines: readonly Spot[] = [];
  for (const reach of REACHES) {
    yield (reach - 1) / REACHES.length;
    const spots = findSpots(grey, reach);
    if (reach === LINE_REACH) lines = linesOf(spots);
    yield (reach - 0.5) / REACHES.length;
    const nodes = largestLattice(grey, spots);
    // Larger spots than those of the grid would show even less of it.
    if (2 * nodes.length < most.length) break;
    const count = nodes.length < LEAST_NODES ? undefined : countedFrom(grey, { reach, nodes });
    if (count?.ok) return count;
    if (nodes.length <= most.length) continue;
    most = nodes;
    doubtful = count;
  }
  return doubtful ?? refused(noLattice(photo, lines, most), most);
}

function countedFrom(grey: SummedGrey, lattice: Lattice): PhotoCount {
  const { reach, nodes } = lattice;
  const ruling = rulingOf(grey, lattice);
  const looking = { grey, reach, kinds: SEEN_AS[ruling] };
  const grid = extendGrid(looking, nodes);
  return grid
    ? judged(looking, grid, ruling)
    : refused({ kind: "too-few", dots: nodes.length }, nodes);
}

interface Lattice {
  readonly reach: number;
  readonly nodes: readonly Node[];
}

/** What a dot may look like. The crossings of fine lines look like dots. */
const SEEN_AS = { dots: ["dot"], squares: ["dot", "crossing"] } as const;

function largestLattice(grey: SummedGrey, found: readonly Spot[]): readonly Node[] {
  const spots = found.filter(({ kind }) => kind === "dot" || kind === "crossing");
  const nearest = nearSpots(spots);
  let best: readonly Node[] = [];
  let own = new Set<Spot>();
  for (const seed of findSeeds(spots, grey)) {
    // From a spot that a large lattice has, much the same one would grow.
    if (2 * best.length > spots.length && own.has(seed.spot)) continue;
    const nodes = regularNodes(growLattice(seed, nearest));
    if (nodes.length <= best.length) continue;
    best = nodes;
    own = new Set(nodes.map(({ spot }) => spot));
    if (best.length > ENOUGH * spots.length) break;
  }
  return best;
}

/** Squares have a line halfway from each crossing to the next. */
function rulingOf(grey: SummedGrey, { reach, nodes }: Lattice): CountedGrid["ruling"] {
  const spots = new Map(nodes.map((node) => [placeKey(node.across, node.down), node.spot]));
  const halfway = nodes.flatMap(({ across, down, spot }) => {
    const next = spots.get(placeKey(across + 1, down));
    if (!next) return [];
    const at = { x: Math.round((spot.x + next.x) / 2), y: Math.round((spot.y + next.y) / 2) };
    const between = spotAt(grey, at, reach);
    return [between?.kind === "line" && between.strength > LINE_STRENGTH * spot.strength];
  });
  return 2 * halfway.filter(Boolean).length > halfway.length ? "squares" : "dots";
}

function refused(doubt: PhotoDoubt, nodes: readonly Node[]): PhotoCount {
  return { ok: false, doubt, found: nodes.map(({ spot: { x, y } }) => ({ x, y })) };
}

function noLattice(photo: Grey, lines: readonly Spot[], nodes: readonly Node[]): PhotoDoubt {
  if (lines.length >= LEAST_LINE_SPOTS && areAlongside(lines))
    return { kind: "lined", lines: lines.length };
  return isSharp(photo) ? { kind: "too-few", dots: nodes.length } : { kind: "blurred" };
}

/** Spots of lines, where most of what is seen are such. */
function linesOf(spots: readonly Spot[]): readonly Spot[] {
  const lines = spots.filter(({ kind }) => kind === "line");
  return 2 * lines.length > spots.length ? lines : [];
}

/** Do nine in ten run one way, within about 15 degrees? Directions are doubled, since a line has no front. */
function areAlongside(lines: readonly Spot[]): boolean {
  const doubled = lines.map(({ direction = 0 }) => 2 * direction);
  const x = doubled.reduce((sum, angle) => sum + Math.cos(angle), 0);
  const y = doubled.reduce((sum, angle) => sum + Math.sin(angle), 0);
  return Math.hypot(x, y) > 0.8 * lines.length;
}

/** The grid, if all that is asked of it holds. */
function judged(
  looking: Looking,
  extended: ExtendedGrid,
  ruling: CountedGrid["ruling"],
): PhotoCount {
  const grid = gridOf(extended, ruling);
  const doubt = doubtOf(looking, extended, grid);
  return doubt ? { ok: false, doubt, found: grid.dots } : { ok: true, grid };
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
  const middle = { across: (range.left + range.right) / 2, down: (range.top + range.bottom) / 2 };
  return {
    ...{ across, down, ruling, view },
    first: { across: range.left, down: range.top },
    corners: corners.map((corner) => seenAt(view, corner)),
    dots: [...answers.values()].map(({ x, y }) => ({ x, y })),
    residual: medianOf(residuals(extended)),
    unevenness: unevenness(extended),
    step: stepAt(view, middle),
    fill: answers.size / (across * down),
  };
}

function doubtOf(
  looking: Looking,
  extended: ExtendedGrid,
  { dots, fill, residual, step, ruling, unevenness: uneven }: CountedGrid,
): PhotoDoubt | undefined {
  const { beyond } = extended;
  if (dots.length < LEAST_DOTS) return { kind: "too-few", dots: dots.length };
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
  const usual = medianOf([...answers.values()].map(({ strength }) => strength));
  const offsets = [
    { across: 0.5, down: 0.5 },
    { across: 0.5, down: 0 },
    { across: 0, down: 0.5 },
  ];
  return offsets.some((inward) => {
    const places = [...answers.values()].map(({ across, down }) => ({
      across: across + inward.across,
      down: down + inward.down,
    }));
    const inside = places.filter(({ across, down }) => across < range.right && down < range.bottom);
    const { found } = readLine(looking, view, { places: inside, inward }, new Map());
    const strong = found.filter(({ strength }) => strength >= usual / 2);
    return strong.length > MOST_BETWEEN * inside.length;
  });
}
