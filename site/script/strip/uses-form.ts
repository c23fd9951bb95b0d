/** How often each layout is drawn, as numbers beside the lists; what is not valid is told at its field. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { AXES, type Axis } from "../../../src/measure/axis.ts";
import type { StripEntry } from "../../../src/recipe/strip-recipe.ts";
import { readUsesField } from "../../../src/view/fields/strip-fields.ts";
import { useOn } from "../../../src/view/strip/edit-strip.ts";
import { showErrors } from "../ui/form.ts";
import { makeElement } from "../ui/make-element.ts";
import { theOne } from "../ui/parts.ts";
import type { StripStore } from "./strip-store.ts";

/** The field of one entry, with a label that says whose it is to those who do not see the line. */
export function usesField(axis: Axis, slug: string, words: string): HTMLElement {
  const id = `uses-${axis}-${slug}`;
  const field = makeElement("input", {
    type: "text",
    inputmode: "numeric",
    class: "uses",
    id,
    name: id,
    "data-axis": axis,
    placeholder: "uses",
    autocomplete: "off",
    maxlength: "6",
  });
  return makeElement(
    "span",
    { class: "field" },
    makeElement("label", { for: id, class: "unseen" }, words),
    field,
  );
}

/** Shows the uses that are asked for, where the field says something else. */
export function showUses(list: HTMLElement, entries: readonly StripEntry[]): void {
  const fields = list.querySelectorAll<HTMLInputElement>("input.uses");
  for (const [index, { uses }] of entries.entries()) {
    const field = fields[index];
    const reading = readUsesField(field?.value ?? "");
    if (field && (!reading.ok || reading.value !== uses)) field.value = uses ? `${uses}` : "";
  }
}

/** Every key press is read. */
export function bindUses(page: ParentNode, store: StripStore): void {
  const form = theOne(page, '[data-part="carried"]', HTMLFormElement);
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", ({ target }) => {
    if (!(target instanceof HTMLInputElement) || !target.matches(".uses")) return;
    const issues = issuesIn(form);
    if (issues.length > 0) return store.setErrors("carried", issues);
    const slug = target.closest("li")?.dataset.slug ?? "";
    const axis = AXES.find((one) => one === target.dataset.axis);
    const reading = readUsesField(target.value);
    if (!axis || !reading.ok) return;
    store.edit((strip) => useOn(strip, axis, { slug, uses: reading.value }));
  });
  store.subscribe(({ errors }) => showErrors(form, errors.carried));
}

function issuesIn(form: HTMLFormElement): readonly FieldIssue[] {
  return [...form.querySelectorAll<HTMLInputElement>("input.uses")].flatMap(({ name, value }) => {
    const reading = readUsesField(value);
    return reading.ok ? [] : reading.issues.map((issue) => ({ ...issue, field: name }));
  });
}
