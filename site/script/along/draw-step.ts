/** Draws a step over the page's drawing: what is done, what comes, and the line of now with its ends and its counts. */
import type { AlongStep } from "./along-steps.ts";
import type { CourseState } from "./course.ts";
import { type Sign, stepSigns } from "./step-signs.ts";

const SVG = "http://www.w3.org/2000/svg";

/** A layer over a drawing; at rest there is nothing on it. */
export function openLayer(drawing: SVGSVGElement): (state: CourseState) => void {
  const layer = drawing.appendChild(svgElement("g", { class: "along-lines" }));
  return ({ steps, place }) => {
    const step = place === undefined ? undefined : steps[place];
    if (place === undefined || !step) {
      layer.replaceChildren();
      return;
    }
    const signs = step.kind === "stroke" ? stepSigns(step, pixelOf(drawing)) : [];
    layer.replaceChildren(
      path("coming", dataOf(steps.slice(place + 1).filter(({ kind }) => kind === "stroke"))),
      path("done", dataOf(steps.slice(0, place))),
      path("halo", step.d),
      path("now", step.d),
      ...signs.map(signElement),
    );
  };
}

/** A pixel of the screen in the drawing's millimetres. */
function pixelOf(drawing: SVGSVGElement): number {
  const shown = drawing.getBoundingClientRect().width;
  return shown > 0 ? drawing.viewBox.baseVal.width / shown : 1;
}

function dataOf(steps: readonly AlongStep[]): string {
  return steps.map(({ d }) => d).join("");
}

function path(name: string, d: string): SVGElement {
  return svgElement("path", { class: `along-${name}`, d });
}

function signElement({ name, attributes, text }: Sign): SVGElement {
  const element = svgElement(name, attributes);
  element.textContent = text;
  return element;
}

function svgElement(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, text] of Object.entries(attributes)) element.setAttribute(key, text);
  return element;
}
