/** What stands at the line of now: a point at either end, their counts, and the line's own count beside the paper. */
import { lineAlong, type Point, pointAlong } from "../../../src/draw/along.ts";
import { formatNumber } from "../../../src/draw/path-data.ts";
import { type Stretch, stretchAlong } from "../../../src/draw/rect.ts";
import type { Axis } from "../../../src/measure/axis.ts";
import type { EndPoint, StrokeStep } from "./along-steps.ts";

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
  const { axis, ends } = step;
  const [start, end] = ends;
  return [
    ...tagSigns(step, pixel),
    point("start", start, pixel),
    point("end", end, pixel),
    ...endCount(start, { axis, isAfter: isAfter(start, end), pixel }),
    ...endCount(end, { axis, isAfter: isAfter(end, start), pixel }),
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
  /** Is it the end nearer to the right or the bottom of the page? */
  readonly isAfter: boolean;
  readonly pixel: number;
}

/** An end's count stands off the line, in its direction; the paper's own edge has none. */
function endCount(end: EndPoint, { axis, isAfter, pixel }: EndPlace): readonly Sign[] {
  if (end.count === "") return [];
  const size = PIXELS.size * pixel;
  const room = axis === "across" ? PIXELS.gap * pixel : PIXELS.gap * pixel + size / 2;
  const off = pointAlong(axis, isAfter ? room : -room, 0);
  const anchor = axis === "down" ? "middle" : isAfter ? "start" : "end";
  return [
    textSign("end-count", { x: end.x + off.x, y: end.y + off.y, text: end.count, anchor, size }),
  ];
}

/** The line's own count where it is counted, at the top or the outer side, and a thread from there to the line. */
function tagSigns({ axis, at, ends, paper, side }: StrokeStep, pixel: number): readonly Sign[] {
  if (at.count === "") return [];
  const [one, other] = ends.map((end) => (axis === "across" ? end.x : end.y));
  if (one === undefined || other === undefined) return [];
  const sheet = stretchAlong(paper, axis);
  const isOuterEnd = axis === "across" && side === "right";
  const edge = isOuterEnd ? sheet.to : sheet.from;
  const near = isOuterEnd ? Math.max(one, other) : Math.min(one, other);
  const thread: Stretch = { from: edge, to: near };
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
    textSign("tag-count", { x, y, text: count, anchor: "middle", size }),
  ];
}

interface Words extends Point {
  readonly text: string;
  readonly anchor: "start" | "middle" | "end";
  readonly size: number;
}

/** Text whose middle lies at a point of its line. */
function textSign(name: string, { x, y, text, anchor, size }: Words): Sign {
  const place = numbers({ x, y: y + BASELINE * size, "font-size": size });
  return {
    name: "text",
    attributes: { class: `along-${name}`, "text-anchor": anchor, ...place },
    text,
  };
}

function numbers(values: Readonly<Record<string, number>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(values).map(([key, value]) => [key, formatNumber(value)]),
  );
}
