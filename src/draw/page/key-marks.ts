/** The key below a drawing: what the wedge and the diamond stand for, with their numbers. */
import { MIDDLE_WORDS } from "../../issue/words/say-drawing.ts";
import { AXES, type Axis } from "../../measure/axis.ts";
import { type Middle, middlesOf } from "../../measure/grid-axis.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { formatNumber, polygonData } from "../geometry/path-data.ts";
import { intervalAlong } from "../geometry/rect.ts";
import type { Mark, PathMark, TextMark } from "../scene.ts";
import { BASELINE, textWidth } from "../text-width.ts";
import { BAND, type KeySize } from "./band.ts";

const SIZE = 2.4;
const SIGN = { half: 0.9, width: 3 };
const BETWEEN = 5;

interface LegendEntry {
  readonly role: "middle" | "paper-middle";
  readonly text: string;
}

/** Both entries side by side where the paper is wide enough for them, else one below the other. */
export function keySize(place: PagePlace, middle: Middle): KeySize {
  const widths = keyEntries(place, middle).map(({ text }) => SIGN.width + textWidth(text, SIZE));
  const together = widths.reduce((sum, width) => sum + width, BETWEEN * (widths.length - 1));
  if (together <= place.paper.width) return { lines: 1, width: together };
  return { lines: widths.length, width: Math.max(...widths) };
}

/** Starts at the left edge of the first paper. */
export function keyMarks(place: PagePlace, middle: Middle): readonly Mark[] {
  const entries = keyEntries(place, middle);
  const isOneLine = keySize(place, middle).lines === 1;
  const top = place.paper.y + place.paper.height + BAND.bare + BAND.keyLine / 2;
  let x = place.paper.x;
  const signs: PathMark[] = [];
  const texts: TextMark[] = [];
  entries.forEach(({ role, text }, index) => {
    const y = top + (isOneLine ? 0 : index * BAND.keyLine);
    signs.push({ kind: "path", role, d: signData(role, x + SIGN.half, y) });
    texts.push({
      kind: "text",
      role: "note",
      x: x + SIGN.width,
      y: y + SIZE * BASELINE,
      size: SIZE,
      anchor: "start",
      text,
    });
    if (isOneLine) x += SIGN.width + textWidth(text, SIZE) + BETWEEN;
  });
  return [...signs, ...texts];
}

function keyEntries(place: PagePlace, middle: Middle): readonly LegendEntry[] {
  const counted = (axis: Axis) => {
    const positions = middlesOf(place.lines[axis].length - 1, middle);
    return `${positions.join(" and ")} ${axis}`;
  };
  const measured = (axis: Axis) => {
    const mm = place.middle[axis] - intervalAlong(place.paper, axis).from;
    return `${formatNumber(mm)} mm ${axis}`;
  };
  return [
    { role: "middle", text: MIDDLE_WORDS.counted(AXES.map(counted)) },
    { role: "paper-middle", text: MIDDLE_WORDS.paper(AXES.map(measured)) },
  ];
}

function signData(role: LegendEntry["role"], x: number, y: number): string {
  const { half } = SIGN;
  if (role === "middle") {
    return polygonData([
      [x - half, y - half],
      [x + half, y - half],
      [x, y + half],
    ]);
  }
  return polygonData([
    [x, y - half],
    [x + half, y],
    [x, y + half],
    [x - half, y],
  ]);
}
