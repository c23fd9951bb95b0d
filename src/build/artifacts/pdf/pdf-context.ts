/** What the PDF files of one content are made from; what several files show is worked out once. */
import { type Drawings, rememberDrawings } from "../../../print/sheets/drawing-cache.ts";
import type { Strip } from "../../../strip/strip.ts";
import { openPlanner, type Planner } from "../../../view/planner.ts";
import type { Content } from "../../content/load-content.ts";

export interface PdfContext {
  readonly content: Content;
  readonly planner: Planner;
  readonly drawings: Drawings;
}

/** A context for files in the order of `pdfFiles`: it keeps what belongs to one notebook, and the last strip. */
export function openPdfContext(content: Content): PdfContext {
  const planner = openPlanner(content);
  return {
    content,
    planner: { ...planner, stripOn: rememberLast(planner.stripOn) },
    drawings: rememberDrawings(),
  };
}

type StripOn = (strip: string, notebook: string) => Strip;

/** Files of one strip come one after another. */
function rememberLast(stripOn: StripOn): StripOn {
  let last: { readonly slugs: string; readonly strip: Strip } | undefined;
  return (slug, notebook) => {
    // No slug has a space.
    const slugs = `${slug} ${notebook}`;
    if (last?.slugs !== slugs) last = { slugs, strip: stripOn(slug, notebook) };
    return last.strip;
  };
}
