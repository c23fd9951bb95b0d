/** Counts the lines of a lined page, or says why it does not. Across such a page there is nothing to count. */
import type { FoundRuling } from "./find-ruling.ts";
import { isWithin, medianOf, numberAt, type PhotoPoint, type SummedGrey } from "./grey.ts";
import { growLattice, type Node } from "./grow-lattice.ts";
import { type Look, noFainter } from "./look.ts";
import type { LinedPage, PhotoCount, PhotoDoubt } from "./photo-count.ts";
import { leastSquares } from "./solve-linear.ts";

/** A line is at least so strong, as a part of the one that counting begins with. */
const LEAST_STRENGTH = 0.35;
/** Each line is seen at places a step apart; a row with so many of what others have is a line. */
const LEAST_SHARE = 0.6;
/** Of a line that ink hides so much is seen; what has less is none. */
const LEAST_SEEN = 0.15;
/** Beyond the last line there may be another if so much of it is seen. */
const MOST_BEYOND = 0.36;
/** Of the places of the next line in the photo. */
const LEAST_INSIDE = 0.75;
const LEAST_LINES = 6;
const LEAST_PLACES = 6;
/** So many places halfway between lines may look like lines. */
const MOST_BETWEEN = 0.25;
/** How far from a line its surroundings are looked at, in pixels. */
const AROUND = 12;

/** A row of places for each line, by their numbers. */
type Rows = ReadonlyMap<number, ReadonlyMap<number, Node>>;

/** A line lies so near to a parabola, in steps and in pixels. */
const OFF = 0.05;
const OFF_PX = 1;

interface Counted {
  readonly rows: Rows;
  readonly first: number;
  readonly last: number;
  /** How many places three of four rows have: the grain of a table may lengthen many, nothing shortens them. */
  readonly usual: number;
}

export function countLines(grey: SummedGrey, { look, seeds }: FoundRuling): PhotoCount {
  let nodes: readonly Node[] = [];
  for (const seed of seeds) {
    // Without a hop: beyond the blank margin the grain of a table may look like lines.
    const grown = growLattice(seed, noFainter(look, LEAST_STRENGTH * seed.spot.strength), 1);
    if (grown.length > nodes.length) nodes = grown;
  }
  const counted = countedIn(nodes);
  const page = pageOf(counted);
  const doubt = doubtOf(grey, look, counted, page);
  return doubt ? { ok: false, doubt, found: page.lines.flat() } : { ok: true, of: "lines", page };
}

function countedIn(nodes: readonly Node[]): Counted {
  const places = new Map<number, Node[]>();
  for (const node of nodes) {
    const row = places.get(node.down) ?? [];
    row.push(node);
    places.set(node.down, row);
  }
  const rows: Rows = new Map(
    [...places].map(([down, row]) => [
      down,
      new Map(ofOneLine(row).map((node) => [node.across, node])),
    ]),
  );
  const sizes = [...rows.values()].map(({ size }) => size).sort((a, b) => a - b);
  const usual = numberAt(sizes, sizes.length >> 2);
  const sure = [...rows.keys()].filter((down) => sizeOf(rows, down) >= LEAST_SHARE * usual);
  return { rows, usual, first: Math.min(...sure, 0), last: Math.max(...sure, 0) };
}

/** What lies on one curve, a parabola, with the middle of a row: beside the paper the grain of a table may lead astray. */
function ofOneLine(row: readonly Node[]): readonly Node[] {
  const sorted = row.toSorted((a, b) => a.across - b.across);
  const step = medianOf(sorted.map(({ below }) => Math.hypot(below.x, below.y)));
  const within = Math.max(OFF_PX, OFF * step);
  let near: readonly Node[] = sorted.slice(
    sorted.length >> 2,
    sorted.length - (sorted.length >> 2),
  );
  for (let round = 0; round < 3; round++) {
    const curve = parabolaThrough(near);
    if (!curve) return [];
    near = sorted.filter(({ across, spot }) => {
      const { x, y } = curve(across);
      return Math.hypot(spot.x - x, spot.y - y) <= within;
    });
  }
  return near;
}

