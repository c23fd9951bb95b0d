/** What a browser measured of a strip, against the places that `strip.json` gives. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import type { Axis } from "../../src/measure/axis.ts";
import type { StripJson } from "../../src/strip/strip-json.ts";
import { type DrawnLine, linesAlong } from "./drawn-lines.ts";

/** In millimetres. */
const TRUE_TO = 0.05;
/** Lines that meet an edge do so to a fraction of a pixel, in millimetres. */
export const ON_EDGE = 0.02;

/** Places that should be there and are not, and places that are there and should not be. */
export function differences(found: readonly number[], right: readonly number[], allowed = right) {
  const isIn = (places: readonly number[]) => (place: number) =>
    places.some((other) => Math.abs(other - place) <= TRUE_TO);
  return {
    missing: right.filter((place) => !isIn(found)(place)),
    strange: found.filter((place) => !isIn(allowed)(place)),
  };
}

/** No difference. */
export const NONE = { missing: [], strange: [] };

/** How far along its side each tick stands that reaches the side's edge: the second side of one piece is turned round. */
function ticksOf(lines: readonly DrawnLine[], axis: Axis): readonly number[] {
  const [first, second] = lines
    .filter(({ role }) => role === "cut")
    .toSorted((a, b) => a.top - b.top);
  if (!first) throw new Error("the strip has no cut");
  const body = axis === "down" && second ? second : first;
  const isTurned = axis === "down" && !second;
  const ticks = linesAlong("down", lines).filter(
    ({ role, top, bottom }) =>
      ["tick", "lane"].includes(role) &&
      (isTurned ? Math.abs(bottom - body.bottom) : Math.abs(top - body.top)) < ON_EDGE,
  );
  return ticks.map(({ left, right }) => {
    const at = (left + right) / 2;
    return isTurned ? body.right - at : at - body.left;
  });
}

/** A strip of a built book. */
export interface BookStrip {
  readonly book: string;
  readonly strip: string;
  readonly notebook: string;
}

/** Every tick stands where `strip.json` has it, and no other does. */
export function expectTicks(
  lines: readonly DrawnLine[],
  { book, strip, notebook }: BookStrip,
): void {
  const jsonOf = (path: string) => JSON.parse(readFileSync(join(book, path), "utf8"));
  const { sides }: StripJson = jsonOf(`strips/${strip}/${notebook}/strip.json`);
  const { paper } = jsonOf(`notebooks/${notebook}/notebook.json`);
  for (const { axis, mm } of sides) {
    const ticks = ticksOf(lines, axis);
    // A broken line at the end of the paper is no position.
    expect({ axis, ...differences(ticks, mm, [...mm, paper[axis]]) }).toEqual({ axis, ...NONE });
  }
}
