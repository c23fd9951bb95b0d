/** What stands at the line of now: a point at either end, their counts, and the line's own count beside the paper. */
import { lineAlong, type Point, pointAlong } from "../../../src/draw/geometry/on-axis.ts";
import { formatNumber } from "../../../src/draw/geometry/path-data.ts";
import { type Interval, intervalAlong, type Rect } from "../../../src/draw/geometry/rect.ts";
import type { Axis } from "../../../src/measure/axis.ts";
import type { EndPoint, StrokeStep } from "../../../src/view/draw-along/steps.ts";

/** An SVG element to be. */
export interface Sign {
  readonly name: "path" | "circle" | "text" | "rect";
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
}

/** In pixels of the screen: a sign is as large on a phone as on a wide screen. */
const PIXELS = { radius: 4.5, size: 14, gap: 10, tagHeight: 19, tagAside: 3 };
/** The baseline of figures below their middle, in parts of their size. */
const BASELINE = 0.35;
const DIGIT_WIDTH = 0.6;

/** The signs of a stroke; `pixel` is a pixel of the screen in the drawing's millimetres. */
export function stepSigns(step: StrokeStep, pixel: number): readonly Sign[] {
  const { axis, paper, ends } = step;
  const [start, end] = ends;
  return [
    ...tagSigns(step, pixel),
    point("start", start, pixel),
    point("end", end, pixel),
    ...endCount(start, { axis, paper, isAfter: isAfter(start, end), pixel }),
    ...endCount(end, { axis, paper, isAfter: isAfter(end, start), pixel }),
  ];
}

function isAfter(one: Point, other: Point): boolean {
  return one.x > other.x || one.y > other.y;
}

function point(name: string, { x, y }: Point, pixel: number): Sign {
  const attributes = { class: `along-${name}`, ...numbers({ cx: x, cy: y }) };
  return {
    name: "circle",
    attributes: { ...attributes, ...numbers({ r: PIXELS.radius * pixel }) },
    text: "",
  };
}

interface EndPlace {
  readonly axis: Axis;
  readonly paper: Rect;
  /** Is it the end nearer to the right or the bottom of the page? */
  readonly isAfter: boolean;
  readonly pixel: number;
}

/**
 * An end's count stands off the line, in its direction, or aside of it where the paper ends; an edge has none. Words
 * stand below and to the right of the lines around them, so a count keeps above a line across and left of one down.
 */
function endCount(end: EndPoint, place: EndPlace): readonly Sign[] {
  if (end.count === "") return [];
  const { axis, isAfter, pixel } = place;
  const size = PIXELS.size * pixel;
  const gap = PIXELS.gap * pixel;
  const width = size * DIGIT_WIDTH * end.count.length;
  const [half, halfAside] = axis === "across" ? [width / 2, size / 2] : [size / 2, width / 2];
  const sheet = intervalAlong(place.paper, axis);
  const along = axis === "across" ? end.x : end.y;
  const room = isAfter ? sheet.to - along : along - sheet.from;
  const isTight = room < gap + 2 * half;
  const off = isTight
    ? pointAlong(axis, 0, axis === "across" ? -(gap + size / 2) : gap + size / 2)
    : pointAlong(axis, isAfter ? gap + half : -(gap + half), -halfAside);
  return [textSign("end-count", { x: end.x + off.x, y: end.y + off.y, text: end.count, size })];
}

/** The line's own count where it is counted, at the top or the outer side, and a thread from there to the line. */
function tagSigns({ axis, at, ends, paper, side }: StrokeStep, pixel: number): readonly Sign[] {
  if (at.count === "") return [];
  const [one, other] = ends.map((end) => (axis === "across" ? end.x : end.y));
  if (one === undefined || other === undefined) return [];
  const sheet = intervalAlong(paper, axis);
  const isOuterEnd = axis === "across" && side === "right";
  const edge = isOuterEnd ? sheet.to : sheet.from;
  const near = isOuterEnd ? Math.max(one, other) : Math.min(one, other);
  const thread: Interval = { from: edge, to: near };
  return [
    {
      name: "path",
      attributes: { class: "along-thread", d: lineAlong(axis, thread, at.mm) },
      text: "",
    },
    ...tag(at.count, { axis, edge, aside: at.mm, isOuterEnd, pixel }),
  ];
}

interface TagPlace {
  readonly axis: Axis;
  readonly edge: number;
  readonly aside: number;
  readonly isOuterEnd: boolean;
  readonly pixel: number;
}

function tag(count: string, { axis, edge, aside, isOuterEnd, pixel }: TagPlace): readonly Sign[] {
  const size = PIXELS.size * pixel;
  const height = PIXELS.tagHeight * pixel;
  const width = size * DIGIT_WIDTH * count.length + height / 2;
  const depth = (axis === "across" ? width : height) / 2 + PIXELS.tagAside * pixel;
  const { x, y } = pointAlong(axis, isOuterEnd ? edge + depth : edge - depth, aside);
  const box = { x: x - width / 2, y: y - height / 2, width, height, rx: 2 * pixel };
  return [
    { name: "rect", attributes: { class: "along-tag", ...numbers(box) }, text: "" },
    textSign("tag-count", { x, y, text: count, size }),
  ];
}

interface StepText extends Point {
  readonly text: string;
  readonly size: number;
}

/** Text whose middle lies at a point of its line. */
function textSign(name: string, { x, y, text, size }: StepText): Sign {
  const place = numbers({ x, y: y + BASELINE * size, "font-size": size });
  return {
    name: "text",
    attributes: { class: `along-${name}`, "text-anchor": "middle", ...place },
    text,
  };
}

function numbers(values: Readonly<Record<string, number>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(values).map(([key, value]) => [key, formatNumber(value)]),
  );
}
