/** One sheet as one page of a PDF file: its size, its scale, its parts and their meaning. */
import type { PdfStructure } from "pdfkit";
import { sheetMatrix } from "../../../draw/print-marks/placed-drawing.ts";
import { correctionFor, type PrinterCorrection } from "../../printer-correction.ts";
import type { Sheet, SheetPart } from "../../sheets/sheet.ts";
import { decimal } from "./operators.ts";
import type { PdfWriter } from "./pdf-writer.ts";
import { writeMarks } from "./write-marks.ts";

/** PDF counts in points of 1/72 inch. */
const POINTS_PER_MM = 72 / 25.4;
/** SVG's own limit, so that corners look alike on screen and paper. */
const MITER_LIMIT = 4;

const ASCII = new TextEncoder();

interface PageQuestion {
  readonly page: Sheet;
  readonly index: number;
  readonly document: PdfStructure;
  readonly printer: PrinterCorrection;
}

/** The paper keeps its size; what is drawn on it is stretched from the top left corner, from which positions are counted. */
export function writeSheet(
  writer: PdfWriter,
  { page, index, document, printer }: PageQuestion,
): void {
  const { pdf } = writer;
  const { x, y } = correctionFor(page, printer);
  const size = [page.width * POINTS_PER_MM, page.height * POINTS_PER_MM] as const;
  pdf.addPage({ size, margin: 0 });
  pdf.addNamedDestination(pageName(index));
  pdf.scale(x * POINTS_PER_MM, y * POINTS_PER_MM).miterLimit(MITER_LIMIT);
  const section = pdf.struct("Sect", { title: page.title });
  document.add(section);
  for (const part of page.parts) drawPart(writer, part, section);
  section.end();
  for (const { area, page: target } of page.links ?? [])
    pdf.goTo(area.x, area.y, area.width, area.height, pageName(target));
}

/** Words of the structure (ISO 32000-1, 14.8.4); furniture is no part of it. */
const TYPES = { figure: "Figure", heading: "H1", line: "P" } as const;

function drawPart(writer: PdfWriter, part: SheetPart, section: PdfStructure): void {
  const { pdf } = writer;
  // Bytes, because PDFKit turns a text into them letter by letter.
  const content = ASCII.encode(partOperators(writer, part));
  const draw = (): void => {
    pdf.addContent(content);
  };
  if (part.kind === "artifact") {
    pdf.markContent("Artifact");
    draw();
    pdf.endMarkedContent();
    return;
  }
  const structure = pdf.struct(
    TYPES[part.kind],
    part.kind === "figure" ? { alt: part.description } : {},
  );
  section.add(structure);
  structure.add(draw);
  structure.end();
}

function partOperators(writer: PdfWriter, part: SheetPart): string {
  if (part.kind !== "figure") return writeMarks(writer, part.marks);
  const operators = writeMarks(writer, part.marks, part.penScale);
  if (!part.lies) return operators;
  const matrix = sheetMatrix(part.lies.frame, part.lies.place).map(decimal).join(" ");
  return `q\n${matrix} cm\n${operators}Q\n`;
}

function pageName(index: number): string {
  return `page-${index}`;
}
