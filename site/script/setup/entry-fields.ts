/** The small fields of an entry: how many times a layout without dates comes, and which weeks at an end of the days. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { SETUP_LIMITS } from "../../../src/recipe/setup-keys.ts";
import type { SetupEntry } from "../../../src/recipe/setup-recipe.ts";
import { takeWholeField } from "../../../src/view/fields/take-fields.ts";
import { type EntryPath, entryAt } from "../../../src/view/setup/edit-setup.ts";
import { showErrors } from "../ui/form.ts";
import { makeElement } from "../ui/make-element.ts";
import type { SetupState } from "./setup-store.ts";

/** How many times, with a label that says of what to those who do not see the line. */
export function timesField(path: EntryPath, title: string): HTMLElement {
  const id = `times-${path}`;
  const field = makeElement("input", {
    ...{ type: "text", inputmode: "numeric", class: "times", id, name: id },
    ...{ autocomplete: "off", maxlength: "3", title: "How many times" },
  });
  const label = makeElement("label", { for: id, class: "unseen" }, `Times of ${title}`);
  const sign = makeElement("span", { class: "quiet", "aria-hidden": "true" }, "×");
  return makeElement("span", { class: "field" }, label, sign, field);
}

/** Which spans at an end of the days are meant. */
export function bordersField(path: EntryPath, title: string, unit: string): HTMLElement {
  const id = `borders-${path}`;
  const choices = [
    ["both", `all ${unit}s`],
    ["first", `only ${unit}s that begin in it`],
    ["last", `only ${unit}s that end in it`],
  ] as const;
  const select = makeElement(
    "select",
    { id, name: id, autocomplete: "off" },
    ...choices.map(([value, words]) => makeElement("option", { value }, words)),
  );
  const label = makeElement("label", { for: id, class: "unseen" }, `Which ${unit}s of ${title}`);
  return makeElement("span", { class: "field borders" }, label, select);
}

/** The times in all fields by entry, or what is wrong in them. */
export function typedTimes(form: HTMLFormElement) {
  const issues: FieldIssue[] = [];
  const times = new Map<EntryPath, number>();
  for (const { name, value } of form.querySelectorAll<HTMLInputElement>("input.times")) {
    const note = (issue: FieldIssue) => issues.push(issue);
    const number = takeWholeField({ field: name, text: value, expected: TIMES, note });
    if (number !== undefined) times.set(name.replace("times-", ""), number);
  }
  return { issues, times };
}

const TIMES = { kind: "whole", unit: "times", min: 1, max: SETUP_LIMITS.times } as const;

/** Puts what is asked for into fields that say something else, and what is wrong beside them. */
export function showEntryFields(form: HTMLFormElement, { asked, errors }: SetupState): void {
  const { pages } = asked.setup;
  const entryOf = (name: string): SetupEntry | undefined =>
    entryAt(pages, name.slice(name.indexOf("-") + 1));
  for (const field of form.querySelectorAll<HTMLInputElement>("input.times")) {
    const entry = entryOf(field.name);
    if (errors.pages.length > 0 || entry?.kind !== "pattern") continue;
    if (Number(field.value) !== entry.times || field.value === "") field.value = `${entry.times}`;
  }
  for (const select of form.querySelectorAll("select")) {
    const entry = entryOf(select.name);
    if (entry && select.value !== entry.borders) select.value = entry.borders;
  }
  showErrors(form, errors.pages);
}