function parabolaThrough(nodes: readonly Node[]): ((across: number) => PhotoPoint) | undefined {
  const [alongX, alongY] = [leastSquares(3), leastSquares(3)];
  for (const { across, spot } of nodes) {
    alongX.add([1, across, across * across], spot.x);
    alongY.add([1, across, across * across], spot.y);
  }
  const [x, y] = [alongX.solve(), alongY.solve()];
  const at = ([a = 0, b = 0, c = 0]: readonly number[], across: number) =>
    a + b * across + c * across * across;
  return x && y && ((across) => ({ x: at(x, across), y: at(y, across) }));
}

function sizeOf(rows: Rows, down: number): number {
  return rows.get(down)?.size ?? 0;
}

function pageOf({ rows, first, last }: Counted): LinedPage {
  const lines = Array.from({ length: last - first + 1 }, (_, index) =>
    [...(rows.get(first + index)?.values() ?? [])]
      .sort((a, b) => a.across - b.across)
      .map(({ spot: { x, y } }) => ({ x, y })),
  );
  const steps = stepsFrom(rows, Math.floor((first + last) / 2), 1);
  return { lines, step: medianOf(steps.map(({ x, y }) => Math.hypot(x, y))) };
}

/** From the places of a row to those of the row `way` below it. */
function stepsFrom(rows: Rows, down: number, way: number): readonly PhotoPoint[] {
  return [...(rows.get(down)?.values() ?? [])].flatMap(({ across, spot }) => {
    const next = rows.get(down + way)?.get(across)?.spot;
    return next ? [{ x: next.x - spot.x, y: next.y - spot.y }] : [];
  });
}

function doubtOf(
  grey: SummedGrey,
  look: Look,
  { rows, first, last, usual }: Counted,
  { lines, step }: LinedPage,
): PhotoDoubt | undefined {
  if (lines.length < LEAST_LINES || usual < LEAST_PLACES) return { kind: "lined" };
  const ends = [
    { side: "top", line: first, outward: -1 },
    { side: "bottom", line: last, outward: 1 },
  ] as const;
  if (isUpright(lines)) return { kind: "upright" };
  const off = ends.filter(({ line, outward }) => !isNextInPhoto(grey, rows, line, outward));
  if (off.length > 0) return { kind: "cut-off", sides: off.map(({ side }) => side) };
  if (lines.some((line) => line.length < LEAST_SEEN * usual)) return { kind: "bare-line" };
  if (hasLinesBetween(look, rows, { first, last, step })) return { kind: "lined" };
  const unsure = ends.filter(
    ({ line, outward }) => sizeOf(rows, line + outward) > MOST_BEYOND * usual,
  );
  return unsure.length > 0
    ? { kind: "unsure-end", sides: unsure.map(({ side }) => side) }
    : undefined;
}

/** Do the lines run from top to bottom? Then the photo lies on its side. */
function isUpright(lines: readonly (readonly PhotoPoint[])[]): boolean {
  const level = lines.filter((line) => {
    const [start, end] = [line[0], line.at(-1)];
    return start && end && Math.abs(end.x - start.x) > Math.abs(end.y - start.y);
  });
  return 2 * level.length < lines.length;
}

/** Would the line after the last one be seen? */
function isNextInPhoto(grey: SummedGrey, rows: Rows, line: number, outward: number): boolean {
  const ends = [...(rows.get(line)?.values() ?? [])].flatMap(({ across, spot }) => {
    const before = rows.get(line - outward)?.get(across)?.spot;
    return before ? [{ x: 2 * spot.x - before.x, y: 2 * spot.y - before.y }] : [];
  });
  return ends.filter((end) => isWithin(grey, end, AROUND)).length >= LEAST_INSIDE * ends.length;
}

/** Are there lines halfway as well? Then every other one was counted. */
function hasLinesBetween(
  look: Look,
  rows: Rows,
  { first, last, step }: { readonly first: number; readonly last: number; readonly step: number },
): boolean {
  let [seen, all] = [0, 0];
  for (let down = first; down < last; down++)
    for (const { across, spot } of rows.get(down)?.values() ?? []) {
      const next = rows.get(down + 1)?.get(across)?.spot;
      if (!next) continue;
      const below = { x: next.x - spot.x, y: next.y - spot.y };
      const at = { x: spot.x + below.x / 2, y: spot.y + below.y / 2 };
      const between = look(at, step / 5, { right: { x: below.y, y: -below.x }, below });
      all++;
      if (between && between.strength > spot.strength / 2) seen++;
    }
  return seen > MOST_BETWEEN * all;
}
