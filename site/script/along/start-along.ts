/** Brings drawing, words, keys and address of a page together; a page without strokes is left as it is. */
import { readAlongData } from "../../../src/book/pattern/along-data.ts";
import { type Device, KEPT } from "../page/device.ts";
import { onPress, partOf, theOne } from "../page/parts.ts";
import { type Course, openCourse, stepOf } from "./course.ts";
import { followAddress } from "./course-address.ts";
import { openLayer } from "./draw-step.ts";
import { openWaking } from "./keep-awake.ts";
import { showStage } from "./show-stage.ts";
import { showWords } from "./show-words.ts";
import { bindKeys, bindSwipes } from "./steer.ts";
import { wakeList } from "./stroke-list.ts";

/** Wakes the panel, the drawing and the keys of a pattern's page. Throws where the page lacks a part. */
export function startAlong(window: Window, device: Device): void {
  const { document } = window;
  const panel = document.querySelector<HTMLElement>("[data-along]");
  if (!panel) return;
  const whole = theOne(document, ".spread", HTMLElement);
  const drawing = theOne(whole, ".plate svg", SVGSVGElement);
  const hand = device.recall(KEPT.hand) === "left" ? "left" : "right";
  const course = openCourse(readAlongData(panel.dataset.along ?? ""), hand);
  const draw = openLayer(drawing);
  showStage(whole, drawing, course);
  course.watch(draw);
  showWords(panel, course);
  wakeList(partOf(panel, "order"), course);
  bindKeys(whole, course);
  bindSwipes(theOne(whole, ".plate", HTMLElement), course);
  bindButtons(panel, course);
  bindHand(panel, course, device);
  const wake = openWaking(window);
  course.watch((state) => wake(stepOf(state) !== undefined));
  new ResizeObserver(() => draw(course.state())).observe(drawing);
  followAddress(window, course);
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
