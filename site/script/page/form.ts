/** A form's fields as text by name, and the words that stand at a field whose content will not do. */
import type { FieldProblem } from "../../../src/problem/field-problem.ts";
import { sayFieldProblem } from "../../../src/problem/say/say-field-problem.ts";

type Field = HTMLInputElement | HTMLSelectElement;

/** What is in the named fields now. Throws where the form lacks one. */
export function readForm<Name extends string>(
  form: HTMLFormElement,
  names: readonly Name[],
): Record<Name, string> {
  const texts = names.map((name) => [name, fieldOf(form, name).value]);
  return Object.fromEntries(texts);
}

/** Puts text into fields; one that has it already is left alone, and with it the place of the caret. */
export function fillForm(form: HTMLFormElement, texts: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(texts)) {
    const field = fieldOf(form, name);
    if (field.value !== text) field.value = text;
  }
}

/** Says at each field what is wrong with it, and nothing at the others. */
export function showFaults(form: HTMLFormElement, problems: readonly FieldProblem[]): void {
  for (const field of form.elements) {
    if (!isField(field) || field.name === "") continue;
    const problem = problems.find((one) => one.field === field.name);
    showFault(field, problem ? sayFieldProblem(problem) : "");
  }
}

function showFault(field: Field, sentence: string): void {
  const words = document.getElementById(`${field.id}-fault`);
  if (!words) return;
  words.hidden = sentence === "";
  if (words.textContent !== sentence) words.textContent = sentence;
  if (sentence === "") {
    field.removeAttribute("aria-invalid");
    field.removeAttribute("aria-describedby");
  } else {
    field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", words.id);
  }
}

/** The field with a name. */
export function fieldOf(form: HTMLFormElement, name: string): Field {
  const field = form.elements.namedItem(name);
  if (field instanceof HTMLInputElement || field instanceof HTMLSelectElement) return field;
  throw new Error(`the form has no field ${name}`);
}

function isField(element: Element): element is Field {
  return element instanceof HTMLInputElement || element instanceof HTMLSelectElement;
}
