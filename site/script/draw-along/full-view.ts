/** Sets the stage for drawing along: the page that is drawn on fills the screen, beside or above its words. */
import { theOne } from "../ui/parts.ts";
import { isDrawn, type Stepper, stepOf } from "./stepper.ts";

/** Of a spread only the page that is drawn on is shown, with this much of the other one. */
const SPREAD_SHOWN = 1 / 1.9;

/** Marks the part of the page that holds drawing and words; the style sheet does the rest. */
export function showStage(whole: HTMLElement, plate: HTMLElement, stepper: Stepper): void {
  stepper.subscribe((state, before) => {
    const isDrawing = state.place !== undefined;
    // When all is drawn, the page that was drawn last stays.
    const step = isDrawn(state) ? state.steps.at(-1) : stepOf(state);
    whole.classList.toggle("is-drawing", isDrawing);
    whole.classList.toggle("on-right", step?.side === "right");
    if (!isDrawing || before.place !== undefined) return;
    whole.style.setProperty("--proportion", `${proportionOf(whole, plate)}`);
    whole.scrollIntoView();
  });
}

/** Width to height of what is shown of the drawing. */
function proportionOf(whole: HTMLElement, plate: HTMLElement): number {
  const { width, height } = theOne(plate, "svg", SVGSVGElement).viewBox.baseVal;
  return ((whole.classList.contains("double") ? SPREAD_SHOWN : 1) * width) / height;
}
