/** A field in which words are typed, and one of a few offers is taken by key or tap (ARIA's combobox with a list). */
import { makeElement } from "./make-element.ts";
import { partOf, theOne } from "./parts.ts";

/** What is offered, and what it is in a word or two. */
interface Offer {
  readonly title: string;
  readonly about: string;
}

interface Shown<Of extends Offer> {
  readonly offers: readonly Of[];
  /** The one that Enter takes. */
  readonly active: number;
}

interface Offering<Of extends Offer> {
  readonly offersFor: (text: string) => readonly Of[];
  readonly take: (offer: Of) => void;
  /** Something may soon be typed. */
  readonly prepare?: () => void;
}

/** What it gives offers anew, for words that stand there already. The form has the field, its list, and a place that says where nothing is found. The field goes on with the next thing as soon as one is taken. */
export function bindOffers<Of extends Offer>(
  form: HTMLFormElement,
  { offersFor, take, prepare }: Offering<Of>,
): { readonly again: () => void } {
  const field = theOne(form, "#find", HTMLInputElement);
  const list = theOne(form, "#offers", HTMLUListElement);
  const none = partOf(form, "no-offers");
  let shown: Shown<Of> = { offers: [], active: -1 };
  const show = (next: Shown<Of>) => {
    const isNew = next.offers !== shown.offers;
    shown = next;
    if (isNew) list.replaceChildren(...shown.offers.map(optionElement));
    showActive(field, list, shown);
  };
  const offer = () => {
    const offers = offersFor(field.value);
    none.hidden = offers.length > 0;
    show({ offers, active: offers.length > 0 ? 0 : -1 });
  };
  const close = () => {
    none.hidden = true;
    show({ offers: [], active: -1 });
  };
  const takeAt = (index: number) => {
    const taken = shown.offers[index];
    if (!taken) return;
    take(taken);
    field.value = "";
    close();
    field.focus();
  };
  form.addEventListener("submit", (event) => event.preventDefault());
  field.addEventListener("input", () => (field.value.trim() === "" ? close() : offer()));
  field.addEventListener("keydown", (event) => {
    const act = actFor(event.key, shown, { offer, show, takeAt, close });
    if (!act) return;
    event.preventDefault();
    act();
  });
  if (prepare) field.addEventListener("focus", prepare);
  field.addEventListener("blur", close);
  // The field keeps the focus, and with it the list.
  list.addEventListener("pointerdown", (event) => event.preventDefault());
  list.addEventListener("click", ({ target }) => {
    const option = target instanceof Element ? target.closest("li") : null;
    if (option) takeAt([...list.children].indexOf(option));
  });
  return {
    again: () => {
      if (field.value.trim() !== "" && form.ownerDocument.activeElement === field) offer();
    },
  };
}

interface Acts<Of extends Offer> {
  readonly offer: () => void;
  readonly show: (shown: Shown<Of>) => void;
  readonly takeAt: (index: number) => void;
  readonly close: () => void;
}

/** What a key does in the field; nothing where it types. */
function actFor<Of extends Offer>(
  key: string,
  { offers, active }: Shown<Of>,
  acts: Acts<Of>,
): (() => void) | undefined {
  const isOpen = offers.length > 0;
  const move = (by: number) => () =>
    acts.show({ offers, active: (active + by + offers.length) % offers.length });
  switch (key) {
    case "ArrowDown":
      return isOpen ? move(1) : acts.offer;
    case "ArrowUp":
      return isOpen ? move(-1) : undefined;
    case "Enter":
      return () => acts.takeAt(active);
    case "Escape":
      return isOpen ? acts.close : undefined;
    default:
      return undefined;
  }
}

function optionElement({ title, about }: Offer, index: number): HTMLElement {
  return makeElement(
    "li",
    { role: "option", id: `offer-${index}`, "aria-selected": "false" },
    makeElement("span", { class: "name" }, title),
    " ",
    makeElement("span", { class: "quiet" }, about),
  );
}

function showActive(field: HTMLElement, list: HTMLElement, { offers, active }: Shown<Offer>): void {
  list.hidden = offers.length === 0;
  field.setAttribute("aria-expanded", `${offers.length > 0}`);
  for (const [index, option] of [...list.children].entries())
    option.setAttribute("aria-selected", `${index === active}`);
  if (active < 0) field.removeAttribute("aria-activedescendant");
  else field.setAttribute("aria-activedescendant", `offer-${active}`);
}
