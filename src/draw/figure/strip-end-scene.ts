/** The end of a strip that sticks out of its pocket, with what is worth writing on it. */
import { STRIP_END_WORDS } from "../../issue/words/say-figure.ts";
import { lineData, rectData } from "../geometry/path-data.ts";
import { sheetMark } from "../page/paper-marks.ts";
import type { Scene, TextMark } from "../scene.ts";

/** In millimetres: the strip, as wide as it usually is, and how much of it sticks out. */
const STRIP = { width: 104, height: 30 };
const OUT = 62;
const FRAME = { x: -4, y: -4, width: STRIP.width + 8, height: STRIP.height + 8 };
const LINE = { first: 8, apart: 6.6, size: 4 };
const POCKET = { x: OUT, y: -3, width: FRAME.width - OUT - 8, height: STRIP.height + 6 };
/** Ticks of the page's last steps at both edges, where the pocket begins. */
const TICKS = [1, 2].map((back) => OUT - back * 5);

/** In true size; 0, 0 is the strip's own corner. */
export function stripEndScene(id: string): Scene {
  const words = STRIP_END_WORDS.lines.map(
    (text, index): TextMark => ({
      kind: "text",
      role: index === 0 ? "heading" : "label",
      x: 5,
      y: LINE.first + index * LINE.apart,
      size: LINE.size,
      anchor: "start",
      text,
    }),
  );
  const ticks = TICKS.flatMap((x) => [
    lineData(x, 0, x, 5),
    lineData(x, STRIP.height - 5, x, STRIP.height),
  ]);
  return {
    id,
    title: STRIP_END_WORDS.title,
    description: STRIP_END_WORDS.description,
    frame: FRAME,
    marks: [
      sheetMark("paper", { x: 0, y: 0, ...STRIP }),
      { kind: "path", role: "tick", d: ticks.join("") },
      ...words,
      sheetMark("paper", POCKET),
      {
        kind: "path",
        role: "edge-fine",
        d: rectData(POCKET.x, POCKET.y, POCKET.width, POCKET.height),
      },
      {
        kind: "text",
        role: "count",
        x: POCKET.x + POCKET.width / 2,
        y: STRIP.height / 2 + LINE.size / 3,
        size: LINE.size,
        anchor: "middle",
        text: STRIP_END_WORDS.pocket,
      },
    ],
  };
}
