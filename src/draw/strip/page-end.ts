/** Where the page ends on a side that is longer than the page: a fine line with a broad one behind it. */
import { toMm } from "../../measure/length.ts";
import type { StripSide } from "../../strip/strip.ts";
import type { Interval } from "../geometry/rect.ts";
import { rectOutline, type StripMark } from "./strip-mark.ts";

/** From the page's end to the broad line, and how broad that is, in millimetres. */
const BROAD = { after: 0.5, width: 0.7 };

/** What the sign takes along the side; nothing where the strip itself ends there or before. */
export function pageEndInterval(side: StripSide, length: number): Interval | undefined {
  const from = toMm(side.grid.paper);
  const to = from + BROAD.after + BROAD.width;
  return to < length ? { from, to } : undefined;
}

/** The sign with its fine line at x, from y downwards. */
export function pageEndSign(x: number, y: number, height: number): readonly StripMark[] {
  return [
    { kind: "lines", role: "tick", lines: [[x, y, x, y + height]] },
    {
      kind: "outlines",
      role: "page-end",
      outlines: [rectOutline(x + BROAD.after, y, BROAD.width, height)],
    },
  ];
}
