/** Brings the drawing, the words, the keys and the buttons of a page together around one stepper. */
import type { Hand } from "../../../src/plan/order/draw-order.ts";
import type { Device } from "../device/device.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { openLayer } from "./draw-step.ts";
import { showStage } from "./full-view.ts";
import { bindKeys, bindSwipes } from "./input-handlers.ts";
import { showWords } from "./show-step.ts";
import { enhanceList } from "./step-list.ts";
import { type Stepper, stepOf } from "./stepper.ts";
import { openWakeLock } from "./wake-lock.ts";

/** The part of a page that holds the drawing and, beside it, the panel for drawing along. */
export interface AlongPlace {
  readonly whole: HTMLElement;
  readonly panel: HTMLElement;
}

/** Enhances the panel, the drawing and the keys. Throws where the page lacks a part. */
export function bindAlong(
  window: Window,
  { whole, panel }: AlongPlace,
  stepper: Stepper,
  device: Device,
): void {
  const plate = theOne(whole, ".plate", HTMLElement);
  const draw = openLayer(plate);
  showStage(whole, plate, stepper);
  stepper.subscribe(draw);
  showWords(panel, stepper);
  enhanceList(partOf(panel, "order"), stepper);
  bindKeys(whole, stepper);
  bindSwipes(plate, stepper);
  bindButtons(panel, stepper);
  bindHand(panel, stepper, device);
  const wake = openWakeLock(window);
  stepper.subscribe((state) => wake(stepOf(state) !== undefined));
  new ResizeObserver(() => draw(stepper.state())).observe(plate);
}

/** The hand that was chosen on this device, on whatever page. */
export function keptHand(device: Device): Hand {
  return device.get("hand") === "left" ? "left" : "right";
}

function bindButtons(panel: HTMLElement, stepper: Stepper): void {
  const start = theOne(panel, '[data-do="start"]', HTMLButtonElement);
  const next = theOne(panel, '[data-do="next"]', HTMLButtonElement);
  start.removeAttribute("data-enhance");
  onPress(panel, "start", () => {
    stepper.go(0);
    next.focus({ preventScroll: true });
  });
  onPress(panel, "restart", () => stepper.go(0));
  onPress(panel, "back", () => stepper.move(-1));
  onPress(panel, "next", () => stepper.move(1));
  onPress(panel, "stop", () => stepper.stop());
  // The button that had the focus is hidden then.
  stepper.subscribe(({ place }, before) => {
    if (place === undefined && before.place !== undefined) start.focus({ preventScroll: true });
  });
}

function bindHand(panel: HTMLElement, stepper: Stepper, device: Device): void {
  const box = theOne(panel, '[name="hand"]', HTMLInputElement);
  partOf(panel, "hand").removeAttribute("data-enhance");
  box.checked = stepper.state().hand === "left";
  box.addEventListener("change", () => {
    const hand = box.checked ? "left" : "right";
    device.set("hand", hand);
    stepper.setHand(hand);
  });
}
