/** What is shown of a photo of the test sheet: the lengths, the marks, and what can be done with them; or why there are none. */
import {
  sayBarMarks,
  sayBarsDoubt,
  sayMeasuredBars,
} from "../../../../src/issue/words/say-bars.ts";
import type { BarsFound } from "../../../../src/photo/bars-found.ts";
import { barFields } from "../../../../src/view/photo/bars-numbers.ts";
import { fillForm } from "../../ui/form.ts";
import { makeElement } from "../../ui/make-element.ts";
import { theOne } from "../../ui/parts.ts";
import { photoButton } from "../photo/run-photo.ts";
import type { BarsWork } from "./bars-part.ts";
import { markBars } from "./mark-bars.ts";

export function measuredView(
  { form, say }: Omit<BarsWork, "place">,
  canvas: HTMLCanvasElement,
  found: BarsFound,
): readonly HTMLElement[] {
  const marks = found.ok ? found.bars.marks : { dots: found.found, sides: found.sides };
  markBars(canvas, marks);
  canvas.setAttribute("role", "img");
  const [dots, sides] = [marks.dots.length, marks.sides.length];
  canvas.setAttribute("aria-label", sayBarMarks({ dots, sides, hasBars: found.ok }));
  const shown = makeElement("div", { class: "photo-shown" }, canvas);
  if (!found.ok) {
    const { sentence, hint } = sayBarsDoubt(found.doubt);
    return [makeElement("p", { class: "fault", tabindex: "-1" }, `${sentence} ${hint}`), shown];
  }
  const fields = barFields(found.bars);
  const use = photoButton("Use these", () => {
    fillForm(form, fields);
    // The test sheet is printed without a correction.
    theOne(form, "#corrected", HTMLInputElement).checked = false;
    form.dispatchEvent(new Event("input", { bubbles: true }));
    say(`${fields.x} and ${fields.y} mm are filled in.`);
  });
  return [
    makeElement("p", { tabindex: "-1" }, sayMeasuredBars(found.bars)),
    shown,
    makeElement("div", { class: "doing" }, use),
  ];
}
