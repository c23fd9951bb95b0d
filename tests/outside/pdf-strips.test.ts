/** Strips as another program measures them in the file that is printed. */
import { describe, expect, it } from "vitest";
import { stripBodies } from "../../src/draw/strip/strip-body.ts";
import { toMm } from "../../src/measure/length.ts";
import { stripPdf } from "../../src/print/pdf/pdf-files.ts";
import type { PrinterPaper } from "../../src/print/sheets/printer-paper.ts";
import { stripSheets } from "../../src/print/sheets/strip-sheets.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import { NOTEBOOKS, SETTINGS, stripsOf } from "../print/demo-book.ts";
import { joinPieces, readPieces, ticksAlong } from "../print/read-strip.ts";
import { checkSample } from "../sweep/sweep-size.ts";

/** In millimetres. */
const TRUE_TO = 0.05;

const all = NOTEBOOKS.map(({ slug }) => slug);

describe.each<[PrinterPaper, readonly string[]]>([
  ["A4", all],
  ["letter", ["letter", "a5", "a4"]],
])("printed on %s", (paper, notebooks) => {
  const cases = NOTEBOOKS.filter(({ slug }) => notebooks.includes(slug)).flatMap((notebook) =>
    stripsOf(notebook).map((strip) => [strip.slug, notebook.slug, strip] as const),
  );

  it.each(checkSample(cases))(
    "%s for %s has its ticks where the paper has the positions",
    async (...[, , strip]) => {
      const question = { title: strip.title, strips: [strip], paper };
      expect(stripSheets(question).leftOut).toEqual([]);
      const pieces = readPieces(await stripPdf(question, SETTINGS));
      const bodies = stripBodies(strip);
      const perBody = pieces.length / bodies.length;
      const cutOut = bodies.map((body, index) => {
        const whole = joinPieces(pieces.slice(index * perBody, (index + 1) * perBody));
        expect(Math.abs(whole.length - body.width)).toBeLessThan(TRUE_TO);
        expect(Math.abs(whole.height - body.height)).toBeLessThan(TRUE_TO);
        return whole;
      });
      for (const [index, side] of stripJson(strip).sides.entries()) {
        const [body] = cutOut.slice(bodies.length === 1 ? 0 : index);
        if (!body) throw new Error("a side has no piece");
        const ticks = ticksAlong(body, bodies.length === 1 && index === 1 ? "bottom" : "top");
        const missing = side.mm.filter(
          (mm) => !ticks.some((tick) => Math.abs(tick - mm) < TRUE_TO),
        );
        // A strip that is longer than the page along this side says where the page ends.
        const grid = strip.sides[index]?.grid;
        const places = [...side.mm, ...(grid ? [toMm(grid.paper)] : [])];
        const strange = ticks.filter((tick) => !places.some((mm) => Math.abs(tick - mm) < TRUE_TO));
        expect({ axis: side.axis, missing, strange }).toEqual({
          axis: side.axis,
          missing: [],
          strange: [],
        });
      }
    },
  );
});
