/** Says the step of now beside the drawing: how far one has come, and what to do. */
import { partOf, theOne } from "../page/parts.ts";
import type { AlongStep } from "./along-steps.ts";
import type { Course, CourseState } from "./course.ts";

const PAGE_WORDS: Readonly<Record<AlongStep["side"], string>> = {
  single: "",
  left: "Left page: ",
  right: "Right page: ",
};

/** Fills the panel's words at every change; only what has changed is read out. */
export function showWords(panel: HTMLElement, course: Course): void {
  const [rest, work] = [partOf(panel, "rest"), partOf(panel, "work")];
  const [count, words] = [partOf(panel, "count"), partOf(panel, "words")];
  const [back, next] = [buttonFor(panel, "back"), buttonFor(panel, "next")];
  const showRule = openRule(panel);
  course.watch((state) => {
    const { steps, place } = state;
    const step = place === undefined ? undefined : steps[place];
    rest.hidden = step !== undefined;
    work.hidden = step === undefined;
    if (!step) return;
    count.textContent = countWords(step, steps);
    words.textContent = step.words;
    turnOff(back, place === 0);
    turnOff(next, place === steps.length - 1);
    showRule(state);
  });
}

/** `Stroke 5 of 18`, `Left page: marks 1 of 4`. */
export function countWords({ kind, number, side }: AlongStep, steps: readonly AlongStep[]): string {
  const all = steps.filter((step) => step.kind === kind).length;
  const words = `${PAGE_WORDS[side]}${kind} ${number} of ${all}`;
  return words.slice(0, 1).toUpperCase() + words.slice(1);
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
function openRule(panel: HTMLElement): (state: CourseState) => void {
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
    done?.setAttribute("d", `M0 10H${place + 1}`);
  };
}

function isFirstOfPage(steps: readonly AlongStep[], index: number): boolean {
  return steps[index]?.page !== steps[index - 1]?.page;
}
