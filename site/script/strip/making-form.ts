/** How the strip is made: its lanes, its width, its names and days, and the book's strip that it starts from. */
import {
  readStripFields,
  STRIP_FIELD_NAMES,
  type StripChoice,
  stripFieldsOf,
} from "../../../src/view/fields/strip-fields.ts";
import { fieldOf, fillForm, readForm, showErrors } from "../ui/form.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { isBare, type StripStore } from "./strip-store.ts";

/** Keeps the fields and the page the same. */
export function bindMakingForm(page: ParentNode, store: StripStore): void {
  const { strips } = store.catalogue;
  const form = theOne(page, '[data-part="strip-fields"]', HTMLFormElement);
  const start = theOne(form, "#book-strip", HTMLSelectElement);
  const dates = partOf(form, "dates");
  start.append(...strips.map(({ slug, title }) => makeElement("option", { value: slug }, title)));
  /** What the form said last; anything else came from elsewhere and is put into it. */
  let own: StripChoice | undefined;
  store.subscribe((state) => {
    const { asked, recipe, isDated, errors } = state;
    if (asked.strip !== own && errors.fields.length === 0) {
      own = asked.strip;
      fillForm(form, { ...stripFieldsOf(own) });
      showErrors(form, []);
    }
    dates.hidden = !isDated && asked.strip.dates === undefined;
    fieldOf(form, "title").setAttribute("placeholder", isBare(state) ? "My strip" : recipe.title);
    fieldOf(form, "slug").setAttribute("placeholder", isBare(state) ? "my-strip" : recipe.slug);
    start.value = strips.some(({ slug }) => slug === recipe.slug) ? recipe.slug : "";
  });
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", ({ target }) => {
    if (target === start) return startFrom(start.value, store);
    const { strip } = store.state().asked;
    const reading = readStripFields(readForm(form, STRIP_FIELD_NAMES), strip);
    showErrors(form, reading.ok ? [] : reading.issues);
    if (!reading.ok) return store.setErrors("fields", reading.issues);
    own = { ...reading.value, body: strip.body };
    store.update({ strip: own });
  });
}

/** A strip of the book in place of what is there; it has no name until it gets one of its own. */
function startFrom(slug: string, store: StripStore): void {
  const strip = store.catalogue.strips.find((one) => one.slug === slug);
  if (strip) store.update({ strip: { ...strip, title: "", slug: "" } });
}
