/** Writes the list of all steps, as the build writes it on a pattern's page. */
import { SIDE_TITLES } from "../../../src/view/draw-along/draw-along-view.ts";
import type { AlongStep } from "../../../src/view/draw-along/steps.ts";
import { makeElement } from "../page/make-element.ts";

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
