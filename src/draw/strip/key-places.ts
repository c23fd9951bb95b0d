/** Where on a strip's faces words have room: behind the end of the shorter side, and between the lanes and the inner side. */
import { type Face, INNER_MARGIN, laneTop } from "./strip-face.ts";
import { cutTo, entryWidth, type KeyEntry, SPACE } from "./strip-key.ts";

/** From the long sides of a face to words, in millimetres. */
const TOP = 0.9;
/** Behind the shorter side, less than this is no room for words. */
const LEAST_TAIL = 12;
/** From one baseline to the next, and from the top of a line to its baseline, in parts of the font size. */
const LINE = 1.4;
const BASELINE = 1;

/** An entry and where it begins, on a baseline from the edge of its face. */
export interface PlacedEntry {
  readonly face: number;
  readonly entry: KeyEntry;
  readonly x: number;
  readonly y: number;
}

/** Entries that have a place, and those that still need one. */
interface Flow {
  readonly placed: readonly PlacedEntry[];
  readonly rest: readonly KeyEntry[];
}

/**
 * Places for the headings, each on its own face, and for the key on any; nothing where that is not possible.
 * Behind the shorter side words stand in columns, between the lanes and the inner side in lines.
 */
export function placeKey(
  faces: readonly Face[],
  headings: readonly KeyEntry[],
  entries: readonly KeyEntry[],
  size: number,
): readonly PlacedEntry[] | undefined {
  const bands = faces.map((face) => bandOf(face, size));
  const hasBand = (index: number) => (bands[index]?.rows.length ?? 0) > 0;
  const inTails = faces.reduce<Flow>(
    ({ placed, rest }, face, index) => {
      const heading = hasBand(index) ? [] : headings.slice(index, index + 1);
      const flow = fillTail(face, index, [...heading, ...rest], size);
      return { placed: [...placed, ...flow.placed], rest: flow.rest };
    },
    { placed: [], rest: entries },
  );
  const isStranded = headings.some(
    (heading, index) =>
      !hasBand(index) &&
      !inTails.placed.some(({ face, entry }) => face === index && entry === heading),
  );
  if (isStranded) return undefined;
  const all = bands.reduce<Flow>(({ placed, rest }, band, index) => {
    const heading = hasBand(index) ? headings.slice(index, index + 1) : [];
    const own = heading.map((one) => cutTo(one, band.width, size));
    const flow = fillBand(band, index, [...own, ...rest], size);
    return { placed: [...placed, ...flow.placed], rest: flow.rest };
  }, inTails);
  return all.rest.length === 0 ? all.placed : undefined;
}

/** Column by column, each as wide as its widest entry; what is too wide is left for elsewhere. */
function fillTail(face: Face, index: number, entries: readonly KeyEntry[], size: number): Flow {
  const rows = linesBetween(TOP, face.height - TOP, size);
  const end = face.length - SPACE / 2;
  const placed: PlacedEntry[] = [];
  let [x, rest] = [face.tail + SPACE, entries];
  while (hasTail(face)) {
    const room = end - x;
    const column = rest.filter((entry) => entryWidth(entry, size) <= room).slice(0, rows.length);
    if (column.length === 0) break;
    const left = x;
    placed.push(
      ...column.map((entry, row) => ({ face: index, entry, x: left, y: rows[row] ?? 0 })),
    );
    rest = rest.filter((entry) => !column.includes(entry));
    x += Math.max(...column.map((entry) => entryWidth(entry, size))) + SPACE;
  }
  return { placed, rest };
}

function hasTail({ length, tail }: Face): boolean {
  return length - tail >= LEAST_TAIL;
}

interface Band {
  readonly rows: readonly number[];
  readonly width: number;
}

/** Beside the lanes, up to where the tail begins if there is one. */
function bandOf(face: Face, size: number): Band {
  const top = laneTop(face, face.side.lanes.length) + INNER_MARGIN / 2;
  const end = hasTail(face) ? face.tail : face.length - SPACE;
  return {
    rows: linesBetween(top, face.height - INNER_MARGIN / 2, size),
    width: end - SPACE,
  };
}

/** Line by line, entry after entry. */
function fillBand(
  { rows, width }: Band,
  index: number,
  entries: readonly KeyEntry[],
  size: number,
): Flow {
  const placed: PlacedEntry[] = [];
  let rest = entries;
  for (const y of rows) {
    let x = SPACE;
    for (const entry of rest) {
      const end = x + entryWidth(entry, size);
      if (end > SPACE + width) break;
      placed.push({ face: index, entry, x, y });
      rest = rest.slice(1);
      x = end + 2 * SPACE;
    }
  }
  return { placed, rest };
}

/** Baselines of the lines between two depths, evenly in the room that is left. */
function linesBetween(top: number, bottom: number, size: number): readonly number[] {
  const count = Math.max(0, Math.floor((bottom - top) / (size * LINE)));
  const over = Math.min((bottom - top - count * size * LINE) / (count + 1), size * 0.3);
  return Array.from(
    { length: count },
    (_, row) => top + over + row * (size * LINE + over) + size * BASELINE,
  );
}
