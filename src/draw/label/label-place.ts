/** Where the label of a box stands: its lines of text, and the room that they take. */
import type { PaperBox } from "../geometry/paper-box.ts";
import type { Rect } from "../geometry/rect.ts";
import type { TextMark } from "../scene.ts";
import { ROLE_STYLES } from "../style/role-style.ts";
import { BASELINE, CAPITAL, textWidth } from "../text-width.ts";
import { type FittedLabel, fitLabel, LINE_HEIGHT, SMALLEST } from "./fit-label.ts";
import { type LabelKind, labelZone } from "./label-zone.ts";

export interface PlacedLabel {
  readonly marks: readonly TextMark[];
  /** What the label covers, with a little air. */
  readonly taken: Rect;
}

/** Beside and above the text, in millimetres. */
const PADDING = 1.4;
const ABOVE = 0.5;
/** Below the baseline of letters such as p, in parts of the font size. */
const DESCENT = 0.22;
const AIR = 0.6;

/** The label of a leaf; nothing where it has none, or where not even a letter has room. */
export function placeLabel(paperBox: PaperBox, kind: LabelKind): PlacedLabel | undefined {
  if (paperBox.box.label.trim() === "") return undefined;
  const zone = labelZone(paperBox);
  const fitted = fitLabel(paperBox.box.label, {
    width: zone.width - 2 * PADDING,
    height: zone.height - 2 * ABOVE,
    size: labelSize(paperBox, kind),
    weight: ROLE_STYLES[roleOf(kind)].weight,
  });
  if (fitted.lines.length === 0) return undefined;
  return fitted.isTurned
    ? placeTurned(fitted, kind, zone)
    : placeUpright(fitted, kind, zone, paperBox);
}

function roleOf(kind: LabelKind): "heading" | "label" {
  return kind === "heading" ? "heading" : "label";
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
function placeUpright(
  fitted: FittedLabel,
  kind: LabelKind,
  zone: Rect,
  paperBox: PaperBox,
): PlacedLabel {
  const { lines, size } = fitted;
  const role = roleOf(kind);
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
function placeTurned({ lines, size }: FittedLabel, kind: LabelKind, zone: Rect): PlacedLabel {
  const role = roleOf(kind);
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
