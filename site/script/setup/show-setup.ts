/** What comes of the set-up that is asked for: its pages, what to count and to tick, contents, its strip, and its data. */

import { asSentence } from "../../../src/issue/words/say-count.ts";
import type { Setup } from "../../../src/setup/setup.ts";
import { setupJson } from "../../../src/setup/setup-json.ts";
import { writeAddress } from "../../../src/view/address/hash-params.ts";
import { notebookEntries } from "../../../src/view/address/notebook-address.ts";
import type { LayoutView, LeftOutLine } from "../../../src/view/setup/setup-view.ts";
import { type SetupWords, setupWords } from "../../../src/view/setup/setup-words.ts";
import { setupStripPart } from "../lazy/setup-strip/setup-strip-part.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { Draw } from "../ui/show-drawing.ts";
import type { SetupState, SetupStore } from "./setup-store.ts";
import { drawPictures, type Pictured, showSpreads } from "./show-spreads.ts";

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
  readonly load: (name: string) => Promise<void>;
  /** Told when the list of pages to tick is another one, and when the last page is drawn. */
  readonly listed: () => void;
  readonly drawn: (pictured: Pictured) => void;
}

/** Follows the store: what is wrong at once, the rest when there is time. */
export function bindSetup(page: ParentNode, store: SetupStore, shows: Shows): void {
  const data = theOne(page, "#setup-data", HTMLScriptElement);
  const [whole, empty] = [partOf(page, "whole"), partOf(page, "empty")];
  let last: Pictured | undefined;
  store.subscribe((state) => {
    const { setup, events, question, errors, faults } = state;
    const isFaulty = [errors.pages, errors.dates, errors.fields, faults].some(
      (all) => all.length > 0,
    );
    whole.classList.toggle("faulty", isFaulty);
    showHead(page, state);
    // What is worked out just now is not there yet, whatever was before.
    if (!setup) data.textContent = "null";
    if (!question) {
      last = undefined;
      partOf(page, "numbers").textContent = "";
    }
    empty.hidden = question !== undefined || faults.length > 0;
    whole.hidden = question === undefined && (faults.length === 0 || whole.hidden);
    const before = last;
    if (!setup || (setup === before?.setup && events === before.events)) return;
    last = { setup, events };
    // Events are drawn, and change nothing else.
    if (setup === before?.setup)
      return drawPictures(partOf(page, "spreads"), setup, { ...shows, store });
    whole.hidden = false;
    showAll(page, setup, { ...shows, store, data });
  });
}

interface Showing extends Shows {
  readonly store: SetupStore;
  readonly data: HTMLScriptElement;
}

/** Each part by itself, so that the page can be used between them. */
function showAll(page: ParentNode, setup: Setup, shows: Showing): void {
  const { store, queue, draw, data, load, listed, drawn } = shows;
  const { notebook, when } = store.state();
  queue.put("data", () => {
    data.textContent = setupJson(setup);
    return false;
  });
  queue.put("words", () => {
    const recipe = (slug: string) => {
      const found = store.layout(slug);
      if (!found) throw new RangeError(`there is no layout ${slug}`);
      return found;
    };
    const words = setupWords(setup, { notebook, recipe, rule: when.rule });
    showNumbers(page, setup, words);
    showWords(page, words);
    showSpreads(partOf(page, "spreads"), setup, { store, draw, queue, drawn });
    listed();
    return false;
  });
  setupStripPart(window, load).then(
    (part) =>
      queue.put("strip", () => {
        if (store.state().setup !== setup) return false;
        const strip = part.setupStrip(setup, notebook);
        draw.show(partOf(page, "strip"), part.stripScene(strip));
        showLines(partOf(page, "strip-left-out"), part.stripLeftOutLines(strip));
        return false;
      }),
    () => {
      theOne(page, ".its-strip", HTMLElement).hidden = true;
    },
  );
}

/** Whose notebook it is for, and what is wrong with the whole of it. */
function showHead(page: ParentNode, { asked, notebook, recipe, faults }: SetupState): void {
  const link = theOne(page, '[data-part="for"]', HTMLAnchorElement);
  link.textContent = notebook.title;
  link.hash = writeAddress(notebookEntries(asked.notebook));
  partOf(page, "title").textContent = recipe.title;
  const place = partOf(page, "faults");
  const told = faults.filter(({ at }) => at === "pages" || at === "dates");
  const words = told.map(({ sentence, hint }) => `${sentence} ${hint}`).join(" ");
  if (place.textContent !== words) place.textContent = words;
  place.hidden = words === "";
}

/** Its days are said where its name is another one. */
function showNumbers(page: ParentNode, { recipe }: Setup, words: SetupWords): void {
  const { count, from, to, firstSide, dates } = words;
  const numbers = count === 1 ? `page ${from}` : `pages ${from} to ${to}`;
  const days = recipe.title === asSentence(dates) ? "" : `, ${dates}`;
  partOf(page, "numbers").textContent =
    count === 0
      ? `${days}: nothing of it fits.`
      : `${days}: ${numbers}; ${from} lies at the ${firstSide}.`;
}

function showWords(page: ParentNode, words: SetupWords): void {
  partOf(page, "notes").textContent = words.notes.join(" ");
  partOf(page, "notes").hidden = words.notes.length === 0;
  partOf(page, "free").textContent = [words.free, words.saving].filter((one) => one).join(" ");
  showLines(partOf(page, "left-out"), words.leftOut);
  partOf(page, "counting").textContent = words.counting;
  partOf(page, "layouts").replaceChildren(...words.layouts.map(layoutElement));
  partOf(page, "contents").replaceChildren(
    ...words.contents.map(({ title, pages }) =>
      makeElement(
        "li",
        {},
        makeElement("span", {}, title),
        " ",
        makeElement("span", { class: "numbers" }, pages),
      ),
    ),
  );
}

function showLines(place: HTMLElement, lines: readonly LeftOutLine[]): void {
  place.hidden = lines.length === 0;
  theOne(place, "ul", HTMLUListElement).replaceChildren(
    ...lines.map(({ title, why }) =>
      makeElement("li", {}, makeElement("b", {}, title), `: ${why}`),
    ),
  );
}

/** What to count once, and the pages to tick. */
function layoutElement({ titles, marks, pages }: LayoutView): HTMLElement {
  const said = marks.map((words) => makeElement("p", { class: "numbers" }, words));
  const ticks = pages.map(({ number, words }) => {
    const box = makeElement("input", { type: "checkbox", autocomplete: "off", value: `${number}` });
    const place = makeElement("b", { class: "numbers" }, `${number}`);
    return makeElement(
      "li",
      {},
      makeElement("label", {}, box, " ", place, " ", makeElement("span", {}, words)),
    );
  });
  const nothing = said.length === 0 ? [makeElement("p", {}, "Nothing to mark.")] : said;
  return makeElement(
    "li",
    {},
    makeElement("h4", {}, titles.join(", ")),
    makeElement(
      "div",
      { class: "layout-parts" },
      makeElement("div", { class: "layout-marks" }, ...nothing),
      makeElement("ul", { class: "ticks" }, ...ticks),
    ),
  );
}
