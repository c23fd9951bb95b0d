/** Halves to twelfths with gaps of nought to three, ready to be chosen by a tap. */
import { equalParts, TABLE_GAPS } from "../../../src/divide/division-table.ts";
import { asSentence } from "../../../src/issue/words/say-count.ts";
import { sayParts } from "../../../src/issue/words/say-division.ts";
import { usableSteps } from "../../../src/measure/grid-axis.ts";
import type { DivisionChoice } from "../../../src/view/division/division.ts";
import { makeElement } from "../ui/make-element.ts";
import { theOne } from "../ui/parts.ts";
import type { HomeState, HomeStore } from "./home-store.ts";

const FEWEST = 2;
const MOST = 12;

/** Follows direction, margin and notebook; what is asked is marked. */
export function bindDivisionTable(page: ParentNode, store: HomeStore): void {
  const table = theOne(page, '[data-part="division-table"]', HTMLTableElement);
  const choose = (parts: number, gap: number) =>
    store.update({ division: { ...store.state().asked.division, parts, gap } });
  let shown = Number.NaN;
  store.subscribe(({ asked: { division }, notebook }) => {
    const steps = freeSteps(division, notebook);
    if (steps !== shown) table.tBodies[0]?.replaceChildren(...tableRows(steps, choose));
    shown = steps;
    markAsked(table, division);
  });
}

/** What margins leave of the direction. */
function freeSteps({ axis, margin }: DivisionChoice, { axes }: HomeState["notebook"]): number {
  return Math.max(0, usableSteps(axes[axis]) - margin[0] - margin[1]);
}

function tableRows(
  steps: number,
  choose: (parts: number, gap: number) => void,
): readonly HTMLElement[] {
  return Array.from({ length: MOST - FEWEST + 1 }, (_, index) => FEWEST + index).map((parts) =>
    makeElement(
      "tr",
      {},
      makeElement("th", { scope: "row" }, asSentence(sayParts(parts))),
      ...TABLE_GAPS.map((gap) =>
        makeElement(
          "td",
          {},
          cellContent({ steps, parts, gap }, () => choose(parts, gap)),
        ),
      ),
    ),
  );
}

interface Cell {
  readonly steps: number;
  readonly parts: number;
  readonly gap: number;
}

/** A button that says to those who do not see its column what it stands for; what is seen is part of that. */
function cellContent({ steps, parts, gap }: Cell, choose: () => void): HTMLElement | string {
  const found = equalParts(steps, parts, gap);
  if (!found) return "–";
  const { part, leftover } = found;
  const unseen = (words: string) => makeElement("span", { class: "unseen" }, words);
  const over = [unseen(", "), makeElement("sup", {}, `${leftover}`), unseen(" left over")];
  const button = makeElement(
    "button",
    { type: "button", "data-parts": `${parts}`, "data-gap": `${gap}` },
    unseen(`${asSentence(sayParts(parts))}, gap ${gap}: `),
    `${part}`,
    unseen(` ${part === 1 ? "step" : "steps"}`),
    ...(leftover > 0 ? over : []),
  );
  if (leftover === 0) button.className = "even";
  button.addEventListener("click", choose);
  return button;
}

function markAsked(table: HTMLElement, { parts, gap }: DivisionChoice): void {
  for (const button of table.querySelectorAll("button")) {
    const isAsked = button.dataset.parts === `${parts}` && button.dataset.gap === `${gap}`;
    button.setAttribute("aria-pressed", `${isAsked}`);
  }
}
