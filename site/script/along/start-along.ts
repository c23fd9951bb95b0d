/** Drawing along on a pattern's page, whose address names the step; a page without strokes is left as it is. */
import { readAlongData } from "../../../src/view/draw-along/plan-data.ts";
import type { Device } from "../page/device.ts";
import { theOne } from "../page/parts.ts";
import { bindAlong, keptHand } from "./bind-along.ts";
import { openCourse } from "./course.ts";
import { followAddress } from "./course-address.ts";

/** Takes the plan from the page itself. */
export function startAlong(window: Window, device: Device): void {
  const { document } = window;
  const panel = document.querySelector<HTMLElement>("[data-along]");
  if (!panel) return;
  const whole = theOne(document, ".spread", HTMLElement);
  const course = openCourse(readAlongData(panel.dataset.along ?? ""), keptHand(device));
  bindAlong(window, { whole, panel }, course, device);
  followAddress(window, course);
}
