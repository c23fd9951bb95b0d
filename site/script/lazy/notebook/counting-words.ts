/** How to count a notebook, once and right, with its own numbers. */
import { sayCount, sayMm } from "../../../../src/issue/words/say-count.ts";
import { type GridAxis, startsAtEdge, usableSteps } from "../../../../src/measure/grid-axis.ts";
import { toMm } from "../../../../src/measure/length.ts";
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import { makeElement } from "../../ui/make-element.ts";

/** A numbered list, and what counting from the edge comes to. */
export function countingWords({ axes: { across, down } }: Notebook): readonly HTMLElement[] {
  const steps = [
    "Count the dots of one row and of one column, no more: every other one has as many. Touch each dot with a pencil, put a faint tick at every tenth, and count the tens at the end.",
    "Count once more from the other side. Where the two numbers differ, the ticks show the ten that went wrong.",
    `Check the pitch with a ruler, from one dot and not from the edge: ${rulerCheck(across)}.`,
    "Measure from the four edges of the sheet to the middle of the dot nearest to each. If left is as right, and top as bottom, the grid is centred, and the two fields may stay empty.",
  ];
  return [
    makeElement("ol", {}, ...steps.map((step) => makeElement("li", {}, step))),
    makeElement("p", {}, edgeWords(across, "across", "row")),
    makeElement("p", {}, edgeWords(down, "down", "column")),
  ];
}

/** As many whole steps as come nearest to 50 mm, which any ruler has. */
function rulerCheck({ pitch }: GridAxis): string {
  const mm = toMm(pitch);
  const steps = Math.max(1, Math.round(50 / mm));
  const reach = sayMm(steps * mm);
  return `${reach} should reach over ${sayCount(steps, "step")}, to the ${ordinal(steps + 1)} dot`;
}

function ordinal(number: number): string {
  const tens = number % 100;
  const ending =
    tens >= 11 && tens <= 13 ? "th" : ({ 1: "st", 2: "nd", 3: "rd" }[number % 10] ?? "th");
  return `${number}${ending}`;
}

function edgeWords(grid: GridAxis, axis: string, line: string): string {
  const steps = usableSteps(grid);
  const dots = sayCount(grid.dots, "dot");
  if (startsAtEdge(grid))
    return `You count ${axis} from the edge: 0 is the edge itself and the first dot is 1, so a ${line} of ${dots} makes ${sayCount(steps, "step")}.`;
  return `You count ${axis} from the first dot: that dot is 0, and a ${line} of ${dots} makes ${sayCount(steps, "step")}, as a row of posts has one panel fewer than posts.`;
}
