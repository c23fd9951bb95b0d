/** The presentation attributes of marks, as names and texts in the one order in which they are written. */
import { formatNumber } from "../geometry/path-data.ts";
import type { Mark, TextMark } from "../scene.ts";
import type { Style } from "../style/role-style.ts";
import type { NumberRun } from "./number-run.ts";

export type Attributes = Readonly<Record<string, string>>;

/** A class for each role and lane, so that a style sheet can give a drawing another look. */
export function classOf({ role, lane }: Mark): string {
  return lane === undefined ? `d-${role}` : `d-${role} d-lane-${lane}`;
}

/** The look of a path. Only what differs from SVG's own defaults is written. */
export function pathAttributes({ stroke, width, fill, dash, cap, join }: Style): Attributes {
  if (stroke === "none") return { fill };
  return {
    fill,
    stroke,
    "stroke-width": formatNumber(width),
    ...(cap !== "butt" && { "stroke-linecap": cap }),
    ...(join !== "miter" && { "stroke-linejoin": join }),
    ...(dash && { "stroke-dasharray": dash.map(formatNumber).join(" ") }),
  };
}

/** The look of text. */
export function textAttributes({ text, weight }: Style): Attributes {
  return { fill: text, ...(weight === "bold" && { "font-weight": "600" }) };
}

/** Where one text stands. */
export function textPlace({ x, y, size, anchor, turn }: TextMark): Attributes {
  return {
    "font-size": formatNumber(size),
    ...(anchor !== "start" && { "text-anchor": anchor }),
    x: formatNumber(x),
    y: formatNumber(y),
    ...(turn && { transform: `rotate(${[turn, x, y].map(formatNumber).join(" ")})` }),
  };
}

/** Where the digits of many numbers stand: each by its middle. */
export function runPlace(size: number, { x, y, turn }: NumberRun): Attributes {
  return {
    "font-size": formatNumber(size),
    "text-anchor": "middle",
    x,
    y,
    ...(turn !== 0 && { transform: `rotate(${formatNumber(turn)})` }),
  };
}
