/** The bands beside the paper that hold the counts, and the frame that they make. All in millimetres. */
import type { Axis } from "../../measure/axis.ts";
import { otherAxis } from "../../measure/axis.ts";
import { pointAlong } from "../geometry/on-axis.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { intervalAlong, type Rect } from "../geometry/rect.ts";

/** How far from the paper's edge things stand. */
export const BAND = {
  tickStart: 1,
  tickEnd: 2.1,
  edgeTickEnd: 3,
  number: 3.9,
  numberSize: 2.5,
  /** A number, the ticks and some air. */
  depth: 10,
  /** The side that carries no counts. */
  bare: 3.5,
  keyLine: 3.8,
} as const;

/** A side of the paper beside which one axis is counted: top and left are `start`. */
export interface BandSide {
  readonly place: PagePlace;
  readonly axis: Axis;
  readonly end: "start" | "end";
  /** Where two pages meet, in millimetres along the axis. */
  readonly gutter?: number;
}

/** A point of a band, so far along its axis and so far outside of the paper. */
export function bandPoint({ place, axis, end }: BandSide, along: number, out: number) {
  const sheet = intervalAlong(place.paper, otherAxis(axis));
  return pointAlong(axis, along, end === "start" ? sheet.from - out : sheet.to + out);
}

/** The bands of a drawing: every page is counted along its top, and along its outer side (a single one at the left). */
export function bandSides(places: readonly PagePlace[]): readonly BandSide[] {
  const gutter = places.length > 1 ? { gutter: places[1]?.paper.x ?? 0 } : {};
  return places.flatMap((place, index): readonly BandSide[] => [
    { place, axis: "across", end: "start", ...gutter },
    { place, axis: "down", end: index === 0 ? "start" : "end" },
  ]);
}

/** The sides without counts: they carry the middles alone, so that a straight edge finds both ends. */
export function bareSides(places: readonly PagePlace[]): readonly BandSide[] {
  return places.flatMap((place): readonly BandSide[] => [
    { place, axis: "across", end: "end" },
    ...(places.length === 1 ? [{ place, axis: "down", end: "end" } as const] : []),
  ]);
}

/** The papers of all pages as one rectangle. */
export function papersRect(places: readonly PagePlace[]): Rect {
  const papers = places.map(({ paper }) => paper);
  const right = Math.max(...papers.map(({ x, width }) => x + width));
  const height = Math.max(...papers.map((paper) => paper.height));
  return { x: 0, y: 0, width: right, height };
}

/** How much the key below the paper takes. */
export interface KeySize {
  readonly lines: number;
  readonly width: number;
}

export const NO_KEY: KeySize = { lines: 0, width: 0 };

/** The papers with the bands around them and the key below, which can be wider than a very small paper. */
export function bandedFrame(places: readonly PagePlace[], key: KeySize): Rect {
  const papers = papersRect(places);
  const right = places.length > 1 ? BAND.depth : BAND.bare;
  const bottom = BAND.bare + (key.lines > 0 ? key.lines * BAND.keyLine + 1.4 : 0);
  return {
    x: -BAND.depth,
    y: -BAND.depth,
    width: BAND.depth + Math.max(papers.width, key.width) + right,
    height: BAND.depth + papers.height + bottom,
  };
}
