/** Writes the marks as tables to copy, as the build writes them on a pattern's page. */
import type { MarksTable } from "../../../src/view/draw-along/marks-tables.ts";
import { makeElement } from "../page/make-element.ts";
import { bindCopying } from "./copy-marks.ts";

/** In place of what stands there: a table for each axis, with a button that copies it. */
export function writeMarks(place: HTMLElement, tables: readonly MarksTable[]): void {
  place.replaceChildren(
    makeElement("div", { class: "marks-tables" }, ...tables.map(marksTable)),
    makeElement("p", { class: "copied", role: "status" }),
  );
  bindCopying(place);
}

function marksTable({ title, rows }: MarksTable, index: number): HTMLElement {
  const id = `marks-${index + 1}`;
  const heads = ["Step", "Dot", "mm"].map((name) => makeElement("th", { scope: "col" }, name));
  const body = rows.map(({ steps, dot, mm }) =>
    makeElement(
      "tr",
      {},
      makeElement("th", { scope: "row" }, `${steps}`),
      makeElement("td", {}, `${dot}`),
      makeElement("td", {}, `${mm}`),
    ),
  );
  const table = makeElement(
    "table",
    { class: "marks-table", id },
    makeElement("caption", {}, title),
    makeElement("thead", {}, makeElement("tr", {}, ...heads)),
    makeElement("tbody", {}, ...body),
  );
  const unseen = makeElement("span", { class: "unseen" }, ` the marks ${title.toLowerCase()}`);
  const copy = makeElement("button", { type: "button", "data-copy": id }, "Copy", unseen);
  return makeElement("div", {}, table, copy);
}
