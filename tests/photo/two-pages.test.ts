/** A photo of two pages, drawn dot by dot: one of them is counted or none, never both as one. */
import { describe, expect, it } from "vitest";
import type { Grey } from "../../src/photo/grey.ts";
import { countedIn } from "./stage/tally.ts";

const STEP = 20;
const SIZE = { width: 800, height: 500 };

/** Pages of 14 by 18 dots, the first dots of the second so many steps from the last ones of the first; a fold between them. */
function twoPages(apart: number, fold: number | undefined): Grey {
  const at = new Uint8Array(SIZE.width * SIZE.height).fill(225);
  const dab = (x: number, y: number, shade: number) => {
    for (let dy = -1; dy <= 1; dy++)
      for (let dx = -1; dx <= 1; dx++) at[(Math.round(y) + dy) * SIZE.width + x + dx] = shade;
  };
  for (let row = 0; row < 18; row++)
    for (let column = 0; column < 28; column++) {
      const steps = column < 14 ? column : column - 1 + apart;
      dab(Math.round(80 + steps * STEP), 60 + row * STEP, 120);
    }
  const x = Math.round(80 + (13 + apart / 2) * STEP);
  for (let y = 20; fold !== undefined && y < SIZE.height - 20; y++) dab(x, y, fold);
  return { ...SIZE, at };
}

describe("two pages", () => {
  it.each([
    [2, undefined],
    [2, 170],
    [2, 60],
    [2.5, 170],
    [3, undefined],
    [3, 100],
    [4, 100],
  ])("%f steps apart, with a fold of shade %s", (apart, fold) => {
    const counted = countedIn(twoPages(apart, fold));
    const grid = counted.ok && counted.of === "grid" ? counted.grid : undefined;
    const across = grid ? grid.across : 14;
    expect(across).toBe(14);
    if (counted.ok) expect(grid?.down).toBe(18);
    else expect(["bare-line", "unsure-end"]).toContain(counted.doubt.kind);
  });
});
