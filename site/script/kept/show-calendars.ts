/** The calendar files that are kept on the device: by their names, each to be removed. */
import type { Device } from "../device/device.ts";
import { keepCalendars, keptCalendars } from "../device/kept-calendars.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";

/** Where none is kept the page says nothing of them; `removed` is told after one is removed. */
export function showCalendars(page: Document, device: Device, removed: () => void): void {
  const kept = keptCalendars(device);
  const rows = kept.map((one) => {
    const unseen = makeElement("span", { class: "unseen" }, ` ${one.name}`);
    const button = makeElement("button", { type: "button" }, "Remove", unseen);
    button.addEventListener("click", () => {
      keepCalendars(
        device,
        keptCalendars(device).filter(({ name }) => name !== one.name),
      );
      removed();
      page.querySelector<HTMLElement>("#all")?.focus();
    });
    const name = makeElement("b", {}, makeElement("bdi", {}, one.name));
    return makeElement(
      "li",
      {},
      makeElement("div", { class: "kept-title" }, name),
      makeElement("div", { class: "doing" }, button),
    );
  });
  partOf(page, "kept-calendars").replaceChildren(...rows);
  partOf(page, "calendars").hidden = rows.length === 0;
}
