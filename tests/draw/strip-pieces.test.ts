import { describe, expect, it } from "vitest";
import { OVERLAP, stripPieces } from "../../src/draw/strip/strip-pieces.ts";
import { stripScene } from "../../src/draw/strip/strip-scene.ts";
import { EVERYDAY } from "./strip-everyday.ts";
import { pathsOf, segmentsOf, textsOf, uprights } from "./strip-lines.ts";

const WHOLE = stripScene(EVERYDAY);
const LENGTH = WHOLE.frame.width - 4;

describe("a strip that can be printed", () => {
  const pieces = stripPieces(EVERYDAY, LENGTH);

  it("is one piece with its frame on the cut", () => {
    expect(pieces).toHaveLength(1);
    expect(pieces[0]?.frame).toEqual({ x: 0, y: 0, width: LENGTH, height: 30 });
    expect(pieces[0]?.title).toBe("Everyday strip for 26 × 38");
  });

  it("has the marks of the whole, and no joint", () => {
    expect(pieces[0]?.marks).toEqual(WHOLE.marks);
    expect(pathsOf(pieces[0] ?? WHOLE, "joint")).toEqual([]);
  });

  it("is a piece for each strip where there are two", () => {
    expect(stripPieces({ ...EVERYDAY, make: "two" }, LENGTH)).toHaveLength(2);
  });
});

describe("a strip that is too long", () => {
  const printable = 150;
  const [first, second, ...others] = stripPieces(EVERYDAY, printable);
  if (!first || !second) throw new Error("the strip is cut in two");
  const cut = first.frame.width - OVERLAP;

  it("is cut in two pieces that can be printed and overlap", () => {
    expect(others).toEqual([]);
    for (const { frame } of [first, second]) {
      expect(frame.width).toBeLessThanOrEqual(printable);
      expect(frame.height).toBe(30);
    }
    expect(cut + second.frame.width).toBe(LENGTH);
  });

  it("has titles and ids that tell the pieces apart", () => {
    expect([first, second].map(({ title }) => title)).toEqual([
      "Everyday strip for 26 × 38, piece 1 of 2",
      "Everyday strip for 26 × 38, piece 2 of 2",
    ]);
    expect(first.id).not.toBe(second.id);
  });

  it("has every tick in its place, once or where the pieces overlap twice", () => {
    const joined = [
      ...uprights(first, "tick", "lane").map((tick) => tick.x1),
      ...uprights(second, "tick", "lane").map((tick) => tick.x1 + cut),
    ];
    const rounded = new Set(joined.map((x) => Math.round(x * 1000)));
    const whole = new Set(
      uprights(WHOLE, "tick", "lane").map((tick) => Math.round(tick.x1 * 1000)),
    );
    expect(rounded).toEqual(whole);
  });

  it("is cut clear of ticks and numbers", () => {
    const places = uprights(WHOLE, "tick", "lane").map(({ x1 }) => x1);
    expect(Math.min(...places.map((x) => Math.abs(x - cut)))).toBeGreaterThan(0.5);
  });

  it("shows on both pieces where they meet", () => {
    expect(pathsOf(first, "fold").flatMap(segmentsOf)).toEqual([
      { x1: cut, y1: 0, x2: cut, y2: 30 },
    ]);
    const [whole, half] = [first, second].map((piece) =>
      pathsOf(piece, "joint")
        .flatMap(segmentsOf)
        .map(({ x2 }) => x2),
    );
    expect([Math.min(...(whole ?? [])), Math.max(...(whole ?? []))]).toEqual(
      [cut - 0.9, cut + 0.9].map((x) => expect.closeTo(x, 3)),
    );
    expect([Math.min(...(half ?? [])), Math.max(...(half ?? []))]).toEqual([0, 0.9]);
  });

  it("has every word of the whole on one of its pieces", () => {
    const roles = ["count", "total", "lane-text", "lane-letter", "note", "heading"] as const;
    const joined = [first, second].flatMap((piece) => textsOf(piece, ...roles));
    const words = new Set(joined.map(({ text }) => text));
    expect(words).toEqual(new Set(textsOf(WHOLE, ...roles).map(({ text }) => text)));
  });
});
