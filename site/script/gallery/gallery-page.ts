/** What the gallery's page does by itself. */
import {
  EVERYTHING,
  type Filter,
  type GalleryQuery,
  MINE,
  without,
} from "../../../src/view/gallery/gallery-query.ts";
import type { Search } from "../../../src/view/gallery/open-search.ts";
import { openQuery, type Query } from "../app/search-request.ts";
import { type Device, openDevice } from "../device/device.ts";
import { keptNotebook, notebooksOf, ownNotebook } from "../device/own-notebook.ts";
import { searchLoader } from "../lazy/search/search-part.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { onPress, partOf } from "../ui/parts.ts";
import { type Controls, openControls } from "./controls.ts";
import { bindGalleryAddress, type GalleryStore, openGalleryStore } from "./gallery-store.ts";
import { onGoingOn, openFacts } from "./open-facts.ts";
import { NOT_WORKED_OUT, offerMine } from "./own-notebook.ts";
import { openPatternList } from "./pattern-list.ts";
import { openView } from "./show-gallery.ts";
import { showWords } from "./show-summary.ts";
import { openYours } from "./yours.ts";

const script = ownAddress();
const tools = { device: openDevice(window, script), load: scriptLoader(script) };
// A book without patterns or notebooks has nothing to choose from.
if (document.querySelector("[data-group] [data-pattern]")) {
  document.documentElement.classList.add("choosing");
  openGallery(window, {
    loadSearch: searchLoader(window, tools.load),
    own: script,
    ...tools,
  });
} else {
  const yours = openYours(window, tools, () =>
    yours({ state: EVERYTHING, notebook: MINE, isNear: false }),
  );
}

export interface GalleryTools {
  readonly device: Device;
  readonly loadSearch: () => Promise<Search>;
  /** The address that the parts lie beside, and what loads them. */
  readonly own: string;
  readonly load: (name: string) => Promise<void>;
}

/** How long a reader rests between two letters, in milliseconds. */
const REST = 160;

/** Takes the page over. */
export function openGallery(window: Window, tools: GalleryTools): void {
  const { device, load, loadSearch } = tools;
  const { document: page } = window;
  const mine = ownNotebook(page, device);
  const notebooks = notebooksOf(page);
  const tags = [...page.querySelectorAll<HTMLOptionElement>("[name=tag] option")];
  const known = {
    notebooks: [...(mine ? [MINE] : []), ...notebooks],
    tags: tags.map(({ value }) => value).filter((tag) => tag !== ""),
  };
  const own = () => (mine ? MINE : (keptNotebook(page, device) ?? notebooks[0] ?? ""));
  if (mine) offerMine(window, mine, tools.own);
  const controls = openControls(page, known);
  // Whoever types on while the search is on its way keeps what is in the field.
  const showAgain = () => view(store.state(), store.notebook());
  const query = openQuery(loadSearch, showAgain);
  const takeBack = (filter: Filter) => widen(without(store.state(), filter));
  const told = (isWorkedOut: boolean) => {
    if (isWorkedOut) return showAgain();
    store.set({ ...store.state(), notebook: notebooks[0] ?? "" });
    showWords(page, NOT_WORKED_OUT);
  };
  const ownCards = mine && { notebook: mine, load, told };
  const list = openPatternList(page, mine);
  const facts = openFacts(window, { load, ready: showAgain, failed: () => showFailed(page) });
  const yours = openYours(window, tools, showAgain);
  const view = openView(page, { facts, list, own: ownCards, yours, query, takeBack });
  const store = openGalleryStore(own);
  const widen = (next: GalleryQuery) => {
    store.set(next);
    focusFound(page);
  };

  bindControls(controls, store, {
    query,
    // Whoever has a notebook of their own keeps it.
    keep: (notebook) => mine || device.set("book-notebook", notebook),
  });
  onPress(page, "show-all", () => {
    widen({ ...EVERYTHING, notebook: store.notebook(), sort: store.state().sort });
  });
  onPress(page, "search-meant", ({ dataset }) => {
    widen({ ...store.state(), query: dataset.query ?? "" });
  });
  bindGalleryAddress(window, store, known);
  // From here on, so that nothing is shown before the address is read.
  store.subscribe((state) => {
    controls.fill(state, store.notebook());
    view(state, store.notebook());
  });
  onGoingOn(window, page.querySelectorAll(".card:empty"), facts.bring);
}

/** What stands in the page stays, and there are links to what is missing. */
function showFailed(page: Document): void {
  page.documentElement.classList.remove("sifting");
  page.documentElement.classList.add("unfilled");
  showWords(page, "The other patterns could not be loaded: the links below lead to all of them");
}

interface Bound {
  /** Keeps a notebook of the book as the reader's. */
  readonly keep: (notebook: string) => void;
  readonly query: Query;
}

/** What is chosen or searched for is asked for; a chosen notebook becomes the reader's own. */
function bindControls(controls: Controls, store: GalleryStore, { keep, query }: Bound): void {
  controls.onChoice((name) => {
    const next = controls.read();
    if (name === "on") keep(next.notebook);
    store.set(next);
  });
  bindSearch(controls.search, {
    prepare: query.prepare,
    search: () => store.set(controls.read()),
  });
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
