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
import type { SetupState, SetupStore } from "./setup-store.ts";
import { spreadElement } from "./spread-elements.ts";

/** What the pictures are of. */
export type Pictured = Pick<SetupState, "setup" | "events">;

interface Shows {
  readonly store: SetupStore;
  readonly draw: Draw;
  readonly queue: Queue;
  /** Told when the last picture is drawn. */
  readonly drawn: (pictured: Pictured) => void;
}

/** The place has the addresses of the book's patterns and of the recipe page. */
export function showSpreads(place: HTMLElement, setup: Setup, shows: Shows): void {
  const { store } = shows;
  const { notebook, when } = store.state();
  const { across, down } = notebook.axes;
  const paper = { width: toMm(across.paper), height: toMm(down.paper) };
  const linkOf = (page: PageView) => pageLink(page, setup, { place, store });
  const spreads = spreadViews(setup, { notebook, rule: when.rule });
  place.replaceChildren(...spreads.map((spread) => spreadElement(spread, { paper, linkOf })));
  drawPictures(place, setup, shows);
}

/** Draws the pictures of pages that are shown; those that are drawn already, anew. */
export function drawPictures(place: HTMLElement, setup: Setup, shows: Shows): void {
  const { store, draw, queue, drawn } = shows;
  const { notebook, when, events } = store.state();
  const sources = { notebook, rule: when.rule, events, write: draw.file };
  const waiting = [...firstPages(setup)];
  queue.put("pictures", () => {
    const [id = "", page] = waiting.shift() ?? [];
    // The first place of a picture has it; the others refer to it.
    const svg = page && place.querySelector(`#${id}, [data-picture="${id}"]`);
    if (svg) svg.outerHTML = smallPicture(page, setup, sources);
    if (waiting.length === 0) drawn({ setup, events });
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
