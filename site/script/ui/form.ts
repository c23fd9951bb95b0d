/** A form's fields as text by name, and the words that stand at a field: what is not valid, or how it was read. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { fieldOffer, sayFieldIssue } from "../../../src/issue/words/say-field-issue.ts";
import { sayTypedLength } from "../../../src/view/fields/typed-length.ts";
import { makeElement } from "./make-element.ts";

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

/** Says at each field what is wrong with it, or how it was read where that is not what was typed. */
export function showErrors(form: HTMLFormElement, issues: readonly FieldIssue[]): void {
  for (const field of form.elements) {
    if (!isField(field) || field.name === "") continue;
    const issue = issues.find((one) => one.field === field.name);
    const fault = document.getElementById(`${field.id}-fault`);
    const read = document.getElementById(`${field.id}-read`);
    if (fault) sayAt(fault, issue ? errorWords(issue, field) : []);
    if (read) sayAt(read, issue ? [] : [sayTypedLength(field.value)]);
    describeBy(field, [fault, read]);
    writeAttribute(field, "aria-invalid", issue && "true");
  }
}

/** The sentence, with a button where it is known what would do. */
function errorWords(issue: FieldIssue, field: Field): readonly (string | Node)[] {
  const offer = fieldOffer(issue);
  if (!offer) return [sayFieldIssue(issue)];
  const take = makeElement("button", { type: "button", class: "offer" }, offer.words);
  take.addEventListener("click", () => {
    field.value = offer.text;
    field.dispatchEvent(new Event("input", { bubbles: true }));
    field.focus();
  });
  return [`${sayFieldIssue(issue)} `, take];
}

/** Words that stand there already are left alone, so that they are not read out again. */
function sayAt(place: HTMLElement, words: readonly (string | Node)[]): void {
  const text = words.map((word) => (typeof word === "string" ? word : word.textContent)).join("");
  writeAttribute(place, "hidden", text === "" ? "" : undefined);
  if (place.textContent !== text) place.replaceChildren(...words);
}

function describeBy(field: Field, places: readonly (HTMLElement | null)[]): void {
  const ids = places.flatMap((place) => (place && !place.hidden ? [place.id] : []));
  writeAttribute(field, "aria-describedby", ids.length > 0 ? ids.join(" ") : undefined);
}

/** Writes an attribute only where it changes: one that is written again as it was has the browser work its styles out again, at every key press. */
export function writeAttribute(element: Element, name: string, value: string | undefined): void {
  if (element.getAttribute(name) === (value ?? null)) return;
  if (value === undefined) element.removeAttribute(name);
  else element.setAttribute(name, value);
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
