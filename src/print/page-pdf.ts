/** The file `page.pdf`: a pattern's page in true size on the notebook's own paper, the page alone. */

import type { PrintFonts } from "./font/print-fonts.ts";
import { type PagesQuestion, pageSheets } from "./sheet/page-sheets.ts";
import type { Stretch } from "./stretch.ts";
import { writePdf } from "./write-pdf.ts";

/** What every file is printed with. */
export interface PrintSettings {
  readonly fonts: PrintFonts;
  /** A language tag (BCP 47). */
  readonly language: string;
  readonly printer?: Stretch;
}

/** One page of the paper's exact size; of a spread the left page and then the right. */
export function pagePdf(question: PagesQuestion, settings: PrintSettings): Promise<Uint8Array> {
  const { recipe, notebook } = question;
  const pages = pageSheets(question);
  return writePdf({
    ...settings,
    pages,
    title: `${recipe.title} · ${notebook.title}`,
    isSpread: pages.length > 1,
  });
}
