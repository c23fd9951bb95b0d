/** The gallery at work: what the address and the controls ask for is shown, and written into the address. */
import type { GalleryFacts } from "../../../src/book/gallery/gallery-facts.ts";
import { keptNotebook } from "../keep-notebook.ts";
import { type Device, KEPT } from "../page/device.ts";
import { onPress, partOf } from "../page/parts.ts";
import { openControls } from "./controls.ts";
import { readGalleryAddress, writeGalleryAddress } from "./gallery-address.ts";
import { EVERYTHING, type GalleryState, wishesOf, without } from "./gallery-state.ts";
import { openView } from "./gallery-view.ts";
import { openQuery } from "./query.ts";
import type { Search } from "./search-patterns.ts";
import { type Step, setAddress } from "./set-address.ts";

export interface GalleryTools {
  readonly facts: GalleryFacts;
  readonly device: Device;
  readonly loadSearch: () => Promise<Search>;
}

/** How long a reader rests between two letters, in milliseconds. */
const REST = 160;

/** Takes the page over. */
export function openGallery(window: Window, { facts, device, loadSearch }: GalleryTools): void {
  const { document: page, location } = window;
  const known = {
    notebooks: facts.notebooks,
    tags: facts.patterns.flatMap(({ tags }) => tags),
  };
  const own = () => keptNotebook(page, device) ?? facts.notebooks[0] ?? "";
  const controls = openControls(page, known);
  // Whoever types on while the search is on its way keeps what is in the field.
  const query = openQuery(loadSearch, () => view(state, shownNotebook()));
  const takeBack = (wish: Parameters<typeof without>[1]) => {
    change(without(state, wish), "new");
    focusFound(page);
  };
  const view = openView(page, { facts, query, takeBack });
  let state = EVERYTHING;

  const shownNotebook = () => state.notebook || own();
  const show = () => {
    controls.fill(state, shownNotebook());
    view(state, shownNotebook());
  };
  // The address names the notebook, too: whoever is sent it would else see another one, their own.
  const change = (next: GalleryState, step: Step) => {
    state = { ...next, notebook: next.notebook || own() };
    setAddress(window, writeGalleryAddress(state), step);
    show();
  };
  const showAll = () => {
    change({ ...EVERYTHING, notebook: shownNotebook(), sort: state.sort }, "new");
    focusFound(page);
  };
  /** An address that says nothing, or names a place on the page, stays as it is: it is everybody's own gallery. */
  const arrive = () => {
    state = readGalleryAddress(location.hash, known);
    if (writeGalleryAddress(state) === "") show();
    else change(state, "same");
  };

  window.addEventListener("hashchange", arrive);
  controls.onChoice((name) => {
    const next = controls.read();
    if (name === "on") device.keep(KEPT.notebook, next.notebook);
    change(next, name === "on" ? "same" : "new");
  });
  bindSearch(controls.search, {
    prepare: query.prepare,
    search: () => change(controls.read(), wishesOf(state).includes("query") ? "same" : "new"),
  });
  onPress(page, "show-all", showAll);
  arrive();
}

/** The button that was pressed is gone: what came of it is where one goes on. */
function focusFound(page: Document): void {
  const found = partOf(page, "found");
  found.setAttribute("tabindex", "-1");
  found.focus({ preventScroll: true });
}

interface Searching {
  /** Something may soon be searched for. */
  readonly prepare: () => void;
  readonly search: () => void;
}

/** A search begins when the reader rests, or asks for it. */
function bindSearch(field: HTMLInputElement, { prepare, search }: Searching): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  field.addEventListener("focus", prepare, { once: true });
  field.addEventListener("input", () => {
    clearTimeout(timer);
    timer = setTimeout(search, REST);
  });
  field.addEventListener("change", () => {
    clearTimeout(timer);
    search();
  });
}
