/** The front page's fields: the numbers of a notebook, and the division that is asked of it. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import {
  DIVISION_FIELD_NAMES,
  divisionFieldsOf,
  readDivisionFields,
} from "../../../src/view/fields/division-fields.ts";
import { fieldsOf } from "../../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../../src/view/fields/read-notebook-fields.ts";
import { fillForm, readForm, showErrors } from "../ui/form.ts";
import { theOne } from "../ui/parts.ts";
import type { HomeState, HomeStore } from "./home-store.ts";

/** What the front page asks of a notebook; the rest stays as it is. */
const NOTEBOOK_FIELDS = ["paper", "dotsAcross", "dotsDown"] as const;

/** Keeps the form and the store the same; every key press is read. */
export function bindHomeForm(page: ParentNode, store: HomeStore): void {
  const form = theOne(page, '[data-part="asked"]', HTMLFormElement);
  let own: HomeState["asked"] | undefined;
  store.subscribe(({ asked, issues }) => {
    if (asked === own || issues.length > 0) return;
    own = asked;
    const { paper, dotsAcross, dotsDown } = fieldsOf(asked.notebook);
    fillForm(form, { paper, dotsAcross, dotsDown, ...divisionFieldsOf(asked.division) });
    showErrors(form, []);
  });
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", () => {
    const { notebook } = store.state().asked;
    const numbers = readFields({ ...fieldsOf(notebook), ...readForm(form, NOTEBOOK_FIELDS) });
    const division = readDivisionFields(readForm(form, DIVISION_FIELD_NAMES));
    const issues: readonly FieldIssue[] = [
      ...(numbers.ok ? [] : numbers.issues),
      ...(division.ok ? [] : division.issues),
    ];
    showErrors(form, issues);
    if (!numbers.ok || !division.ok) return store.setErrors(issues);
    own = { notebook: { ...numbers.value, body: notebook.body }, division: division.value };
    store.update(own);
  });
}
