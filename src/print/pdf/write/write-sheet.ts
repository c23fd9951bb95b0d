/** One sheet as one page of a PDF file: its size, its scale, its parts and their meaning. */
import type { PdfStructure } from "pdfkit";
import { sheetMatrix } from "../../../draw/print-marks/placed-drawing.ts";
import { correctionFor, type PrinterCorrection } from "../../printer-correction.ts";
import type { Sheet, SheetLink, SheetPart } from "../../sheets/sheet.ts";
import { decimal } from "./operators.ts";
import type { PdfWriter } from "./pdf-writer.ts";
import { writeMarks } from "./write-marks.ts";

/** PDF counts in points of 1/72 inch. */
const POINTS_PER_MM = 72 / 25.4;
/** SVG's own limit, so that corners look alike on screen and paper. */
const MITER_LIMIT = 4;

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
}

/** Words of the structure (ISO 32000-1, 14.8.4); furniture is no part of it. */
const TYPES = { figure: "Figure", heading: "H1", line: "P" } as const;

function drawPart(writer: PdfWriter, part: SheetPart, section: PdfStructure): void {
  const { pdf } = writer;
  if (part.kind === "artifact") {
    pdf.markContent("Artifact");
    writeMarks(writer, part.marks);
    pdf.endMarkedContent();
    return;
  }
  const structure = pdf.struct(
    TYPES[part.kind],
    part.kind === "figure" ? { alt: part.description } : {},
  );
  section.add(structure);
  if (part.kind === "figure") structure.add(() => drawFigure(writer, part));
  else if (part.link) drawLink(writer, { ...part, link: part.link }, structure);
  else structure.add(() => writeMarks(writer, part.marks));
  structure.end();
}

type Line = Exclude<SheetPart, { readonly kind: "figure" | "artifact" }>;

/** Its words and where it is pressed are one link (ISO 32000-1, 14.8.4.4.2), and it says where it leads (12.5.2, Contents). */
function drawLink(
  writer: PdfWriter,
  { marks, link: { area, page, title } }: Line & { readonly link: SheetLink },
  line: PdfStructure,
): void {
  const { pdf } = writer;
  const link = pdf.struct("Link");
  line.add(link);
  link.add(() => writeMarks(writer, marks));
  // PDFKit writes an object of this kind as text, and what is a string by itself as a name.
  const contents = Object(title);
  pdf.goTo(area.x, area.y, area.width, area.height, pageName(page), {
    structParent: link,
    Contents: contents,
  });
  link.end();
}

type Figure = Extract<SheetPart, { readonly kind: "figure" }>;

function drawFigure(writer: PdfWriter, { marks, penScale, lies }: Figure): void {
  const { pdf } = writer;
  pdf.save();
  if (lies) pdf.addContent(`${sheetMatrix(lies.frame, lies.place).map(decimal).join(" ")} cm`);
  writeMarks(writer, marks, penScale);
  pdf.restore();
}

function pageName(index: number): string {
  return `page-${index}`;
}
