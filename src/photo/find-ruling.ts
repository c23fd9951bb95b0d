/** Is a page lined or squared? And where could its lattice begin. */
import type { PhotoPoint, SummedGrey } from "./grey.ts";
import type { Seed } from "./grow-lattice.ts";
import { type LineFamily, lineFamilies } from "./line-families.ts";
import { type Look, lookForCrossings, lookForLines, type Steps } from "./look.ts";

export interface FoundRuling {
  readonly ruling: "squares" | "lines";
  readonly look: Look;
  /** Places are looked at as the seeds are asked for. */
  readonly seeds: Iterable<Seed>;
}

/**
 * Places that are looked at and how far around, in parts of the photo and of its shorter side: a stroke of ink, a fold or
 * a hand may hide one; the large one is for lines that lie far apart.
 */
const PLACES = [
  [0.5, 0.5, 1 / 8],
  [0.5, 0.5, 1 / 5],
  [0.4, 0.38, 1 / 8],
  [0.6, 0.62, 1 / 8],
  [0.4, 0.62, 1 / 8],
  [0.6, 0.38, 1 / 8],
] as const;
/** Where this many of the first places show no line, there are none. */
const TRIED = 2;
/** So many must show the lines of lined paper. */
const LEAST = 2;
/** A seed's line is looked for again, so far off in steps. */
const NEAR = 0.2;

/** Nothing where it has dots, or nothing at all. */
export function findRuling(grey: SummedGrey): FoundRuling | undefined {
  const tiles: Tile[] = [];
  for (const [index, place] of PLACES.entries()) {
    const tile = tileAt(grey, place);
    // Where both ways are seen anywhere it is not lined: a count of lines alone would be wrong.
    if (tile.families.length === 2) return squaresFrom(grey, tile, PLACES.slice(index + 1));
    tiles.push(tile);
    if (tiles.length === TRIED && tiles.every(({ families }) => families.length === 0))
      return undefined;
  }
  const lined = tiles.filter(({ families }) => families.length > 0);
  if (lined.length < LEAST) return undefined;
  const look = lookForLines(grey);
  return { ruling: "lines", look, seeds: lined.flatMap((tile) => lineSeed(tile, look)) };
}

interface Tile {
  readonly middle: PhotoPoint;
  readonly families: readonly LineFamily[];
}

function tileAt(grey: SummedGrey, [x, y, radius]: (typeof PLACES)[number]): Tile {
  const middle = { x: Math.round(x * grey.width), y: Math.round(y * grey.height) };
  const side = Math.min(grey.width, grey.height);
  return { middle, families: lineFamilies(grey, middle, Math.round(radius * side)) };
}

function squaresFrom(
  grey: SummedGrey,
  first: Tile,
  others: readonly (typeof PLACES)[number][],
): FoundRuling {
  const look = lookForCrossings(grey);
  function* seeds(): Generator<Seed> {
    yield* crossingSeed(first, look);
    for (const place of others) yield* crossingSeed(tileAt(grey, place), look);
  }
  return { ruling: "squares", look, seeds: seeds() };
}

function crossingSeed({ middle, families }: Tile, look: Look): readonly Seed[] {
  const [one, other] = families;
  if (!one || !other) return [];
  const [rows, columns] = isLevel(one) ? [one, other] : [other, one];
  // Two equations for the crossing: how far it lies along what leads across each family.
  const { across: a } = rows;
  const { across: b } = columns;
  const determinant = a.x * b.y - a.y * b.x;
  const x = (rows.offset * b.y - columns.offset * a.y) / determinant;
  const y = (columns.offset * a.x - rows.offset * b.x) / determinant;
  const steps = {
    right: stepAlong(rows, columns),
    below: stepAlong(columns, rows),
  };
  return seedAt({ x: middle.x + x, y: middle.y + y }, steps, look);
}

function lineSeed({ middle, families: [lines] }: Tile, look: Look): readonly Seed[] {
  if (!lines) return [];
  const { across, step, offset } = lines;
  const down = isLevel(lines) ? across.y : across.x;
  const below = { x: Math.sign(down) * step * across.x, y: Math.sign(down) * step * across.y };
  const at = { x: middle.x + offset * across.x, y: middle.y + offset * across.y };
  return seedAt(at, { right: { x: below.y, y: -below.x }, below }, look);
}

function seedAt(at: PhotoPoint, steps: Steps, look: Look): readonly Seed[] {
  const near = NEAR * Math.hypot(steps.below.x, steps.below.y);
  const spot = look(at, near, steps);
  return spot ? [{ spot, ...steps }] : [];
}

/** Do its lines run from left to right? */
function isLevel({ across }: LineFamily): boolean {
  return Math.abs(across.y) > Math.abs(across.x);
}

/** The step along the lines of one family to the next line of the other, to the right or downwards. */
function stepAlong({ across }: LineFamily, to: LineFamily): PhotoPoint {
  const along = { x: across.y, y: -across.x };
  const length = to.step / (along.x * to.across.x + along.y * to.across.y);
  const step = { x: along.x * length, y: along.y * length };
  const ahead = Math.abs(step.x) > Math.abs(step.y) ? step.x : step.y;
  return ahead < 0 ? { x: -step.x, y: -step.y } : step;
}
