/** What PDFium, the reader inside of Chromium, draws of a PDF: a second opinion beside poppler's. */
import { type PDFiumDocument, PDFiumLibrary } from "@hyzyla/pdfium";
import { type GreyPicture, greyPicture } from "./grey-picture.ts";
import { readPicture } from "./poppler.ts";

const MM_PER_POINT = 25.4 / 72;

/** Which page, from 1, and how large it is in millimetres. */
interface PageOf {
  readonly paper: { readonly width: number; readonly height: number };
  readonly page?: number;
}

/** A page of a file at so many dots per inch or a little more: PDFium stretches a page to whole points. */
export function drawnByPdfium(
  pdf: Uint8Array,
  dpi: number,
  { paper, page = 1 }: PageOf,
): Promise<GreyPicture> {
  return withPdfium(pdf, async (document) => {
    const drawn = await document.getPage(page - 1).render({ scale: dpi / 72, render: "bitmap" });
    const { width, height, data } = drawn;
    const perPixel = data.length / (width * height);
    return {
      greyAt: (x, y) => data[(y * width + x) * perPixel] ?? 255,
      across: width / paper.width,
      down: height / paper.height,
    };
  });
}

/** Width and height of each page in millimetres, and the text of all. */
export function readByPdfium(pdf: Uint8Array): Promise<{
  readonly sizes: readonly (readonly [number, number])[];
  readonly text: string;
}> {
  return withPdfium(pdf, async (document) => {
    const pages = [...document.pages()];
    return {
      sizes: pages.map((page) => {
        const { originalWidth, originalHeight } = page.getOriginalSize();
        return [originalWidth * MM_PER_POINT, originalHeight * MM_PER_POINT];
      }),
      text: pages.map((page) => page.getText()).join("\n"),
    };
  });
}

async function withPdfium<T>(
  pdf: Uint8Array,
  read: (document: PDFiumDocument) => Promise<T>,
): Promise<T> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(pdf);
  try {
    return await read(document);
  } finally {
    document.destroy();
    library.destroy();
  }
}

/** The same by poppler. */
export async function drawnByPoppler(pdf: Uint8Array, dpi: number, page = 1): Promise<GreyPicture> {
  return greyPicture(readPicture(pdf, dpi, { page, isMap: true }), dpi);
}

/** Around a place, in millimetres. */
const WINDOW = 0.7;

/** How far the ink around a place has its centre from it, in millimetres; infinitely far where there is none. */
export function missOf({ greyAt, across, down }: GreyPicture, x: number, y: number): number {
  const reach = Math.round(WINDOW * across);
  const [left, top] = [Math.round(x * across), Math.round(y * down)];
  let [ink, alongX, alongY] = [0, 0, 0];
  for (let py = top - reach; py <= top + reach; py += 1) {
    for (let px = left - reach; px <= left + reach; px += 1) {
      const dark = 255 - greyAt(px, py);
      ink += dark;
      alongX += dark * (px + 0.5);
      alongY += dark * (py + 0.5);
    }
  }
  if (ink === 0) return Number.POSITIVE_INFINITY;
  return Math.hypot(alongX / ink / across - x, alongY / ink / down - y);
}
