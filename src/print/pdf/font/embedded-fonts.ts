/** The fonts in one document: of each, the glyphs that it shows (ISO 32000-1, 9.7). */
import type PDFDocument from "pdfkit";
import type { PdfReference } from "pdfkit";
import type { PrintFont, SetGlyph } from "./print-font.ts";
import type { PrintFonts } from "./print-fonts.ts";
import type { FoundRun } from "./set-line.ts";
import { writeFont } from "./write-font.ts";

export interface EmbeddedFonts {
  /** Notes what a page shows, which knows the font from then on by the name that it gives. */
  use(run: FoundRun): string;
  /** Writes the fonts; nothing may be shown afterwards. */
  end(): void;
}

/** A font that is in use. */
interface UsedFont {
  readonly name: string;
  readonly reference: PdfReference;
  readonly font: PrintFont;
  /** Subsets of one font are told apart by six letters (ISO 32000-1, 9.6.4). */
  readonly tag: string;
  readonly runs: Set<FoundRun>;
}

/** The fonts of a new document, none of them in use yet. */
export function createEmbeddedFonts(pdf: PDFDocument, fonts: PrintFonts): EmbeddedFonts {
  const used = { normal: new Map<number, UsedFont>(), bold: new Map<number, UsedFont>() };
  const open = ({ weight, font: place }: FoundRun): UsedFont => {
    const font = fonts[weight][place];
    if (!font) throw new RangeError(`there is no font ${place}`);
    const name = `${weight === "bold" ? "B" : "F"}${place}`;
    const tag = `AAAAA${String.fromCharCode("A".charCodeAt(0) + place)}`;
    const one = { name, reference: pdf.ref(), font, tag, runs: new Set<FoundRun>() };
    used[weight].set(place, one);
    return one;
  };
  return {
    use(run) {
      const { name, reference, runs } = used[run.weight].get(run.font) ?? open(run);
      runs.add(run);
      pdf.page.fonts[name] = reference;
      return name;
    },
    end() {
      for (const { reference, tag, font, runs } of [...used.normal.values(), ...used.bold.values()])
        writeFont({ pdf, reference, tag, face: font.face(), glyphs: glyphsOf(runs) });
    },
  };
}

/** One glyph for each code; a code that stands for different characters is read as the first. */
function glyphsOf(runs: ReadonlySet<FoundRun>): readonly SetGlyph[] {
  const glyphs = new Map<number, SetGlyph>();
  for (const run of runs)
    for (const glyph of run.glyphs) if (!glyphs.has(glyph.code)) glyphs.set(glyph.code, glyph);
  return [...glyphs.values()].sort((a, b) => a.code - b.code);
}
