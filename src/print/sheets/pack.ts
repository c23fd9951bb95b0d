/** How rectangles find their places on sheets without touching: the free room is kept as its largest rectangles. */
import type { Rect } from "../../draw/geometry/rect.ts";
import type { QuarterTurn } from "../../draw/print-marks/placed-drawing.ts";

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where one of the rectangles lies: on which sheet, and its top left corner there. */
export interface Packed {
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly turn: QuarterTurn;
}

/** The largest rectangles without anything in them; they overlap. */
export type Room = readonly Rect[];

/** Room of one sheet: an area less what already lies in it. */
export function roomOf(area: Rect, taken: readonly Rect[]): Room {
  return taken.reduce(withoutRect, [area]);
}

/**
 * Places for rectangles in their order, each on the first sheet that has room for it; a place is nothing where even
 * an empty sheet, which is like `room`, is too small. Whole numbers in any unit stay whole numbers.
 */
export function pack(sizes: readonly Size[], room: Room): readonly (Packed | undefined)[] {
  const sheets: Room[] = [];
  return sizes.map((size) => {
    const place = findPlace(size, [...sheets, room]);
    if (place === undefined) return undefined;
    const { sheet, x, y, turn } = place;
    sheets[sheet] = withoutRect(sheets[sheet] ?? room, { x, y, ...turned(size, turn) });
    return place;
  });
}

/** A size as it lies. */
export function turned({ width, height }: Size, turn: QuarterTurn): Size {
  return turn === 0 ? { width, height } : { width: height, height: width };
}

/** Upright if that can be, in the topmost and then leftmost room. */
function findPlace(size: Size, sheets: readonly Room[]): Packed | undefined {
  for (const [sheet, room] of sheets.entries()) {
    for (const turn of [0, 90] as const) {
      const { width, height } = turned(size, turn);
      const [best] = room
        .filter((free) => width <= free.width && height <= free.height)
        .toSorted((a, b) => a.y - b.y || a.x - b.x);
      if (best) return { sheet, x: best.x, y: best.y, turn };
    }
  }
  return undefined;
}

/** The largest rectangles that are left of some when one is taken out. */
function withoutRect(room: Room, taken: Rect): Room {
  const parts = room.flatMap((free) => (touches(free, taken) ? around(free, taken) : [free]));
  return parts.filter(
    (part, index) =>
      !parts.some((other, at) => contains(other, part) && (at < index || !contains(part, other))),
  );
}

function touches(a: Rect, b: Rect): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** What of a rectangle lies above, below, left and right of another. */
function around(free: Rect, taken: Rect): Room {
  const [right, bottom] = [free.x + free.width, free.y + free.height];
  const [takenRight, takenBottom] = [taken.x + taken.width, taken.y + taken.height];
  return [
    { ...free, height: taken.y - free.y },
    { ...free, y: takenBottom, height: bottom - takenBottom },
    { ...free, width: taken.x - free.x },
    { ...free, x: takenRight, width: right - takenRight },
  ].filter(({ width, height }) => width > 0 && height > 0);
}

function contains(outer: Rect, inner: Rect): boolean {
  return (
    outer.x <= inner.x &&
    outer.y <= inner.y &&
    outer.x + outer.width >= inner.x + inner.width &&
    outer.y + outer.height >= inner.y + inner.height
  );
}
