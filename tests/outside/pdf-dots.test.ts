/** Rows of dots as three readers draw them: a dash of no length is no dot to one of them. */
import { describe, expect, it } from "vitest";
import { pagePlace } from "../../src/draw/geometry/page-place.ts";
import { gridMarks } from "../../src/draw/page/grid-marks.ts";
import { writePdf } from "../../src/print/pdf/write-pdf.ts";
import { NOTEBOOKS, SETTINGS } from "../print/demo-book.ts";
import type { GreyPicture } from "../print/grey-picture.ts";
import { drawnByMupdf } from "../print/mupdf.ts";
import { drawnByPdfium, drawnByPoppler, missOf } from "../print/pdfium.ts";

/** In millimetres. */
const TRUE_TO = 0.05;
const DPI = 300;

function gridPdf(place: ReturnType<typeof pagePlace>): Promise<Uint8Array> {
  const { width, height } = place.paper;
  const part = { kind: "artifact", marks: gridMarks(place, "dots") } as const;
  const page = { title: "Dots", width, height, parts: [part] };
  return writePdf({ ...SETTINGS, title: "Dots", pages: [page] });
}

type Draw = (pdf: Uint8Array, paper: { width: number; height: number }) => Promise<GreyPicture>;

const DOTTED = NOTEBOOKS.filter(({ ruling }) => ruling === "dots");

describe.each<[string, Draw]>([
  ["PDFium", (pdf, paper) => drawnByPdfium(pdf, DPI, { paper })],
  ["poppler", (pdf) => drawnByPoppler(pdf, DPI)],
  ["mupdf", (pdf) => drawnByMupdf(pdf, DPI)],
])("the dots that %s draws", (_, draw) => {
  it.each(DOTTED.map((one) => [one.slug, one] as const))(
    "for %s lie where the notebook has them",
    async (...[, notebook]) => {
      const place = pagePlace(notebook, 0);
      const picture = await draw(await gridPdf(place), place.paper);
      const misses = place.dots.down.flatMap((y) =>
        place.dots.across.map((x) => missOf(picture, x, y)),
      );
      expect(Math.max(...misses)).toBeLessThan(TRUE_TO);
    },
  );
});
