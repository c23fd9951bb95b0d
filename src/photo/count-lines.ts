/** Counts the lines of a lined page, or says why it does not. Across such a page there is nothing to count. */
import type { FoundRuling } from "./find-ruling.ts";
import { isWithin, medianOf, type PhotoPoint, type SummedGrey } from "./grey.ts";
import { growLattice, type Node } from "./grow-lattice.ts";
import { type CountedRows, OFF, OFF_PX, pageOf, type Rows, rowsOf, sizeOf } from "./lined-rows.ts";
import { type Look, noFainter } from "./look.ts";
import type { LinedPage, PhotoCount, PhotoDoubt } from "./photo-count.ts";

/** A line is at least so strong, as a part of the one that counting begins with. */
const LEAST_STRENGTH = 0.35;
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
/** One line is at most so many times as strong as most are. */
const MOST_UNLIKE = 1.7;
/** How far from a line its surroundings are looked at, in pixels. */
const AROUND = 12;

export function countLines(grey: SummedGrey, { look, seeds }: FoundRuling): PhotoCount {
  let nodes: readonly Node[] = [];
  for (const seed of seeds) {
    // Without a hop: beyond the blank margin the grain of a table may look like lines.
    const grown = growLattice(seed, noFainter(look, LEAST_STRENGTH * seed.spot.strength), 1);
    if (grown.length > nodes.length) nodes = grown;
  }
  const counted = rowsOf(nodes);
  const page = pageOf(counted);
  const doubt = doubtOf({ grey, look }, counted, page);
  return doubt ? { ok: false, doubt, found: page.lines.flat() } : { ok: true, of: "lines", page };
}

/** The first thing that is doubtful. */
function doubtOf(
  { grey, look }: { readonly grey: SummedGrey; readonly look: Look },
  { rows, first, last, usual }: CountedRows,
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
  if (isUneven(rows, { first, last, step }) || isMixed(rows)) return { kind: "lined" };
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

/** Does a line not lie halfway between its neighbours? Then the last ones may be the grain of a table. */
function isUneven(
  rows: Rows,
  { first, last, step }: { readonly first: number; readonly last: number; readonly step: number },
): boolean {
  for (let down = first + 1; down < last; down++) {
    const off = [...(rows.get(down)?.values() ?? [])].flatMap(({ across, spot }) => {
      const before = rows.get(down - 1)?.get(across)?.spot;
      const after = rows.get(down + 1)?.get(across)?.spot;
      if (!before || !after) return [];
      return [Math.hypot(before.x + after.x - 2 * spot.x, before.y + after.y - 2 * spot.y) / 2];
    });
    if (medianOf(off) > Math.max(OFF_PX, OFF * step)) return true;
  }
  return false;
}

/** Are some lines much stronger than others? Printed ones are alike, whatever the light. */
function isMixed(rows: Rows): boolean {
  const strengths = [...rows.values()]
    .filter(({ size }) => size >= LEAST_PLACES)
    .map((row) => medianOf([...row.values()].map(({ spot }) => spot.strength)));
  const usual = medianOf(strengths);
  return strengths.some((one) => one > MOST_UNLIKE * usual || one < usual / MOST_UNLIKE);
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
