/** A notebook's numbers as elements of a page, as the templates of its built page have them. */
import type { AxisTables } from "../../../../src/view/notebook/axis-tables.ts";
import type { CountingRow, PartsCell } from "../../../../src/view/notebook/counting-table.ts";
import type { AxisFact } from "../../../../src/view/notebook/notebook-facts.ts";
import { makeElement } from "../../ui/make-element.ts";

const AXIS_WORDS = { across: "Across", down: "Down" } as const;

/** Across and down, a line for each fact. */
export function factsTable(facts: readonly AxisFact[]): HTMLElement {
  const heads = ["Across", "Down"].map((head) => makeElement("th", { scope: "col" }, head));
  const rows = facts.map(({ name, across, down }) =>
    makeElement(
      "tr",
      {},
      makeElement("th", { scope: "row" }, name),
      makeElement("td", {}, across),
      makeElement("td", {}, down),
    ),
  );
  const head = makeElement("thead", {}, makeElement("tr", {}, makeElement("td"), ...heads));
  return makeElement("table", { class: "figures" }, head, makeElement("tbody", {}, ...rows));
}

/** A heading, and the four ways side by side. */
export function waysOfCounting({ axis, counting, figures }: AxisTables): readonly HTMLElement[] {
  const id = `counting-${axis}`;
  const ways = counting.map((row, index) => wayElement(row, figures.counted[index] ?? ""));
  return [
    makeElement("h3", { id }, AXIS_WORDS[axis]),
    makeElement("ul", { class: "ways-of-counting", "aria-labelledby": `counting ${id}` }, ...ways),
  ];
}

function wayElement({ words, isOwn, steps, parts, middle }: CountingRow, svg: string): HTMLElement {
  const own = isOwn ? [" ", makeElement("small", {}, "this notebook")] : [];
  const names = ["Halves", "Thirds", "Quarters"];
  return makeElement(
    "li",
    { class: isOwn ? "way own" : "way" },
    makeElement("h4", {}, makeElement("span", {}, words), ...own),
    makeElement("p", { class: "numbers" }, makeElement("b", {}, `${steps}`), " steps"),
    plate(svg),
    makeElement(
      "dl",
      { class: "numbers" },
      ...parts.map((cell, index) => pairOf(names[index] ?? "", ...partsWords(cell))),
      pairOf("Middle", `${middle.positions} `, makeElement("small", {}, middle.mm)),
    ),
  );
}

function partsWords({ sum, leftover, mm, isAlike }: PartsCell): readonly (Node | string)[] {
  if (sum === "") return ["too few steps"];
  const over = leftover > 0 ? `, ${leftover} over` : "";
  return [`${sum}${over} `, makeElement("small", isAlike ? {} : { class: "unlike" }, mm)];
}

function pairOf(name: string, ...content: readonly (Node | string)[]): HTMLElement {
  return makeElement("div", {}, makeElement("dt", {}, name), makeElement("dd", {}, ...content));
}

/** A heading, and a picture for each gap. */
export function partFigures(tables: AxisTables): readonly HTMLElement[] {
  const figures = tables.figures.divisions.map((svg, index) => {
    const gap = capitalized(tables.even[index]?.gap ?? "");
    return makeElement("li", {}, plate(svg, makeElement("figcaption", {}, gap)));
  });
  return [
    makeElement("h3", {}, titleOf(tables)),
    makeElement("ul", { class: "part-figures" }, ...figures),
  ];
}

/** What comes out even, a line for each gap. */
export function evenList(tables: AxisTables): HTMLElement {
  const rows = tables.even.map(({ gap, sums }) => {
    const spans = sums.flatMap((sum) => [makeElement("span", {}, sum), " "]);
    return pairOf(capitalized(gap), ...(spans.length > 0 ? spans : ["none"]));
  });
  const list = makeElement("dl", { class: "evenly numbers" }, ...rows);
  return makeElement("div", {}, makeElement("h3", {}, titleOf(tables)), list);
}

/** One to sixteen parts by the gaps 0 to 3; a raised figure is what is left over. */
export function partTable(tables: AxisTables): HTMLElement {
  const heads = ["Parts", "Gap 0", "1", "2", "3"].map((head) =>
    makeElement("th", { scope: "col" }, head),
  );
  const rows = tables.divisions.map(({ count, cells }) =>
    makeElement(
      "tr",
      {},
      makeElement("th", { scope: "row" }, `${count}`),
      ...cells.map(({ part, leftover }) => {
        const isEven = part !== "" && leftover === 0;
        const raised = leftover > 0 ? [makeElement("sup", {}, `${leftover}`)] : [];
        return makeElement("td", isEven ? { class: "even" } : {}, part, ...raised);
      }),
    ),
  );
  const table = makeElement(
    "table",
    { class: "divisions" },
    makeElement("caption", {}, titleOf(tables)),
    makeElement("thead", {}, makeElement("tr", {}, ...heads)),
    makeElement("tbody", {}, ...rows),
  );
  return makeElement("div", { class: "table" }, table);
}

function titleOf({ axis, steps }: AxisTables): string {
  return `${AXIS_WORDS[axis]}, ${steps} steps`;
}

function capitalized(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

/** The writer escapes every text, so what it writes may be read as markup. */
function plate(svg: string, ...before: readonly HTMLElement[]): HTMLElement {
  const figure = makeElement("figure", { class: "plate" });
  figure.innerHTML = svg;
  figure.prepend(...before);
  return figure;
}
