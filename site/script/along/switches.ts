/** What the drawing shows. The style sheet does it by itself; this keeps the choice on the device. */
import { type Device, KEPT } from "../page/device.ts";

/** Puts the switches as they were left, and keeps every change. What is kept are the names of those that are off. */
export function bindSwitches(page: Document, device: Device): void {
  const boxes = [...page.querySelectorAll<HTMLInputElement>(".switches input")];
  const off = (device.recall(KEPT.drawing) ?? "").split(" ");
  for (const box of boxes) {
    box.checked = !off.includes(box.name);
    box.addEventListener("change", () => {
      // Another page may have switched what this one has no switch for.
      const others = off.filter((name) => name !== "" && !boxes.some((one) => one.name === name));
      const names = boxes.filter((one) => !one.checked).map(({ name }) => name);
      device.keep(KEPT.drawing, [...others, ...names].join(" "));
    });
  }
}
