/** The script of a pattern's page: its drawing stroke by stroke, what the drawing shows, and its marks to copy. */
import { readAlongData } from "../../../src/view/draw-along/plan-data.ts";
import { type Device, openDevice } from "../device/device.ts";
import { ownAddress } from "../ui/load-script.ts";
import { theOne } from "../ui/parts.ts";
import { bindAlong, keptHand } from "./bind-draw-along.ts";
import { bindCopying } from "./marks-table.ts";
import { bindStepAddress } from "./step-address.ts";
import { openStepper } from "./stepper.ts";

const device = openDevice(window, ownAddress());
bindSwitches(document, device);
bindCopying(document);
startAlong(window, device);

/** Takes the plan from the page itself. */
export function startAlong(window: Window, device: Device): void {
  const { document } = window;
  const panel = document.querySelector<HTMLElement>("[data-along]");
  if (!panel) return;
  const whole = theOne(document, ".spread", HTMLElement);
  const stepper = openStepper(readAlongData(panel.dataset.along ?? ""), keptHand(device));
  bindAlong(window, { whole, panel }, stepper, device);
  bindStepAddress(window, stepper);
}

/** Puts the switches as they were left, and keeps every change. What is kept are the names of those that are off. */
export function bindSwitches(page: Document, device: Device): void {
  const boxes = [...page.querySelectorAll<HTMLInputElement>(".switches input")];
  const off = () => (device.get("drawing") ?? "").split(" ").filter((name) => name !== "");
  for (const box of boxes) {
    box.checked = !off().includes(box.name);
    box.addEventListener("change", () => {
      // Read anew: another page or tab may have switched something else meanwhile.
      const others = off().filter((name) => name !== box.name);
      device.set("drawing", [...others, ...(box.checked ? [] : [box.name])].join(" "));
    });
  }
}
