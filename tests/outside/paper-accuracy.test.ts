/** How true a printed strip can be: our own rounding beside the tolerance of a ruler. */
import { describe, expect, it } from "vitest";
import { formatNumber } from "../../src/draw/geometry/path-data.ts";
import { positionLength, usableSteps } from "../../src/measure/grid-axis.ts";
import { toMm } from "../../src/measure/length.ts";
import { stripPdf } from "../../src/print/pdf/pdf-files.ts";
import { NOTEBOOKS, notebookOf, SETTINGS, stripsOf } from "../print/demo-book.ts";
import { readPieces, ticksAlong } from "../print/read-strip.ts";

/**
 * A material measure of length of class II: between two marks ±(a + bL) mm with a = 0.3, b = 0.2 and L the length
 * rounded up to whole metres, and between marks from 1 to 10 mm apart 0.4 mm. OIML R 35-1, as Directive 2014/32/EU,
 * annex X (MI-008), chapter I, has it.
 */
const CLASS_TWO = { marks: (metres: number) => 0.3 + 0.2 * Math.ceil(metres), neighbours: 0.4 };
/** No strip is a metre long, so one number holds for all of them. */
const RULER = CLASS_TWO.marks(0.3);

describe("our rounding", () => {
  it("is compared with half a millimetre between any two marks of a ruler", () => {
    expect(RULER).toBe(0.5);
    expect(CLASS_TWO.neighbours).toBe(0.4);
  });

  it("is nothing in the engine: positions are whole nanometres", () => {
    for (const { axes } of NOTEBOOKS)
      for (const axis of [axes.across, axes.down])
        for (let k = 0; k <= usableSteps(axis); k++)
          expect(Number.isInteger(positionLength(axis, k))).toBe(true);
  });

  it("is at most half a thousandth of a millimetre for each number of a drawing", () => {
    const errors = NOTEBOOKS.flatMap(({ axes }) =>
      [axes.across, axes.down].flatMap((axis) =>
        Array.from({ length: usableSteps(axis) + 1 }, (_, k) => {
          const mm = toMm(positionLength(axis, k));
          return Math.abs(Number(formatNumber(mm)) - mm);
        }),
      ),
    );
    expect(Math.max(...errors)).toBeLessThanOrEqual(0.0005 + 1e-12);
  });

  it.each(["a5", "a6", "fine", "letter"])(
    "of a strip for %s is far below a tenth of a ruler's between any two ticks, as poppler measures it",
    async (slug) => {
      for (const strip of stripsOf(notebookOf(slug))) {
        const question = { title: strip.title, strips: [strip], paper: "A4" } as const;
        const [piece] = readPieces(await stripPdf(question, SETTINGS));
        const [side] = strip.sides;
        if (!piece || !side) throw new Error("no strip");
        const places = Array.from({ length: side.steps + 1 }, (_, k) =>
          toMm(positionLength(side.grid, k)),
        );
        // The end of the page has a mark, too, where no position is.
        places.push(toMm(side.grid.paper));
        const errors = ticksAlong(piece, "top").map((tick) => tick - nearest(tick, places));
        const between = Math.max(...errors) - Math.min(...errors);
        expect(errors.length).toBeGreaterThan(20);
        expect(between).toBeLessThan(RULER / 10);
        // What is measured is mostly the measuring: cairo counts in 1/256 point, which is 0.0014 mm.
        expect(between).toBeLessThan(0.006);
      }
    },
  );
});

function nearest(tick: number, places: readonly number[]): number {
  return places.reduce((best, place) =>
    Math.abs(place - tick) < Math.abs(best - tick) ? place : best,
  );
}
