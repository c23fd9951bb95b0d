/** Says the step of now beside the drawing: how far one has come, and what to do. */
import { sayCount } from "../../../src/issue/words/say-count.ts";
import { sayDrawn } from "../../../src/issue/words/say-stroke.ts";
import type { AlongStep } from "../../../src/view/draw-along/steps.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { isDrawn, type Stepper, type StepperState, stepOf } from "./stepper.ts";

const KIND_WORDS: Readonly<Record<AlongStep["kind"], string>> = { marks: "marks", stroke: "line" };
const PAGE_WORDS: Readonly<Record<AlongStep["side"], string>> = {
  single: "",
  left: "Left page: ",
  right: "Right page: ",
};

/** Fills the panel's words at every change; only what has changed is read out. */
export function showWords(panel: HTMLElement, stepper: Stepper): void {
  const [rest, work] = [partOf(panel, "rest"), partOf(panel, "work")];
  const [count, words] = [partOf(panel, "count"), partOf(panel, "words")];
  const after = partOf(panel, "after");
  const [back, next] = [buttonFor(panel, "back"), buttonFor(panel, "next")];
  const showRule = openRule(panel);
  stepper.subscribe((state) => {
    const { steps, place } = state;
    const [step, isAll] = [stepOf(state), isDrawn(state)];
    rest.hidden = place !== undefined;
    work.hidden = place === undefined;
    work.classList.toggle("is-drawn", isAll);
    after.hidden = !isAll;
    if (step) [count.textContent, words.textContent] = [countWords(step, steps), step.words];
    if (isAll) [count.textContent, words.textContent] = drawnWords(steps);
    turnOff(back, place === 0);
    turnOff(next, isAll);
    showRule(state);
  });
}

/** `Line 5 of 18`, `Left page: marks 1 of 4`. */
export function countWords({ kind, number, side }: AlongStep, steps: readonly AlongStep[]): string {
  const all = steps.filter((step) => step.kind === kind).length;
  const words = `${PAGE_WORDS[side]}${KIND_WORDS[kind]} ${number} of ${all}`;
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

/** `36 of 36 lines`, and that it is done. */
function drawnWords(steps: readonly AlongStep[]): [count: string, words: string] {
  const strokes = steps.filter(({ kind }) => kind === "stroke").length;
  const pages = new Set(steps.map(({ page }) => page)).size;
  return [`${strokes} of ${sayCount(strokes, "line")}`, sayDrawn(pages)];
}

/** A button that leads nowhere keeps the focus, so that the keys go on working. */
function turnOff(button: HTMLElement, isOff: boolean): void {
  button.setAttribute("aria-disabled", String(isOff));
}

function buttonFor(panel: HTMLElement, doing: string): HTMLButtonElement {
  return theOne(panel, `[data-do="${doing}"]`, HTMLButtonElement);
}

/** More would run into one another on a phone. */
const MOST_TICKS = 40;

/** A rule between the buttons: a tick for every step or every few, and a bar as far as one has come. */
function openRule(panel: HTMLElement): (state: StepperState) => void {
  const rule = theOne(panel, ".along-rule", SVGSVGElement);
  const [all, done] = [".rule-all", ".rule-done"].map((part) => theOne(rule, part, SVGPathElement));
  return ({ steps, place = 0 }) => {
    rule.setAttribute("viewBox", `0 0 ${steps.length} 10`);
    const every = Math.ceil(steps.length / MOST_TICKS);
    const ticks = steps.map((_, index) => {
      if (isFirstOfPage(steps, index)) return `M${index} 10V2`;
      return index % every === 0 ? `M${index} 10V6` : "";
    });
    all?.setAttribute("d", `${ticks.join("")}M${steps.length} 10V2M0 10H${steps.length}`);
    done?.setAttribute("d", `M0 10H${Math.min(place + 1, steps.length)}`);
  };
}

function isFirstOfPage(steps: readonly AlongStep[], index: number): boolean {
  return steps[index]?.page !== steps[index - 1]?.page;
}
