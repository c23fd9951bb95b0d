/** Copies a table of marks, so that it can be put into a sheet of figures or a message. */
import type { MarksTable } from "../../../src/view/draw-along/marks-tables.ts";
import { makeElement } from "../ui/make-element.ts";

/** Enhances the buttons that copy, in a page or a part of it that holds their tables as well. */
export function bindCopying(part: ParentNode): void {
  const status = part.querySelector(".copied");
  for (const button of part.querySelectorAll<HTMLButtonElement>("[data-copy]")) {
    const table = part.querySelector(`#${button.dataset.copy}`);
    if (!(table instanceof HTMLTableElement)) continue;
    button.removeAttribute("data-enhance");
    button.addEventListener("click", async () => {
      const isCopied = await copyTable(table);
      if (status) status.textContent = isCopied ? COPIED : SELECTED;
    });
  }
}

const COPIED = "The marks are copied.";
const SELECTED = "The marks are selected: copy them with Ctrl and C, or with Command and C.";

/** The table's cells, a tab between two of them and each row on a line of its own. */
function tableText(table: HTMLTableElement): string {
  return [...table.rows]
    .map((row) => [...row.cells].map((cell) => cell.textContent?.trim() ?? "").join("\t"))
    .join("\n");
}

/** A browser may refuse: then the table is left selected for the keeper's own hand. */
async function copyTable(table: HTMLTableElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(tableText(table));
    return true;
  } catch {
    const selection = window.getSelection();
    selection?.removeAllRanges();
    const [first] = table.rows;
    const last = table.rows[table.rows.length - 1];
    if (!first || !last) return false;
    const range = document.createRange();
    range.setStartBefore(first);
    range.setEndAfter(last);
    selection?.addRange(range);
    return false;
  }
}

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
