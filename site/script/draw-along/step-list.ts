/** Writes the list of all steps, as the build writes it on a pattern's page. */
import { SIDE_TITLES } from "../../../src/view/draw-along/draw-along-view.ts";
import type { AlongStep } from "../../../src/view/draw-along/steps.ts";
import { makeElement } from "../ui/make-element.ts";
import type { Stepper } from "./stepper.ts";

/** In place of what stands there: page by page, the marks and then the strokes with their numbers. */
export function writeList(place: HTMLElement, steps: readonly AlongStep[]): void {
  const pages = [...new Set(steps.map(({ page }) => page))];
  place.replaceChildren(
    ...pages.flatMap((page) => pageList(steps.filter((step) => step.page === page))),
  );
}

function pageList(steps: readonly AlongStep[]): readonly HTMLElement[] {
  const [first] = steps;
  const strokes = steps.filter(({ kind }) => kind === "stroke");
  const entries = (kind: AlongStep["kind"]) =>
    steps.filter((step) => step.kind === kind).map(({ words }) => makeElement("li", {}, words));
  const title = first ? SIDE_TITLES[first.side] : "";
  return [
    ...(title === "" ? [] : [makeElement("h3", {}, title)]),
    makeElement("ul", { class: "first-marks" }, ...entries("marks")),
    makeElement("ol", { start: `${strokes[0]?.number ?? 1}` }, ...entries("stroke")),
  ];
}

/** Enhances the list of a page: its entries are the steps, in their order, whoever wrote them there. */
export function enhanceList(list: HTMLElement, stepper: Stepper): void {
  stepper.subscribe(({ steps, place }) => {
    for (const [index, entry] of [...list.querySelectorAll("li")].entries()) {
      const button = entry.querySelector("button") ?? enhanceEntry(entry, () => stepper.go(index));
      const words = steps[index]?.words ?? "";
      if (button.textContent !== words) button.textContent = words;
      if (index === place) button.setAttribute("aria-current", "step");
      else button.removeAttribute("aria-current");
    }
  });
}

function enhanceEntry(entry: HTMLElement, act: () => void): HTMLButtonElement {
  const button = makeElement("button", { type: "button", class: "to-stroke" });
  button.addEventListener("click", act);
  entry.replaceChildren(button);
  return button;
}
