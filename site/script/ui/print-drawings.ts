/** Prints drawings in true size and nothing else of the page, by its own buttons and by the browser's own command. */
import { makeElement } from "./make-element.ts";

/** What is printed: pages of markup, and the classes that choose their sheet. */
export interface PrintOut {
  readonly sheet: string;
  /** Each on a page of its own. */
  readonly pages: readonly Element[];
}

/**
 * Prints what `usual` makes whenever the browser is told to print, else the page as it is; the answer prints something
 * else once.
 */
export function openPrinting(window: Window, usual?: () => PrintOut): (out: PrintOut) => void {
  let takeAway: (() => void) | undefined;
  const lay = (out: PrintOut) => {
    takeAway?.();
    takeAway = layOut(window.document, out);
  };
  window.addEventListener("beforeprint", () => {
    if (!takeAway && usual) lay(usual());
  });
  window.addEventListener("afterprint", () => {
    takeAway?.();
    takeAway = undefined;
  });
  return (out) => {
    lay(out);
    window.print();
  };
}

/** Puts the pages into the document; what it gives takes them away again. */
function layOut({ body }: Document, { sheet, pages }: PrintOut): () => void {
  const place = makeElement("div", { class: "print-out plate" }, ...pages);
  const before = body.className;
  body.append(place);
  // The page's own sheet, if it has one, must not overrule the chosen one.
  body.className = `${sheet} printing-out`;
  return () => {
    place.remove();
    body.className = before;
  };
}
