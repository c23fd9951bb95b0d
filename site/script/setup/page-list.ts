/** What comes on the pages as a list with blocks in it: moved by a drag, buttons or keys, taken out and taken back. */
import { BORDERS, type SetupEntry } from "../../../src/recipe/setup-recipe.ts";
import {
  changeEntry,
  dropEntry,
  type EntryPath,
  entryAt,
  moveEntry,
  pathIn,
  stepEntry,
} from "../../../src/view/setup/edit-setup.ts";
import { bindDrag } from "../ui/drag-order.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { entryElement, entryTitle } from "./entry-element.ts";
import { showEntryFields, typedTimes } from "./entry-fields.ts";
import type { SetupStore } from "./setup-store.ts";
import { showEntryWords } from "./show-entry-words.ts";

/** Keeps the list and the page the same. The focus stays with what was moved. */
export function bindPageList(page: Document, store: SetupStore): void {
  const form = theOne(page, '[data-part="pages"]', HTMLFormElement);
  const list = theOne(form, "ol", HTMLOListElement);
  const undo = partOf(page, "undo");
  const step = (path: EntryPath, by: 1 | -1) => {
    const moved = stepEntry(store.state().asked.setup.pages, path, by);
    store.edit(() => moved.pages);
    focusOn(list, moved.path, by < 0 ? "up" : "down");
  };
  const drop = (path: EntryPath) => {
    const { pages } = store.state().asked.setup;
    const title = entryTitle(entryAt(pages, path), store);
    store.edit((all) => dropEntry(all, path));
    offerBack(undo, title, () => store.edit(() => pages));
  };
  const change = (path: EntryPath, to: (entry: SetupEntry) => SetupEntry) =>
    store.edit((pages) => changeEntry(pages, path, to));
  form.addEventListener("submit", (event) => event.preventDefault());
  bindDrag(list, (path, by) => store.edit((pages) => moveEntry(pages, path, by).pages));
  bindKeys(list, step);
  bindInputs(form, store, change);
  let last = "";
  store.subscribe((state) => {
    const { pages } = state.asked.setup;
    const shape = JSON.stringify([pages.map(shapeOf), state.own.map(({ slug }) => slug)]);
    if (shape !== last) {
      last = shape;
      const rows = { store, step, drop };
      list.replaceChildren(
        ...pages.map((entry, index) => entryElement(entry, pathIn("", index), rows)),
      );
    }
    partOf(form, "nothing").hidden = pages.length > 0;
    showEntryFields(form, state);
    showEntryWords(list, state);
  });
}

/** What makes another list of elements; what is typed in it is not part of that. */
function shapeOf(entry: SetupEntry): unknown {
  return entry.kind === "pattern" ? entry.pattern : [entry.each, entry.pages.map(shapeOf)];
}

/** What was taken out can be had back until something else is. */
function offerBack(place: HTMLElement, title: string, back: () => void): void {
  const button = makeElement("button", { type: "button" }, "Undo");
  button.append(makeElement("span", { class: "unseen" }, ` taking out ${title}`));
  button.addEventListener("click", () => {
    back();
    place.hidden = true;
    document.getElementById("find")?.focus();
  });
  place.replaceChildren(`“${title}” is taken out. `, button);
  place.hidden = false;
  button.focus();
}

function bindKeys(list: HTMLElement, step: (path: EntryPath, by: 1 | -1) => void): void {
  list.addEventListener("keydown", (event) => {
    const { target, key, altKey } = event;
    const path = target instanceof Element ? target.closest("li")?.dataset.slug : undefined;
    const by = key === "ArrowUp" ? -1 : key === "ArrowDown" ? 1 : undefined;
    if (!altKey || by === undefined || path === undefined) return;
    event.preventDefault();
    step(path, by);
  });
}

type Change = (path: EntryPath, to: (entry: SetupEntry) => SetupEntry) => void;

/** Times are read at every key press; a choice of borders and of a block's unit when it is made. */
function bindInputs(form: HTMLFormElement, store: SetupStore, change: Change): void {
  form.addEventListener("input", ({ target }) => {
    const path = target instanceof Element ? target.closest("li")?.dataset.slug : undefined;
    if (path === undefined) return;
    if (target instanceof HTMLSelectElement) {
      const { value, name } = target;
      change(path, (entry) => withChoice(entry, name, value));
      return;
    }
    const { issues, times } = typedTimes(form);
    if (issues.length > 0) return store.setErrors("pages", issues);
    change(path, (entry) =>
      entry.kind === "pattern" ? { ...entry, times: times.get(path) ?? entry.times } : entry,
    );
  });
}

function withChoice(entry: SetupEntry, name: string, value: string): SetupEntry {
  const borders = BORDERS.find((one) => one === value);
  if (name.startsWith("borders") && borders) return { ...entry, borders };
  return entry;
}

function focusOn(list: HTMLElement, path: EntryPath, kind: string): void {
  const item = list.querySelector(`li[data-slug="${CSS.escape(path)}"]`);
  item?.querySelector<HTMLElement>(`[data-kind="${kind}"]`)?.focus();
}
