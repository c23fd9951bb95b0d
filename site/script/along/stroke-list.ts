/** The list of all strokes, in which each leads to itself. */
import { makeElement } from "../page/make-element.ts";
import type { Course } from "./course.ts";

/** Wakes the list of a page: its entries are the steps, in their order, whoever wrote them there. */
export function wakeList(list: HTMLElement, course: Course): void {
  course.watch(({ steps, place }) => {
    for (const [index, entry] of [...list.querySelectorAll("li")].entries()) {
      const button = entry.querySelector("button") ?? wakeEntry(entry, () => course.go(index));
      const words = steps[index]?.words ?? "";
      if (button.textContent !== words) button.textContent = words;
      if (index === place) button.setAttribute("aria-current", "step");
      else button.removeAttribute("aria-current");
    }
  });
}

function wakeEntry(entry: HTMLElement, act: () => void): HTMLButtonElement {
  const button = makeElement("button", { type: "button", class: "to-stroke" });
  button.addEventListener("click", act);
  entry.replaceChildren(button);
  return button;
}
