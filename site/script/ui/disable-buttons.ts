/** Holds back what would save or print something old: while a form has a fault, the buttons that need it say why. */
import type { FieldProblem } from "../../../src/issue/facts/field-issue.ts";
import { sayHeld } from "../../../src/issue/words/say-stale.ts";
import { fieldOf } from "./form.ts";

/** Tells of all that is wrong in a form now; nothing lets go of its buttons. */
export type Hold = (form: HTMLFormElement, problems: readonly FieldProblem[]) => void;

/** A button names the forms that it needs by their parts of the page, as `data-needs="notebook printer"`. */
export function holdButtons(page: Document, say: (words: string) => void): Hold {
  const faulty = new Map<
    string,
    { readonly form: HTMLFormElement; readonly problem: FieldProblem }
  >();
  const faultFor = (button: HTMLElement) =>
    (button.dataset.needs ?? "").split(" ").flatMap((part) => faulty.get(part) ?? [])[0];
  // Before the button itself hears of it. It keeps the focus meanwhile, and its place among the others.
  page.addEventListener(
    "click",
    (event) => {
      const button = event.target instanceof Element && event.target.closest("[data-needs]");
      const fault = button instanceof HTMLElement && faultFor(button);
      if (!fault) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      const field = fieldOf(fault.form, fault.problem.field);
      say(sayHeld(field.labels?.[0]?.textContent ?? "", fault.problem));
      field.closest("details")?.setAttribute("open", "");
      field.focus();
    },
    { capture: true },
  );
  return (form, [problem]) => {
    const part = form.dataset.part ?? "";
    if (problem) faulty.set(part, { form, problem });
    else faulty.delete(part);
    for (const button of page.querySelectorAll<HTMLElement>("[data-needs]")) {
      if (faultFor(button)) button.setAttribute("aria-disabled", "true");
      else button.removeAttribute("aria-disabled");
    }
  };
}
