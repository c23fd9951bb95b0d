/** Prints drawings in true size and nothing else of the page. */
import { makeElement } from "./make-element.ts";

/** What is printed: pages of markup, and the class that chooses their sheet. */
export interface PrintOut {
  readonly sheet: string;
  /** Each on a page of its own. */
  readonly pages: readonly Element[];
}

/** Puts the pages into the document for as long as the print lasts. */
export function printOut(window: Window, { sheet, pages }: PrintOut): void {
  const { body } = window.document;
  const place = makeElement("div", { class: "print-out plate" }, ...pages);
  const classes = [...sheet.split(" "), "printing-out"];
  body.append(place);
  body.classList.add(...classes);
  const end = () => {
    place.remove();
    body.classList.remove(...classes);
  };
  window.addEventListener("afterprint", end, { once: true });
  window.print();
}
