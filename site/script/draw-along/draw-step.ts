/** Draws a step over the page's drawing: what is done, what comes, and the line of now with its ends and its counts. */
import type { AlongStep } from "../../../src/view/draw-along/steps.ts";
import { type Sign, stepSigns } from "./step-signs.ts";
import { type StepperState, stepOf } from "./stepper.ts";

const SVG = "http://www.w3.org/2000/svg";

/** Draws on whatever drawing a plate holds now; at rest there is nothing on it. */
export function openLayer(plate: HTMLElement): (state: StepperState) => void {
  let layers: Layers | undefined;
  return (state) => {
    const drawing = plate.querySelector("svg");
    if (!drawing || (state.place === undefined && layers?.drawing !== drawing)) return;
    if (layers?.drawing !== drawing) layers = layersOn(drawing);
    drawStep(layers, state);
  };
}

/** One layer below what is written in a drawing, and one above all. */
interface Layers {
  readonly drawing: SVGSVGElement;
  readonly below: SVGElement;
  readonly above: SVGElement;
}

function layersOn(drawing: SVGSVGElement): Layers {
  const [below, above] = [layerIn(), drawing.appendChild(layerIn())];
  const written = drawing.querySelector(WRITTEN);
  if (written) written.before(below);
  else above.before(below);
  return { drawing, below, above };
}

function drawStep({ drawing, below, above }: Layers, state: StepperState): void {
  const { steps, place = 0 } = state;
  const step = stepOf(state);
  const coming = steps.slice(place + 1).filter(({ kind }) => kind === "stroke");
  const signs = step?.kind === "stroke" ? stepSigns(step, pixelOf(drawing)) : [];
  below.replaceChildren(
    ...(step ? [path("coming", dataOf(coming))] : []),
    ...(state.place === undefined ? [] : [path("done", dataOf(steps.slice(0, place)))]),
    // A halo keeps other lines off, but no word: on a small screen words stand close to lines.
    ...(step ? [path("halo", step.d)] : []),
  );
  above.replaceChildren(...(step ? [path("now", step.d)] : []), ...signs.map(signElement));
}

/** What the halo of a line must leave readable. */
const WRITTEN = ":is(.d-heading, .d-label, .d-fill-text)";

function layerIn(): SVGElement {
  return svgElement("g", { class: "along-lines" });
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
