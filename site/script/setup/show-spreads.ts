/** Shows the pages of a set-up two by two at once, and draws each distinct one when there is time. */

import { toMm } from "../../../src/measure/length.ts";
import type { Setup, SetupPage } from "../../../src/setup/setup.ts";
import { writeAddress } from "../../../src/view/address/hash-params.ts";
import { writeMineAddress } from "../../../src/view/address/mine-address.ts";
import { notebookEntries } from "../../../src/view/address/notebook-address.ts";
import { datesEntries } from "../../../src/view/address/span-address.ts";
import type { PageView } from "../../../src/view/setup/setup-view.ts";
import { pictureId, smallPicture, spreadViews } from "../../../src/view/setup/spread-views.ts";
import type { Queue } from "../ui/idle-queue.ts";
import type { Draw } from "../ui/show-drawing.ts";
import type { SetupStore } from "./setup-store.ts";
import { picturePlaces, spreadElement } from "./spread-elements.ts";

interface Shows {
  readonly store: SetupStore;
  readonly draw: Draw;
  readonly queue: Queue;
  /** Told when the last picture is drawn. */
  readonly drawn: (setup: Setup) => void;
}

/** The place has the addresses of the book's patterns and of the recipe page. */
export function showSpreads(place: HTMLElement, setup: Setup, shows: Shows): void {
  const { store, draw, queue, drawn } = shows;
  const state = store.state();
  const { notebook, when } = state;
  const { across, down } = notebook.axes;
  const paper = { width: toMm(across.paper), height: toMm(down.paper) };
  const sources = { notebook, rule: when.rule };
  const linkOf = (page: PageView) => pageLink(page, setup, { place, store });
  const spreads = spreadViews(setup, sources);
  place.replaceChildren(...spreads.map((spread) => spreadElement(spread, { paper, linkOf })));
  const waiting = [...picturePlaces(place)];
  const pages = firstPages(setup);
  queue.put("pictures", () => {
    const [id, svg] = waiting.shift() ?? [];
    const page = id === undefined ? undefined : pages.get(id);
    if (svg && page) svg.outerHTML = smallPicture(page, setup, { ...sources, write: draw.file });
    if (waiting.length === 0) drawn(setup);
    return waiting.length > 0;
  });
}

/** The first page of each picture, by its id. */
function firstPages({ pages }: Setup): ReadonlyMap<string, SetupPage> {
  const first = new Map<string, SetupPage>();
  for (const page of pages) {
    if (!page.drawn) continue;
    const id = pictureId(page.drawn);
    if (!first.has(id)) first.set(id, page);
  }
  return first;
}

/** The layout's own page for these days and this notebook; one of the device opens on the recipe page. */
function pageLink(
  { pattern, number }: PageView,
  { pages, recipe }: Setup,
  { place, store }: { readonly place: HTMLElement; readonly store: SetupStore },
): string | undefined {
  if (pattern === undefined) return undefined;
  const { catalogue } = store;
  const { patterns = "", recipe: recipePage = "" } = place.dataset;
  if (!catalogue.carried.has(pattern)) return recipePage + writeMineAddress(pattern);
  const { notebook, asked } = store.state();
  const ofBook = catalogue.notebooks.find(({ slug }) => slug === notebook.slug);
  const [first] = catalogue.notebooks;
  if (!catalogue.slugs.has(pattern) || !first) return undefined;
  const dates = pages[number - recipe.first]?.drawn?.dates;
  const hash = writeAddress([
    ...(ofBook ? [["on", ofBook.slug] as const] : notebookEntries(asked.notebook)),
    ...(dates ? datesEntries({ picked: dates, calendar: asked.calendar }) : []),
  ]);
  // From disk a folder has no page of its own.
  const folder = patterns.replace(/index\.html$/, "");
  return `${folder}${pattern}/${(ofBook ?? first).slug}/index.html${hash}`;
}
