/** Holds back what would save or print something old: while a form has a fault, the buttons that need it say why. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { sayHeld } from "../../../src/issue/words/say-stale.ts";
import { fieldOf } from "./form.ts";

/** Tells of all that is wrong in a form now; nothing lets go of its buttons. */
export type DisabledButtons = (form: HTMLFormElement, issues: readonly FieldIssue[]) => void;

/** A button names the forms that it needs by their parts of the page, as `data-needs="notebook printer"`. */
export function disableButtons(page: Document, say: (words: string) => void): DisabledButtons {
  const faulty = new Map<string, { readonly form: HTMLFormElement; readonly issue: FieldIssue }>();
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
      const field = fieldOf(fault.form, fault.issue.field);
      say(sayHeld(field.labels?.[0]?.textContent ?? "", fault.issue));
      field.closest("details")?.setAttribute("open", "");
      field.focus();
    },
    { capture: true },
  );
  return (form, [issue]) => {
    const part = form.dataset.part ?? "";
    if (issue) faulty.set(part, { form, issue });
    else faulty.delete(part);
    for (const button of page.querySelectorAll<HTMLElement>("[data-needs]")) {
      if (faultFor(button)) button.setAttribute("aria-disabled", "true");
      else button.removeAttribute("aria-disabled");
    }
  };
}
