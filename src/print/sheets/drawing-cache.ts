/** Drawings that are printed in more than one file, kept as long as the plans and strips that they show. */
import { type DrawnPages, drawPages, type PageDrawing } from "../../draw/page/page-scene.ts";
import type { Scene } from "../../draw/scene.ts";
import { type StripBody, stripBodies } from "../../draw/strip/strip-body.ts";
import { stripPieces } from "../../draw/strip/strip-pieces.ts";
import type { PlanPage } from "../../plan/plan.ts";
import type { Strip } from "../../strip/strip.ts";

export interface Drawings {
  /** What is on one page of a plan of one recipe on one notebook: in a file of its own, and in the book. */
  page(page: PlanPage, drawing: PageDrawing): DrawnPages;
  /** The pieces of a strip in its usual look, none longer than `printable`. */
  pieces(strip: Strip, printable: number): readonly Scene[];
}

/** Draws each page and each strip once; a strip is cut anew for each paper. */
export function rememberDrawings(): Drawings {
  const pages = new WeakMap<PlanPage, DrawnPages>();
  const strips = new WeakMap<Strip, readonly StripBody[]>();
  return {
    page(page, drawing) {
      const drawn = pages.get(page) ?? drawPages(drawing);
      pages.set(page, drawn);
      return drawn;
    },
    pieces(strip, printable) {
      const bodies = strips.get(strip) ?? stripBodies(strip);
      strips.set(strip, bodies);
      return stripPieces(strip, printable, {}, bodies);
    },
  };
}
