/** Brings the drawing, the words, the keys and the buttons of a page together around one course. */
import type { Hand } from "../../../src/plan/order/draw-order.ts";
import { type Device, KEPT } from "../device/device.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { openLayer } from "./draw-step.ts";
import { showStage } from "./full-view.ts";
import { bindKeys, bindSwipes } from "./input-handlers.ts";
import { showWords } from "./show-step.ts";
import { wakeList } from "./step-list.ts";
import { type Course, stepOf } from "./stepper.ts";
import { openWaking } from "./wake-lock.ts";

/** The part of a page that holds the drawing and, beside it, the panel for drawing along. */
export interface AlongPlace {
  readonly whole: HTMLElement;
  readonly panel: HTMLElement;
}

/** Wakes the panel, the drawing and the keys. Throws where the page lacks a part. */
export function bindAlong(
  window: Window,
  { whole, panel }: AlongPlace,
  course: Course,
  device: Device,
): void {
  const plate = theOne(whole, ".plate", HTMLElement);
  const draw = openLayer(plate);
  showStage(whole, plate, course);
  course.watch(draw);
  showWords(panel, course);
  wakeList(partOf(panel, "order"), course);
  bindKeys(whole, course);
  bindSwipes(plate, course);
  bindButtons(panel, course);
  bindHand(panel, course, device);
  const wake = openWaking(window);
  course.watch((state) => wake(stepOf(state) !== undefined));
  new ResizeObserver(() => draw(course.state())).observe(plate);
}

/** The hand that was chosen on this device, on whatever page. */
export function keptHand(device: Device): Hand {
  return device.recall(KEPT.hand) === "left" ? "left" : "right";
}

function bindButtons(panel: HTMLElement, course: Course): void {
  const start = theOne(panel, '[data-do="start"]', HTMLButtonElement);
  const next = theOne(panel, '[data-do="next"]', HTMLButtonElement);
  start.removeAttribute("data-asleep");
  onPress(panel, "start", () => {
    course.go(0);
    next.focus({ preventScroll: true });
  });
  onPress(panel, "restart", () => course.go(0));
  onPress(panel, "back", () => course.move(-1));
  onPress(panel, "next", () => course.move(1));
  onPress(panel, "stop", () => course.stop());
  // The button that had the focus is hidden then.
  course.watch(({ place }, before) => {
    if (place === undefined && before.place !== undefined) start.focus({ preventScroll: true });
  });
}

function bindHand(panel: HTMLElement, course: Course, device: Device): void {
  const box = theOne(panel, '[name="hand"]', HTMLInputElement);
  partOf(panel, "hand").removeAttribute("data-asleep");
  box.checked = course.state().hand === "left";
  box.addEventListener("change", () => {
    const hand = box.checked ? "left" : "right";
    device.keep(KEPT.hand, hand);
    course.turn(hand);
  });
}
