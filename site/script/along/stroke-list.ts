/** The list of all strokes, in which each leads to itself. */
import { makeElement } from "../page/make-element.ts";
import type { Course } from "./course.ts";

/** Wakes the list that the page was built with: its entries are the steps, in their order. */
export function wakeList(list: HTMLElement, course: Course): void {
  const entries = [...list.querySelectorAll("li")];
  const buttons = entries.map((_, index) => {
    const button = makeElement("button", { type: "button", class: "to-stroke" });
    button.addEventListener("click", () => course.go(index));
    return button;
  });
  for (const [index, entry] of entries.entries()) entry.replaceChildren(buttons[index] ?? "");
  course.watch(({ steps, place }) => {
    for (const [index, button] of buttons.entries()) {
      const words = steps[index]?.words ?? "";
      if (button.textContent !== words) button.textContent = words;
      if (index === place) button.setAttribute("aria-current", "step");
      else button.removeAttribute("aria-current");
    }
  });
}
