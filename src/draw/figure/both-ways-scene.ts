/** Numbers from both sides: every position of a page counted from the left above it, and from the right below it. */
import { sayBothWays } from "../../issue/words/say-figure.ts";
import { positionLength, usableSteps } from "../../measure/grid-axis.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { dottedRow } from "../geometry/dotted-row.ts";
import { lineData } from "../geometry/path-data.ts";
import { middleSigns } from "../page/middle-marks.ts";
import { sheetMark } from "../page/paper-marks.ts";
import type { Scene, TextMark } from "../scene.ts";
import { slicePlace } from "./slice-place.ts";

/** In millimetres. */
const SIZE = 2.7;
const ABOVE = 8;
const BELOW = 6.4;
const ASIDE = 3.2;
const TICK = 0.9;

/** In millimetres of paper; 0, 0 is the paper's edge at the top of a slice of it. */
export function bothWaysScene(id: string, notebook: Notebook): Scene {
  const place = slicePlace(notebook, "across");
  const { dots, pitch, paper } = place;
  const axis = notebook.axes.across;
  const steps = usableSteps(axis);
  const positions = Array.from({ length: steps + 1 }, (_, k) => toMm(positionLength(axis, k)));
  const rows = dots.down.map((y) =>
    dottedRow({ columns: dots.across, y, end: paper.width }, () => true),
  );
  const ticks = positions.map(
    (x) => lineData(x, -TICK, x, 0) + lineData(x, paper.height, x, paper.height + TICK),
  );
  return {
    id,
    ...sayBothWays(steps, notebook.title),
    frame: {
      x: -ASIDE,
      y: -ABOVE,
      width: paper.width + 2 * ASIDE,
      height: paper.height + ABOVE + BELOW,
    },
    marks: [
      sheetMark("paper", paper),
      { kind: "path", role: "grid", d: rows.join(""), dash: [0, pitch.across] },
      { kind: "path", role: "tick", d: ticks.join("") },
      ...positions.map((x, k) => number(k === steps ? "total" : "count", x, -4.4, k)),
      ...positions.map((x, k) =>
        number(k === 0 ? "total" : "count", x, paper.height + 2 + SIZE, steps - k),
      ),
      ...middleSigns([{ place, axis: "across", end: "start" }], notebook.middle),
    ],
  };
}

function number(role: "count" | "total", x: number, y: number, value: number): TextMark {
  return { kind: "text", role, x, y, size: SIZE, anchor: "middle", text: String(value) };
}
