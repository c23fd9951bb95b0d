/** What sheets of paper say about themselves: how they are printed, checked, corrected and cut. */
import type { Axis } from "../../measure/axis.ts";
import { CUTTING_CAUTION } from "./cutting-caution.ts";

/** The one thing that must not be missed. */
export const ACTUAL_SIZE = "Print at 100 % (actual size)";

/** What is written on the bars that a sheet is checked with. */
export const BAR_WORDS = {
  card: "bank card",
  length: (mm: number) => `${mm} mm`,
  alone: (mm: number) => `A bar of ${mm} mm.`,
  description: (mm: number) => `A bar of ${mm} mm across and one down, which meet in a corner.`,
} as const;

/** What is written on the test sheet for a printer. */
export const TEST_SHEET = {
  title: "Test sheet for a printer",
  description:
    "A square of dots with two bars of 100 mm, and the place for a bank card, which lies askew between them.",
  place: "Lay the card here",
  notes: [
    "With a ruler: both bars are 100 mm long.",
    "With a photo: lay any card of the size of a bank card flat between the four corner marks. Take a photo of all the dots from straight above, from about 40 cm and zoomed in, in even light without a shadow. Open it on the measure page of the book.",
    "This sheet is printed without a correction.",
  ],
} as const;

/** What the bars along the bottom and the left of a sheet run along, as `printer` in book.yaml names it. */
export function sayBarNames(isWide: boolean): Readonly<Record<Axis, string>> {
  const [short, long] = ["short side: x", "long side: y"];
  return isWide ? { across: long, down: short } : { across: short, down: long };
}

/** The notes beside the bars, a paragraph each. */
export function saySheetNotes(
  bar: number,
  printer: { readonly x: number; readonly y: number },
  isCut: boolean,
): readonly string[] {
  return [
    `Measure both bars first: each is ${bar} mm long. A bank card laid into their corner reaches to the long ticks.`,
    `Where a bar is off, enter its length on the measure page; a publisher writes ${bar} divided by it into book.yaml. ${sayCorrection(printer)}`,
    ...(isCut ? [CUTTING_CAUTION.words] : []),
  ];
}

function sayCorrection({ x, y }: { readonly x: number; readonly y: number }): string {
  if (x === 1 && y === 1) return "Now x and y are 1.";
  return `This sheet is stretched by x ${x} and y ${y}: multiply by these.`;
}

/** The title of one of several sheets. */
export function saySheetTitle(title: string, number: number, count: number): string {
  return count === 1 ? title : `${title} (${number} of ${count})`;
}

/** The title of a further sheet of a list. */
export function sayFurtherTitle(title: string, number: number): string {
  return number === 1 ? title : `${title} (${number})`;
}

/** Which page of a spread a sheet shows. */
export function sayPageSide(side: "left" | "right"): string {
  return `${side} page`;
}

/** A line of a book's contents for a pattern without a page. */
export function sayMisfitRow(title: string): string {
  return `${title}: does not fit`;
}

/** The heading of the page that says why a pattern has none. */
export function sayMisfitHeading(pattern: string, notebook: string): string {
  return `${pattern} does not fit ${notebook}`;
}

/** How far from its edges a printer leaves a sheet bare, in millimetres (common practice, no source). */
const BARE = 6;

interface Correction {
  readonly x: number;
  readonly y: number;
}

/** That what is printed is stretched, in few words. */
export function sayCorrected({ x, y }: Correction): string {
  return `corrected: x ${x}, y ${y}`;
}

/** The line beside a printed drawing: its title, how it is corrected, and what may be missing. */
export function sayPrintLine(
  title: string,
  { correction, isCropped }: { readonly correction: Correction; readonly isCropped: boolean },
): string {
  const isCorrected = correction.x !== 1 || correction.y !== 1;
  return [
    title,
    ...(isCorrected ? [sayCorrected(correction)] : []),
    ...(isCropped ? [BARE_EDGES] : []),
  ].join(" · ");
}

/** What is said beside a drawing that is as large as its sheet. */
export const BARE_EDGES = `edges: most printers leave ${BARE} mm bare`;

/** How a page is going to print. */
export function sayPrinting(paper: string, { x, y }: Correction): string {
  if (x === 1 && y === 1)
    return `Prints on ${paper} at actual size, without a correction: none is kept on this device.`;
  return `Prints on ${paper} at actual size, corrected for your printer by x ${x} and y ${y}.`;
}
