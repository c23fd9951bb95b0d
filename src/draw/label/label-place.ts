/** Where the label of a box stands: its lines of text, and the room that they take. */
import type { PaperBox } from "../geometry/paper-box.ts";
import type { Rect } from "../geometry/rect.ts";
import type { TextMark } from "../scene.ts";
import { ROLE_STYLES } from "../style/role-style.ts";
import { BASELINE, CAPITAL, textWidth } from "../text-width.ts";
import {
  type FittedLabel,
  fitLabel,
  fitsWhole,
  type LabelRoom,
  LINE_HEIGHT,
  SMALLEST,
} from "./fit-label.ts";
import { type LabelKind, labelZone } from "./label-zone.ts";

export interface PlacedLabel {
  readonly marks: readonly TextMark[];
  /** What the label covers, with a little air. */
  readonly taken: Rect;
}

/** Beside and above the text, in millimetres. */
const PADDING = 1.4;
const CLOSE = 0.45;
const ABOVE = 0.5;
/** Below the baseline of letters such as p, in parts of the font size. */
const DESCENT = 0.22;
const AIR = 0.6;

/** The label of a leaf; nothing where it has none, or where not even a letter has room. */
export function placeLabel(
  paperBox: PaperBox,
  kind: LabelKind,
  label = paperBox.box.label,
): PlacedLabel | undefined {
  if (label.trim() === "") return undefined;
  const fitted = fitLabel(label, labelRoom(paperBox, kind));
  if (fitted.lines.length === 0) return undefined;
  const placing = { fitted, kind, zone: labelZone(paperBox), role: roleOf(kind, paperBox) };
  return fitted.isTurned ? placeTurned(placing) : placeUpright(placing, paperBox);
}

/** Does a label go into its box on one line, hardly smaller than it would like to be? */
export function isLabelWhole(paperBox: PaperBox, kind: LabelKind, label: string): boolean {
  return fitsWhole(label, labelRoom(paperBox, kind));
}

function labelRoom(paperBox: PaperBox, kind: LabelKind): LabelRoom {
  const zone = labelZone(paperBox);
  // A name that has shorter forms may come near the lines of its cell, for a longer one can be read more easily; and so
  // may a number, which has none.
  const { label, labelForms } = paperBox.box;
  const isClose = kind === "cell" && (labelForms !== undefined || /^\d+$/.test(label));
  const padding = isClose ? CLOSE : PADDING;
  return {
    width: zone.width - 2 * padding,
    height: zone.height - 2 * ABOVE,
    size: labelSize(paperBox, kind),
    weight: ROLE_STYLES[roleOf(kind, paperBox)].weight,
  };
}

type LabelRole = "heading" | "label" | "label-outside";

function roleOf(kind: LabelKind, { box }: PaperBox): LabelRole {
  if (box.isOutside) return "label-outside";
  return kind === "heading" ? "heading" : "label";
}

interface Placing {
  readonly fitted: FittedLabel;
  readonly kind: LabelKind;
  readonly zone: Rect;
  readonly role: LabelRole;
}

/** In millimetres: a label goes by the grid, a heading by its box. */
function labelSize({ pitch, box }: PaperBox, kind: LabelKind): number {
  const wished =
    kind === "heading"
      ? Math.min(4.6, 0.46 * box.h * pitch.down)
      : Math.min(3, 0.54 * Math.min(pitch.down, pitch.across));
  return Math.max(SMALLEST, wished);
}

/** Upright: at the start of the first row, or in the middle of a cell or heading. */
function placeUpright({ fitted, kind, zone, role }: Placing, paperBox: PaperBox): PlacedLabel {
  const { lines, size } = fitted;
  const isCentred = kind === "cell";
  const row = kind === "corner" ? Math.min(paperBox.pitch.down, zone.height) : zone.height;
  const below = (lines.length - 1) * LINE_HEIGHT * size;
  const baseline =
    zone.y + Math.max(row / 2 - (kind === "corner" ? 0 : below / 2), size / 2) + BASELINE * size;
  const x = isCentred ? zone.x + zone.width / 2 : zone.x + PADDING;
  const anchor = isCentred ? "middle" : "start";
  const width = Math.max(...lines.map((line) => textWidth(line, size, ROLE_STYLES[role].weight)));
  return {
    marks: lines.map((text, index) => {
      const y = baseline + index * LINE_HEIGHT * size;
      return { kind: "text", role, x, y, size, anchor, text };
    }),
    taken: {
      x: (isCentred ? x - width / 2 : x) - AIR,
      y: baseline - CAPITAL * size,
      width: width + 2 * AIR,
      height: below + (CAPITAL + DESCENT) * size,
    },
  };
}

/** Turned: reading upwards, its end at the top of the box or its middle in the middle of a cell. */
function placeTurned({ fitted: { lines, size }, kind, zone, role }: Placing): PlacedLabel {
  const text = lines.join(" ");
  const width = textWidth(text, size, ROLE_STYLES[role].weight);
  const centre = zone.x + zone.width / 2;
  const isCentred = kind === "cell";
  const y = isCentred ? zone.y + zone.height / 2 : zone.y + PADDING;
  const x = centre + BASELINE * size;
  const anchor = isCentred ? "middle" : "end";
  return {
    marks: [{ kind: "text", role, x, y, size, anchor, text, turn: -90 }],
    taken: {
      x: x - CAPITAL * size,
      y: (isCentred ? y - width / 2 : y) - AIR,
      width: (CAPITAL + DESCENT) * size,
      height: width + 2 * AIR,
    },
  };
}
