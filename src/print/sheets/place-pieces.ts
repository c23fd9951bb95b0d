/** Where pieces go on sheets: the room for crop marks around them. */
import type { Rect } from "../../draw/geometry/rect.ts";
import { CROP_ROOM } from "../../draw/print-marks/crop-marks.ts";
import type { SheetPlace } from "../../draw/print-marks/placed-drawing.ts";
import { type Packed, pack, type Room, roomOf, type Size } from "./pack.ts";
import type { SheetPiece } from "./sheet.ts";

/** Packing counts in whole tenths of a millimetre, so that nothing is lost in sums. */
const TENTHS = 10;

export interface PiecePlaces {
  /** Of each piece's frame, in millimetres; nothing where it has none. */
  readonly places: readonly ((SheetPlace & { readonly sheet: number }) | undefined)[];
  /** How many sheets there are. */
  readonly count: number;
}

/** The room of a sheet. */
export interface PieceRoom {
  readonly area: Rect;
  /** Where no piece may lie. */
  readonly taken: readonly Rect[];
  /** Where none should lie, unless that saves a sheet. */
  readonly spared: readonly Rect[];
}

/** Places for pieces: in their order or the longest first, whichever takes fewer sheets. */
export function placePieces(pieces: readonly SheetPiece[], room: PieceRoom): PiecePlaces {
  const sizes = pieces.map(sizeOf);
  const own = [...pieces.keys()];
  const longestFirst = own.toSorted((a, b) => longest(sizes[b]) - longest(sizes[a]) || a - b);
  const [best] = roomsOf(room)
    .flatMap((one) => [own, longestFirst].map((order) => packInOrder(order, sizes, one)))
    .toSorted((a, b) => b.size - a.size || sheetCount(a) - sheetCount(b));
  const places: Packing = best ?? new Map();
  return {
    places: pieces.map((piece, index) => inMillimetres(piece, places.get(index))),
    count: sheetCount(places),
  };
}

/** The calmer room first. */
function roomsOf({ area, taken, spared }: PieceRoom): readonly Room[] {
  return [[...taken, ...spared], taken].map((none) => roomOf(inward(area), none.map(outward)));
}

/** Pieces by their index; what found no place is not in it. */
type Packing = ReadonlyMap<number, Packed>;

function packInOrder(order: readonly number[], sizes: readonly Size[], room: Room): Packing {
  const packed = pack(
    order.flatMap((index) => sizes[index] ?? []),
    room,
  );
  return new Map(
    order.flatMap((index, at) => {
      const place = packed[at];
      return place ? [[index, place] as const] : [];
    }),
  );
}

function sheetCount(places: Packing): number {
  return Math.max(0, ...[...places.values()].map(({ sheet }) => sheet + 1));
}

function longest(size: Size | undefined): number {
  return Math.max(size?.width ?? 0, size?.height ?? 0);
}

/** With the room for crop marks. */
function sizeOf(piece: SheetPiece): Size {
  const { frame } = piece.scene;
  const around = 2 * roomAround(piece);
  return {
    width: Math.ceil((frame.width + around) * TENTHS),
    height: Math.ceil((frame.height + around) * TENTHS),
  };
}

/** What is cut along lines of its own has 2 mm of its frame around them already. */
function roomAround({ cut }: SheetPiece): number {
  return cut === "frame" ? CROP_ROOM : CROP_ROOM - 2;
}

function inMillimetres(
  piece: SheetPiece,
  place: Packed | undefined,
): PiecePlaces["places"][number] {
  const around = roomAround(piece);
  return place && { ...place, x: place.x / TENTHS + around, y: place.y / TENTHS + around };
}

function inward(area: Rect): Rect {
  return between(area, Math.ceil, Math.floor);
}

function outward(area: Rect): Rect {
  return between(area, Math.floor, Math.ceil);
}

type Round = (value: number) => number;

function between({ x, y, width, height }: Rect, roundStart: Round, roundEnd: Round): Rect {
  const [left, top] = [roundStart(x * TENTHS), roundStart(y * TENTHS)];
  return {
    x: left,
    y: top,
    width: roundEnd((x + width) * TENTHS) - left,
    height: roundEnd((y + height) * TENTHS) - top,
  };
}
