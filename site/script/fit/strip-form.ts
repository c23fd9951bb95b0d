/** Which patterns the strip carries, in which order, and how it is made. */
import { AXES, type Axis } from "../../../src/measure/axis.ts";
import {
  choiceOfStrip,
  nameStrip,
  readStripFields,
  type StripChoice,
  stripFieldsOf,
} from "../../../src/view/fields/strip-fields.ts";
import { fieldOf, fillForm, readForm, showErrors } from "../ui/form.ts";
import { makeElement } from "../ui/make-element.ts";
import { theOne } from "../ui/parts.ts";
import type { FitStore } from "./fit-store.ts";
import { bindStripSide } from "./strip-side-list.ts";

const NAMES = ["title", "slug", "lanes", "make", "width"] as const;

/** Keeps the lists, the fields and the page the same. */
export function bindStripForm(page: ParentNode, store: FitStore): void {
  const form = theOne(page, '[data-part="strip-fields"]', HTMLFormElement);
  const start = theOne(page, "#book-strip", HTMLSelectElement);
  start.append(
    ...store.catalogue.strips.map(({ slug, title }) =>
      makeElement("option", { value: slug }, title),
    ),
  );
  for (const axis of AXES) bindStripSide(sideOf(page, axis), axis, store);
  let own: StripChoice | undefined;
  store.subscribe(({ fit, strip }) => {
    if (fit.strip !== own) {
      own = fit.strip;
      fillForm(form, { ...stripFieldsOf(own) });
      showErrors(form, []);
    }
    const isChosen = fit.strip.across.length + fit.strip.down.length > 0;
    fieldOf(form, "title").setAttribute("placeholder", isChosen ? strip.title : "My strip");
    fieldOf(form, "slug").setAttribute("placeholder", isChosen ? strip.slug : "my-strip");
    const slug = isChosen ? nameStrip(fit.strip, store.catalogue.strips).slug : "";
    start.value = store.catalogue.strips.some((one) => one.slug === slug) ? slug : "";
  });
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", (event) => {
    if (event.target === start) return startFrom(start.value, store);
    const reading = readStripFields(readForm(form, NAMES), store.state().fit.strip);
    showErrors(form, reading.ok ? [] : reading.issues);
    if (!reading.ok) return store.setErrors("strip", reading.issues);
    own = { ...reading.value, body: own?.body ?? "" };
    store.update({ strip: own });
  });
}

/** A strip of the book in place of what is chosen. */
function startFrom(slug: string, store: FitStore): void {
  const strip = store.catalogue.strips.find((one) => one.slug === slug);
  if (!strip) return;
  store.update({ strip: { ...choiceOfStrip(strip), title: "", slug: "" } });
}

function sideOf(page: ParentNode, axis: Axis): HTMLElement {
  return theOne(page, `[data-side="${axis}"]`, HTMLElement);
}
