/** One side of the strip as a list: moved by buttons, keys or a drag, with a field for how often each is drawn. */
import type { Axis } from "../../../src/measure/axis.ts";
import type { StripEntry } from "../../../src/recipe/strip-recipe.ts";
import { dropFrom, moveOn } from "../../../src/view/strip/edit-strip.ts";
import { bindDrag } from "../ui/drag-order.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { signButton } from "../ui/sign-button.ts";
import type { StripStore } from "./strip-store.ts";
import { showUses, usesField } from "./uses-form.ts";

/** Keeps a side's list and the page the same. The focus stays with what was moved. */
export function bindSideList(side: HTMLElement, axis: Axis, store: StripStore): void {
  const list = theOne(side, "ol", HTMLOListElement);
  const nothing = partOf(side, "nothing");
  const move = (slug: string, by: number) =>
    store.edit((strip) => moveOn(strip, axis, { slug, by }));
  bindDrag(list, move);
  list.addEventListener("keydown", (event) => {
    const { target, key, altKey } = event;
    const slug = target instanceof Element ? target.closest("li")?.dataset.slug : undefined;
    const by = { ArrowUp: -1, ArrowDown: 1 }[key];
    if (!altKey || by === undefined || slug === undefined) return;
    event.preventDefault();
    move(slug, by);
    focusOn(list, slug, by < 0 ? "up" : "down");
  });
  let last: string | undefined;
  store.subscribe(({ asked }) => {
    const entries = asked.strip[axis];
    const order = JSON.stringify(entries.map(({ slug }) => slug));
    if (order !== last)
      list.replaceChildren(
        ...entries.map((entry, index) => listItem(entry, { axis, store, list, index })),
      );
    last = order;
    nothing.hidden = entries.length > 0;
    showUses(list, entries);
  });
}

interface Item {
  readonly axis: Axis;
  readonly store: StripStore;
  readonly list: HTMLElement;
  readonly index: number;
}

function listItem(entry: StripEntry, { axis, store, list, index }: Item): HTMLElement {
  const { slug } = entry;
  const title = titleOf(entry, store);
  const entries = store.state().asked.strip[axis];
  const move = (by: number) => () => {
    store.edit((strip) => moveOn(strip, axis, { slug, by }));
    focusOn(list, slug, by < 0 ? "up" : "down");
  };
  const drop = () => {
    store.edit((strip) => dropFrom(strip, axis, slug));
    const next = entries[index + 1] ?? entries[index - 1];
    if (next) focusOn(list, next.slug, "drop");
    else document.getElementById("find")?.focus();
  };
  const [isFirst, isLast] = [index === 0, index === entries.length - 1];
  return makeElement(
    "li",
    { "data-slug": slug },
    makeElement("span", { class: "grip", "aria-hidden": "true" }, "⠿"),
    makeElement("span", { class: "name" }, title),
    usesField(axis, slug, `Uses of ${title}, ${axis}`),
    signButton(["up", "↑", `Move ${title} up`], isFirst, move(-1)),
    signButton(["down", "↓", `Move ${title} down`], isLast, move(1)),
    signButton(["drop", "×", `Take ${title} off`], false, drop),
    faultPlace(`uses-${axis}-${slug}-fault`),
  );
}

function faultPlace(id: string): HTMLElement {
  const place = makeElement("p", { class: "fault", id });
  place.hidden = true;
  return place;
}

function titleOf(entry: StripEntry, store: StripStore): string {
  return entry.kind === "division" ? entry.title : store.titleOf(entry.slug);
}

function focusOn(list: HTMLElement, slug: string, kind: string): void {
  const item = [...list.children].find((one) => one.getAttribute("data-slug") === slug);
  item?.querySelector<HTMLElement>(`[data-kind="${kind}"]`)?.focus();
}
