/** Where long strips are joined: beside everything that is written, on all the book's strips and on any others. */
import { describe, expect, it } from "vitest";
import { stripBodies } from "../../src/draw/strip/strip-body.ts";
import { textInterval } from "../../src/draw/strip/strip-clip.ts";
import { writeStripMarks } from "../../src/draw/strip/strip-mark.ts";
import { OVERLAP, stripPieces } from "../../src/draw/strip/strip-pieces.ts";
import type { Strip } from "../../src/strip/strip.ts";
import { NOTEBOOKS, stripsOf } from "../print/demo-book.ts";
import { sampleStrips } from "../strip/arbitrary-strip.ts";
import { textsOf, uprights } from "./strip-lines.ts";

const WRITTEN = ["count", "total", "lane-text", "lane-letter", "note", "heading"] as const;

/** What a joint runs through, and how near it comes to a tick, in millimetres. */
function jointsOf(strip: Strip, printable: number) {
  const bodies = stripBodies(strip).filter(({ width }) => width > printable);
  return bodies.flatMap((body) => {
    const scene = { marks: writeStripMarks(body.marks) };
    const pieces = stripPieces(strip, printable, {}, [body]);
    let [cut, start] = [0, 0];
    const joined = {
      marks: pieces.flatMap(({ frame, marks }) => {
        const from = start;
        start += frame.width - OVERLAP;
        return marks.map((mark) => (mark.kind === "text" ? { ...mark, x: mark.x + from } : mark));
      }),
    };
    return pieces.slice(0, -1).map(({ frame }) => {
      cut += frame.width - OVERLAP;
      const through = textsOf(joined, ...WRITTEN).filter((text) => {
        const { from, to } = textInterval(text);
        return from < cut && cut < to;
      });
      const ticks = uprights(scene, "tick", "lane").map(({ x1 }) => Math.abs(x1 - cut));
      return { through: through.map(({ text }) => text), nearest: Math.min(...ticks) };
    });
  });
}

describe("a joint", () => {
  const book = NOTEBOOKS.flatMap((notebook) => stripsOf(notebook));

  it.each([
    ["A4", 265],
    ["letter", 248],
  ])("of the book's strips on %s runs through nothing", (_, printable) => {
    const joints = book.flatMap((strip) => jointsOf(strip, printable));
    expect(joints.length).toBeGreaterThan(5);
    expect(joints.flatMap(({ through }) => through)).toEqual([]);
    expect(Math.min(...joints.map(({ nearest }) => nearest))).toBeGreaterThan(0.7);
  });

  it("of any strip runs through a name only where no place is clear", () => {
    const printable = 170;
    const strips = sampleStrips(80, 1963).map(({ strip }) => strip);
    const joined = strips.map((strip) => ({ strip, joints: jointsOf(strip, printable) }));
    const joints = joined.flatMap((one) => one.joints);
    expect(joints.length).toBeGreaterThan(20);
    const bad = joined.filter((one) => one.joints.some(({ through }) => through.length > 0));
    expect(bad.length).toBeLessThan(joints.length / 4);
    for (const { strip } of bad) expect(clearPlaces(strip, printable)).toEqual([]);
  });
});

/** Tried one by one: where a strip in two pieces could be joined beside all names and ticks; numbers may go. */
function clearPlaces(strip: Strip, printable: number): readonly number[] {
  return stripBodies(strip).flatMap(({ width, marks }) => {
    const scene = { marks: writeStripMarks(marks) };
    const names = textsOf(scene, ...WRITTEN.filter((role) => role !== "count")).map(textInterval);
    const ticks = uprights(scene, "tick", "lane", "lane-cap").map(({ x1 }) => x1);
    const [least, most] = [width - printable, printable - OVERLAP];
    const places = Array.from({ length: Math.ceil((most - least) * 4) }, (_, at) => least + at / 4);
    return places.filter(
      (at) =>
        at >= 80 &&
        at <= width - 80 &&
        names.every(({ from, to }) => at < from - 0.2 || at > to + 0.2) &&
        ticks.every((x) => Math.abs(x - at) > 0.7),
    );
  });
}
