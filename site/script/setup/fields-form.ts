/** The first free page, what goes on pages that stay free, the set-up's names, and how its strip is made. */
import {
  readSetupFields,
  SETUP_FIELD_NAMES,
  type SetupChoice,
  setupFieldsOf,
} from "../../../src/view/fields/setup-fields.ts";
import { fieldOf, fillForm, readForm, showErrors } from "../ui/form.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { SetupState, SetupStore } from "./setup-store.ts";

/** The days have a form of their own. */
const NAMES = SETUP_FIELD_NAMES.filter((name) => name !== "dates");

/** Keeps the fields and the page the same. */
export function bindFieldsForm(page: ParentNode, store: SetupStore): void {
  const form = theOne(page, '[data-part="setup-fields"]', HTMLFormElement);
  const first = theOne(form, "#first", HTMLInputElement);
  /** What the form said last; anything else came from elsewhere and is put into it. */
  let own: SetupChoice | undefined;
  store.subscribe((state) => {
    const { asked, recipe, errors } = state;
    offerFillings(form, store, state);
    if (asked.setup !== own && errors.fields.length === 0) {
      own = asked.setup;
      const { dates: _, ...texts } = setupFieldsOf(own);
      fillForm(form, texts);
      showErrors(form, []);
    }
    fieldOf(form, "title").setAttribute("placeholder", recipe.title);
    fieldOf(form, "slug").setAttribute("placeholder", recipe.slug);
    const fault = state.faults.find(({ at }) => at === "fill");
    const place = partOf(form, "fill-words");
    place.textContent = fault ? `${fault.sentence} ${fault.hint}` : "";
    place.hidden = !fault;
  });
  writeOver(first);
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", () => {
    const { setup } = store.state().asked;
    const { dates } = setupFieldsOf(setup);
    const reading = readSetupFields({ ...readForm(form, NAMES), dates }, setup.pages);
    showErrors(form, reading.ok ? [] : reading.issues);
    if (!reading.ok) return store.setErrors("fields", reading.issues);
    own = { ...reading.value, body: setup.body };
    store.update({ setup: own });
  });
}

/** A number that is there already is written over by whoever comes to the field, by a click or by Tab. */
function writeOver(field: HTMLInputElement): void {
  let isNew = false;
  field.addEventListener("focus", () => {
    isNew = true;
    field.select();
  });
  // The click that brought the focus has set the caret since.
  field.addEventListener("click", () => {
    if (isNew) field.select();
    isNew = false;
  });
  field.addEventListener("keydown", () => {
    isNew = false;
  });
}

/** Undated layouts of one page; what is asked for is among them, whatever it is. */
function offerFillings(form: HTMLFormElement, store: SetupStore, { own, asked }: SetupState): void {
  const select = theOne(form, "#fill", HTMLSelectElement);
  const single = [...store.catalogue.recipes, ...own].filter(
    ({ dates, attempts: [first] }) => !dates && first?.kind === "page",
  );
  const { fill } = asked.setup;
  const isOther = fill !== undefined && single.every(({ slug }) => slug !== fill);
  const choices = [
    ...single.map(({ slug, title }) => [slug, title] as const),
    ...(isOther ? [[fill, store.layout(fill)?.title ?? fill] as const] : []),
  ];
  const [none] = select.options;
  const known = [...select.options].map(({ value }) => value).join(" ");
  if (!none || known === ["", ...choices.map(([slug]) => slug)].join(" ")) return;
  select.replaceChildren(
    none,
    ...choices.map(([value, words]) => makeElement("option", { value }, words)),
  );
  select.value = fill ?? "";
}
