/** A rule of 100 mm, to be held against a real one. */
import { lineData } from "../../../src/draw/geometry/path-data.ts";
import { sheetMark } from "../../../src/draw/page/paper-marks.ts";
import type { Mark, Scene } from "../../../src/draw/scene.ts";

const LENGTH = 100;
const DEPTH = 14;
const MARGIN = 4;
const FRAME = { x: -MARGIN, y: 0, width: LENGTH + 2 * MARGIN, height: DEPTH };
const TICKS = { every: 2.5, five: 4, ten: 6 } as const;

/** Ticks at every millimetre, numbers at every centimetre; 0, 0 is the end of the rule. */
export function ruleScene(): Scene {
  const positions = Array.from({ length: LENGTH + 1 }, (_, mm) => mm);
  const ticks = positions.map((mm) => lineData(mm, 0, mm, tickDepth(mm))).join("");
  const numbers = positions
    .filter((mm) => mm % 10 === 0)
    .map(
      (mm): Mark => ({
        kind: "text",
        role: "count",
        x: mm,
        y: TICKS.ten + 3.4,
        size: 3,
        anchor: "middle",
        text: `${mm}`,
      }),
    );
  return {
    id: "rule",
    title: "A rule of 100 mm",
    description: "Ticks at every millimetre.",
    frame: FRAME,
    marks: [sheetMark("paper", FRAME), { kind: "path", role: "tick", d: ticks }, ...numbers],
  };
}

function tickDepth(mm: number): number {
  if (mm % 10 === 0) return TICKS.ten;
  return mm % 5 === 0 ? TICKS.five : TICKS.every;
}
