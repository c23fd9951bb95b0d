/** A form in a row of a list that takes another name. */
import { makeElement } from "../ui/make-element.ts";

/** `rename` says why a name is not valid, or nothing. Escape leaves all as it was. */
export function renamingForm(
  row: HTMLElement,
  title: string,
  rename: (title: string) => string | undefined,
): HTMLFormElement {
  row.querySelector("form")?.remove();
  const opener = row.ownerDocument.activeElement;
  const input = makeElement("input", { type: "text", value: title, autocomplete: "off" });
  const label = makeElement("label", {}, "New name", input);
  const fault = makeElement("p", { class: "fault", role: "alert", hidden: true });
  const save = makeElement("button", { type: "submit" }, "Save name");
  const cancel = makeElement("button", { type: "button" }, "Cancel");
  const form = makeElement(
    "form",
    { class: "renaming", novalidate: true },
    makeElement("div", { class: "field" }, label),
    save,
    cancel,
    fault,
  );
  const close = () => {
    form.remove();
    if (opener instanceof HTMLElement) opener.focus();
  };
  cancel.addEventListener("click", close);
  form.addEventListener("keydown", ({ key }) => {
    if (key === "Escape") close();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const why = rename(input.value.trim());
    fault.textContent = why ?? "";
    fault.hidden = why === undefined;
  });
  // The form is not in the page yet.
  requestAnimationFrame(() => input.select());
  return form;
}
