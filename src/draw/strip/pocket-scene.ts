/** A pocket for a strip, flat: cut along the solid lines, fold along the dashed ones, glue the flaps. */
import type { StripNote } from "../../issue/facts/strip-note.ts";
import { POCKET_WORDS } from "../../issue/words/strip-words.ts";
import { pocketRoom } from "../../strip/cover-limit.ts";
import type { Strip } from "../../strip/strip.ts";
import { lineData, polygonData } from "../geometry/path-data.ts";
import type { Mark, Scene } from "../scene.ts";
import { textWidth } from "../text-width.ts";
import { finishedSize } from "./strip-body.ts";
import type { StripLook } from "./strip-face.ts";
import type { XY } from "./strip-mark.ts";

/** So much wider and longer than the strip, so that it slides. */
export const PLAY = 1.5;
const FLAP = 9;
/** Flaps grow narrower towards their free edge, so that they do not meet in the corner. */
const SLANT = 3;
/** An opening for the thumb in the front. */
const NOTCH = { width: 16, depth: 7, slant: 3 };
const MARGIN = 2;
const TITLE = { x: 12, size: 3 };
const NOTE_SIZE = 2.2;
/** A strip that looks out of its pocket by more than half of itself falls out. */
const LEAST_SHARE = 0.5;

/** A pocket's sides as it is glued into the cover, in millimetres. */
export interface PocketSize {
  readonly length: number;
  readonly panel: number;
}

/**
 * How large a strip's pocket is, or why there is none. `longest` is the longest pattern that can be printed; a
 * strip as long as its page looks out of its pocket a little, and is still inside the cover.
 */
export function pocketSize(
  strip: Strip,
  longest: number,
  look: StripLook = {},
): PocketSize | Extract<StripNote, { kind: "no-pocket" }> {
  const size = finishedSize(strip, look);
  const room = pocketRoom(strip);
  const panel = size.width + PLAY;
  const most = Math.min(room.length, longest - FLAP);
  if (panel > room.width)
    return { kind: "no-pocket", lacks: "width", needs: panel, room: room.width };
  if (most < size.length * LEAST_SHARE)
    return { kind: "no-pocket", lacks: "length", needs: size.length * LEAST_SHARE, room: most };
  return { length: Math.min(size.length + PLAY, most), panel };
}

/**
 * From top to bottom: side flap, back, front; at the right the bottom flap, at the left the open end.
 * The flaps are folded behind first and the front over them, so that the print is outside and the glue is not.
 */
export function pocketScene(strip: Strip, { length, panel }: PocketSize): Scene {
  const tops = { back: FLAP, front: FLAP + panel, end: FLAP + 2 * panel };
  return {
    id: `pocket-${strip.slug}-${strip.notebook.slug}`,
    title: POCKET_WORDS.title(strip.title, strip.notebook.title),
    description: POCKET_WORDS.description,
    frame: {
      x: -MARGIN,
      y: -MARGIN,
      width: length + FLAP + 2 * MARGIN,
      height: tops.end + 2 * MARGIN,
    },
    marks: [
      { kind: "path", role: "cut", d: polygonData(outline(length, panel, tops)) },
      { kind: "path", role: "fold", d: folds(length, tops) },
      ...words(strip, length, panel, tops),
    ],
  };
}

interface Tops {
  readonly back: number;
  readonly front: number;
  readonly end: number;
}

/** Clockwise from the top left corner of the glue flap. */
function outline(length: number, panel: number, { back, front, end }: Tops): readonly XY[] {
  const middle = front + panel / 2;
  const half = Math.min(NOTCH.width, panel - 4) / 2;
  return [
    [SLANT, 0],
    [length - SLANT, 0],
    [length, back],
    [length + FLAP, back + SLANT],
    [length + FLAP, front - SLANT],
    [length, front],
    [length, end],
    [0, end],
    [0, middle + half],
    [NOTCH.depth, middle + half - NOTCH.slant],
    [NOTCH.depth, middle - half + NOTCH.slant],
    [0, middle - half],
    [0, back],
  ];
}

function folds(length: number, { back, front }: Tops): string {
  return (
    lineData(0, back, length, back) +
    lineData(0, front, length, front) +
    lineData(length, back, length, front)
  );
}

/** Where glue goes, and the title on the front. */
function words(strip: Strip, length: number, panel: number, tops: Tops): readonly Mark[] {
  const glue = {
    kind: "text",
    role: "note",
    size: NOTE_SIZE,
    anchor: "middle",
    text: POCKET_WORDS.glue,
  } as const;
  const title = POCKET_WORDS.front(strip.title, strip.notebook.title);
  const room = length - 2 * TITLE.x;
  const size = Math.min(TITLE.size, room / textWidth(title, 1, "bold"));
  return [
    { ...glue, x: length / 2, y: (FLAP + NOTE_SIZE) / 2 },
    { ...glue, x: length + FLAP / 2, y: tops.back + panel / 2, turn: 90 },
    {
      kind: "text",
      role: "heading",
      x: TITLE.x,
      y: tops.front + (panel + size) / 2,
      size,
      anchor: "start",
      text: title,
    },
  ];
}
