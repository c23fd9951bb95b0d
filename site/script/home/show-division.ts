/** The answer to a division: in words, as a table to count by, as the page with its lines, and as data. */
import { gridScene } from "../../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../../src/draw/page/page-scene.ts";
import type { Scene } from "../../../src/draw/scene.ts";
import {
  type PartRow,
  partRows,
  sayDivision,
  sayDivisionLeftover,
  sayNoDivision,
} from "../../../src/issue/words/say-division.ts";
import { usableSteps } from "../../../src/measure/grid-axis.ts";
import { divisionJson } from "../../../src/view/division/division.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { Draw } from "../ui/show-drawing.ts";
import type { HomeState, HomeStore } from "./home-store.ts";

/** Follows the store. */
export function bindDivision(page: ParentNode, store: HomeStore, draw: Draw): void {
  const [answer, more, plate] = [
    partOf(page, "answer"),
    partOf(page, "answer-more"),
    partOf(page, "division-plate"),
  ];
  const table = theOne(page, '[data-part="division-parts"]', HTMLTableElement);
  const caption = partOf(page, "division-caption");
  const data = theOne(page, "#division-data", HTMLScriptElement);
  let last: unknown;
  store.subscribe((state) => {
    plate.classList.toggle("stale", state.issues.length > 0);
    if (state.worked === last) return;
    last = state.worked;
    const { worked, notebook } = state;
    data.textContent = divisionJson(worked);
    answer.textContent = answerWords(state);
    more.textContent = worked.answer ? sayDivisionLeftover(worked.answer) : "";
    table.hidden = !worked.answer;
    table.tBodies[0]?.replaceChildren(
      ...(worked.answer ? partRows(worked.answer).map(rowElement) : []),
    );
    draw.show(plate, divisionScene(state));
    caption.textContent = `${worked.recipe.title}, on ${notebook.title}`;
  });
}

/** The page with the division's lines; where it does not fit, the bare page. */
function divisionScene({ worked: { plan, recipe }, notebook }: HomeState): Scene {
  return plan.fits ? pageScene({ plan, recipe, notebook }) : gridScene(notebook);
}

function answerWords({ worked: { choice, answer }, notebook }: HomeState): string {
  if (answer) return sayDivision(choice, answer);
  const [before, after] = choice.margin;
  const steps = usableSteps(notebook.axes[choice.axis]);
  return sayNoDivision(choice, { margin: before + after, steps });
}

function rowElement({ steps, count, dots, mm }: PartRow, index: number): HTMLElement {
  return makeElement(
    "tr",
    {},
    makeElement("th", { scope: "row" }, `${index + 1}`),
    ...[steps, count, dots, mm].map((cell) => makeElement("td", {}, cell)),
  );
}
