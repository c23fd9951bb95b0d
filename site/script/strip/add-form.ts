/** Puts something on the strip: words are typed, and one of a few offers is taken by key or tap (ARIA's combobox with a list). */

import { axesOf, carryOn, PLACES, type Place } from "../../../src/view/strip/edit-strip.ts";
import type { StripOffer } from "../../../src/view/strip/strip-offers.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { openLayoutSearch } from "./layout-search.ts";
import type { StripStore } from "./strip-store.ts";

interface Shown {
  readonly offers: readonly StripOffer[];
  /** The one that Enter takes. */
  readonly active: number;
}

const NONE: Shown = { offers: [], active: -1 };

interface Adding {
  readonly say: (words: string) => void;
  readonly load: (name: string) => Promise<void>;
}

/** The field goes on with the next thing as soon as one is taken. */
export function bindAddForm(page: ParentNode, store: StripStore, { say, load }: Adding): void {
  const form = theOne(page, '[data-part="add"]', HTMLFormElement);
  const field = theOne(form, "#find", HTMLInputElement);
  const list = theOne(form, "#offers", HTMLUListElement);
  const none = partOf(form, "no-offers");
  let shown = NONE;
  const show = (next: Shown) => {
    const isNew = next.offers !== shown.offers;
    shown = next;
    if (isNew) list.replaceChildren(...shown.offers.map(optionElement));
    showActive(field, list, shown);
  };
  const offer = (text: string) => {
    const offers = search.offers(text);
    none.hidden = offers.length > 0;
    show({ offers, active: offers.length > 0 ? 0 : -1 });
  };
  const search = openLayoutSearch(window, store, {
    load,
    ready: () => {
      if (field.value.trim() !== "" && document.activeElement === field) offer(field.value);
    },
  });
  const close = () => {
    none.hidden = true;
    show(NONE);
  };
  const take = (index: number) => {
    const taken = shown.offers[index];
    if (!taken) return;
    say(addOffer(store, taken, placeOf(form)));
    field.value = "";
    close();
    field.focus();
  };
  form.addEventListener("submit", (event) => event.preventDefault());
  field.addEventListener("input", () => (field.value.trim() === "" ? close() : offer(field.value)));
  field.addEventListener("keydown", (event) => {
    const act = actFor(event.key, shown, { offer: () => offer(field.value), show, take, close });
    if (!act) return;
    event.preventDefault();
    act();
  });
  field.addEventListener("focus", search.prepare);
  field.addEventListener("blur", close);
  // The field keeps the focus, and with it the list.
  list.addEventListener("pointerdown", (event) => event.preventDefault());
  list.addEventListener("click", ({ target }) => {
    const option = target instanceof Element ? target.closest("li") : null;
    if (option) take([...list.children].indexOf(option));
  });
}

interface Acts {
  readonly offer: () => void;
  readonly show: (shown: Shown) => void;
  readonly take: (index: number) => void;
  readonly close: () => void;
}

/** What a key does in the field; nothing where it types. */
function actFor(key: string, { offers, active }: Shown, acts: Acts): (() => void) | undefined {
  const isOpen = offers.length > 0;
  const move = (by: number) => () =>
    acts.show({ offers, active: (active + by + offers.length) % offers.length });
  switch (key) {
    case "ArrowDown":
      return isOpen ? move(1) : acts.offer;
    case "ArrowUp":
      return isOpen ? move(-1) : undefined;
    case "Enter":
      return () => acts.take(active);
    case "Escape":
      return isOpen ? acts.close : undefined;
    default:
      return undefined;
  }
}

function optionElement({ title, about }: StripOffer, index: number): HTMLElement {
  return makeElement(
    "li",
    { role: "option", id: `offer-${index}`, "aria-selected": "false" },
    makeElement("span", { class: "name" }, title),
    " ",
    makeElement("span", { class: "quiet" }, about),
  );
}

function showActive(field: HTMLElement, list: HTMLElement, { offers, active }: Shown): void {
  list.hidden = offers.length === 0;
  field.setAttribute("aria-expanded", `${offers.length > 0}`);
  for (const [index, option] of [...list.children].entries())
    option.setAttribute("aria-selected", `${index === active}`);
  if (active < 0) field.removeAttribute("aria-activedescendant");
  else field.setAttribute("aria-activedescendant", `offer-${active}`);
}

function placeOf(form: HTMLFormElement): Place {
  const chosen = new FormData(form).get("place");
  return PLACES.find((place) => place === chosen) ?? "both";
}

/** Puts it on the sides that do not have it, and says so. */
function addOffer(store: StripStore, { title, slug, entries }: StripOffer, place: Place): string {
  const before = store.state().asked.strip;
  const axes = axesOf(place);
  const isThere = axes.every((axis) => before[axis].some((entry) => entry.slug === slug));
  if (isThere) return `${title} is on your strip already.`;
  store.edit((strip) => axes.reduce((sum, axis) => carryOn(sum, axis, entries[axis]), strip));
  const after = store.state().asked.strip;
  if (axes.every((axis) => after[axis].length === before[axis].length))
    return "Your strip is full: take something off first.";
  return `${title} is on your strip now${place === "both" ? ", on both sides" : `, ${place}`}.`;
}
