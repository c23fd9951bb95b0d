/** Glyphs that are put together from others, such as a letter and its accent (OpenType specification, glyf). */
import { viewOf } from "./true-type.ts";

/** After the number of outlines, which is negative here, and the box around them. */
const FIRST_PART = 10;
/** Flags of a part, and how many bytes each adds to the four that all have. */
const MORE_PARTS = 0x20;
const WIDE_PLACE = 0x1;
const TURNS = [
  [0x8, 2],
  [0x40, 4],
  [0x80, 8],
] as const;

/** The glyphs that an outline is put together from; none where it has its own. */
export function componentsOf(outline: Uint8Array): readonly number[] {
  if (!isCompound(outline)) return NONE;
  const view = viewOf(outline);
  return partsOf(view).map((at) => view.getUint16(at + 2));
}

/** The outline with its parts where they are now; the same bytes where it has none. */
export function placeComponents(
  outline: Uint8Array,
  placeOf: (glyph: number) => number,
): Uint8Array {
  if (!isCompound(outline)) return outline;
  const copy = outline.slice();
  const view = viewOf(copy);
  for (const at of partsOf(view)) view.setUint16(at + 2, placeOf(view.getUint16(at + 2)));
  return copy;
}

const NONE: readonly number[] = [];
const SIGN = 0x80;

/** Is its number of outlines, of two bytes, negative? */
function isCompound([first = 0]: Uint8Array): boolean {
  return (first & SIGN) !== 0;
}

/** Where in an outline each part begins. */
function partsOf(view: DataView): readonly number[] {
  const parts = [FIRST_PART];
  for (const at of parts) {
    const flags = view.getUint16(at);
    if (flags & MORE_PARTS) parts.push(at + partLength(flags));
  }
  return parts;
}

function partLength(flags: number): number {
  const place = flags & WIDE_PLACE ? 4 : 2;
  return TURNS.reduce((sum, [flag, bytes]) => sum + (flags & flag ? bytes : 0), 4 + place);
}
