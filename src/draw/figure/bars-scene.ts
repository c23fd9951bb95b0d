/** The drawing of what a printed sheet is checked with: the two bars, and a bank card that lies in their corner. */
import { BARS_WORDS } from "../../issue/words/say-figure.ts";
import { rectData } from "../geometry/path-data.ts";
import { sheetMark } from "../page/paper-marks.ts";
import { BAR, CARD, sheetBars } from "../print-marks/scale-bars.ts";
import type { Scene } from "../scene.ts";

/** Around the bars, in millimetres. */
const ROOM = 6;
const LABEL = 4;

/** In true size; 0, 0 is the corner of the bars, and what is above it has a negative y. */
export function barsScene(id: string): Scene {
  const frame = { x: -ROOM, y: -BAR - ROOM, width: BAR + 2 * ROOM, height: BAR + 2 * ROOM };
  const { across, down } = CARD;
  return {
    id,
    title: BARS_WORDS.title,
    description: BARS_WORDS.description(CARD),
    frame,
    marks: [
      sheetMark("paper", frame),
      ...sheetBars({ corner: { x: 0, y: 0 }, names: BARS_WORDS.names }),
      { kind: "path", role: "fold", d: rectData(0, -down, across, down) },
      {
        kind: "text",
        role: "label",
        x: across / 2,
        y: -down / 2,
        size: LABEL,
        anchor: "middle",
        text: BARS_WORDS.card,
      },
    ],
  };
}
