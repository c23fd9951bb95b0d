/** One side of the strip as a list: moved up and down by buttons, so that no hand must drag. */
import type { Axis } from "../../../src/measure/axis.ts";
import { makeElement } from "../ui/make-element.ts";
import { theOne } from "../ui/parts.ts";
import type { FitStore } from "./fit-store.ts";
import { carryOn, dropFrom, moveOn } from "./strip-lists.ts";

/** Keeps a side's list and the page the same. The focus stays with the pattern that was moved. */
export function bindStripSide(side: HTMLElement, axis: Axis, store: FitStore): void {
  const list = theOne(side, "ol", HTMLOListElement);
  const add = addField(axis, store);
  const empty = makeElement("p", { class: "quiet" }, "Nothing yet.");
  side.append(empty, add.element);
  let last: readonly string[] | undefined;
  store.subscribe(({ fit }) => {
    const slugs = fit.strip[axis];
    if (slugs === last) return;
    last = slugs;
    const items = slugs.map((slug) => listItem(slug, { axis, store, slugs, list }));
    list.replaceChildren(...items);
    empty.hidden = slugs.length > 0;
    add.offer(slugs);
  });
}

interface Item {
  readonly axis: Axis;
  readonly store: FitStore;
  readonly slugs: readonly string[];
  readonly list: HTMLElement;
}

function listItem(slug: string, { axis, store, slugs, list }: Item): HTMLElement {
  const title = store.catalogue.titles.get(slug) ?? slug;
  const index = slugs.indexOf(slug);
  const isLast = index === slugs.length - 1;
  const strip = () => store.state().fit.strip;
  const move = (by: number) => {
    store.update({ strip: moveOn(strip(), axis, { slug, by }) });
    focusOn(list, slug, by < 0 ? "up" : "down");
  };
  const drop = () => {
    store.update({ strip: dropFrom(strip(), axis, slug) });
    const next = slugs[index + 1] ?? slugs[index - 1];
    if (next !== undefined) focusOn(list, next, "drop");
  };
  return makeElement(
    "li",
    { "data-slug": slug },
    makeElement("span", { class: "name" }, title),
    signButton({ kind: "up", sign: "↑", words: `Move ${title} up`, isOff: index === 0 }, () =>
      move(-1),
    ),
    signButton({ kind: "down", sign: "↓", words: `Move ${title} down`, isOff: isLast }, () =>
      move(1),
    ),
    signButton({ kind: "drop", sign: "×", words: `Take ${title} off`, isOff: false }, drop),
  );
}

interface Sign {
  readonly kind: string;
  readonly sign: string;
  readonly words: string;
  /** Does it do nothing just now? It keeps its place, and the focus. */
  readonly isOff: boolean;
}

/** A button that shows a sign and is called by words. */
function signButton({ kind, sign, words, isOff }: Sign, act: () => void): HTMLElement {
  const button = makeElement(
    "button",
    {
      type: "button",
      class: "sign",
      "data-kind": kind,
      title: words,
      "aria-disabled": isOff && "true",
    },
    makeElement("span", { "aria-hidden": "true" }, sign),
    makeElement("span", { class: "unseen" }, words),
  );
  button.addEventListener("click", () => {
    if (!isOff) act();
  });
  return button;
}

function focusOn(list: HTMLElement, slug: string, kind: string): void {
  const item = [...list.children].find((one) => one.getAttribute("data-slug") === slug);
  item?.querySelector<HTMLElement>(`[data-kind="${kind}"]`)?.focus();
}

/** A choice of all patterns that the side does not carry yet. */
function addField(axis: Axis, store: FitStore) {
  const id = `add-${axis}`;
  const select = makeElement("select", { id, autocomplete: "off" });
  select.addEventListener("change", () => {
    const slug = select.value;
    if (slug !== "") store.update({ strip: carryOn(store.state().fit.strip, axis, slug) });
  });
  const label = makeElement("label", { for: id, class: "unseen" }, `Add to the side ${axis}`);
  return {
    element: makeElement("div", { class: "field" }, label, select),
    offer: (slugs: readonly string[]) => {
      const options = store.catalogue.recipes
        .filter(({ slug }) => !slugs.includes(slug))
        .map(({ slug, title }) => makeElement("option", { value: slug }, title));
      select.replaceChildren(makeElement("option", { value: "" }, "Add …"), ...options);
    },
  };
}
