/** Layouts of one's own in the gallery, above the book's: drawn in the page, searched and filtered as those are; each leads to the recipe page. */
import type { Recipe } from "../../../src/recipe/recipe.ts";
import { writeMineAddress } from "../../../src/view/address/mine-address.ts";
import { filterPatterns } from "../../../src/view/gallery/filter-patterns.ts";
import { STATE_LETTERS } from "../../../src/view/gallery/gallery-facts.ts";
import { openDevice } from "../device/device.ts";
import { keptFiles, subscribeFiles } from "../device/kept-files.ts";
import { type LayoutsPart, layoutsPart, type OwnCard } from "../lazy/layouts/layouts-part.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";
import { sayLines } from "./say-filter.ts";
import type { AskedYours, YoursPart } from "./yours.ts";

const script = ownAddress();
const load = scriptLoader(script);
const device = openDevice(window, script);
const queue = openQueue(window);

interface Opened {
  readonly part: LayoutsPart;
  readonly recipes: readonly Recipe[];
}

interface Shown {
  readonly card: OwnCard;
  readonly element: HTMLElement;
}

let opened: Promise<Opened> | undefined;
/** What is kept, on the notebook that was asked for last. */
let drawn: { readonly notebook: string; readonly cards: readonly Shown[] } | undefined;
let last: AskedYours | undefined;

const part: YoursPart = {
  show: (asked) => {
    last = asked;
    const cards = drawn?.notebook === asked.notebook ? drawn.cards : undefined;
    if (!cards) draw(asked);
    const { shown, isExact } = cards ? wished(cards, asked) : { shown: [], isExact: false };
    if (cards) showCards(shown);
    return { count: shown.length, all: cards?.length ?? 0, isExact };
  },
};
Object.assign(window, { spanbookYours: part });
const again = () => {
  opened = undefined;
  drawn = undefined;
  if (last) part.show(last);
};
subscribeFiles(device, again);
device.subscribe("notebook", again);

/** Loads what is needed, and works the layouts out one after another; then it is asked for again. */
function draw({ notebook, ready }: AskedYours): void {
  opened ??= openLayouts();
  const mine = opened;
  mine
    .then(({ part: layouts, recipes }) => {
      const around = { device, book: window.spanbookContent, notebook };
      const [waiting, cards] = [[...recipes], [] as Shown[]];
      queue.put("yours", () => {
        const recipe = waiting.shift();
        const card = recipe && layouts.ownCard(recipe, around);
        if (card) cards.push({ card, element: cardElement(card) });
        if (waiting.length > 0) return true;
        if (mine !== opened) return false;
        drawn = { notebook, cards };
        ready();
        return false;
      });
    })
    .catch((error: unknown) => {
      console.error(error);
      partOf(document, "yours").hidden = true;
    });
}

/** Nothing is loaded where nothing is kept. Rejects where the part that reads cannot be loaded. */
async function keptLayouts(): Promise<readonly Recipe[]> {
  const files = keptFiles(device, "patterns");
  if (files.length === 0) return [];
  const reader = await readerPart(window, load);
  return files.flatMap((file) => {
    const reading = reader.readRecipe(file);
    return reading.ok ? [reading.value] : [];
  });
}

async function openLayouts(): Promise<Opened> {
  const [recipes, layouts] = await Promise.all([
    keptLayouts(),
    layoutsPart(window, load),
    load("../fit/book.js"),
  ]);
  return { part: layouts, recipes };
}

/** By the very rules of the book's; without the part that searches, words are left aside as they are there. */
function wished(cards: readonly Shown[], { state, notebook, isNear }: AskedYours) {
  const recipes = cards.map(({ card }) => card.recipe);
  const search = state.query === "" ? undefined : window.spanbookSearch?.searchRecipes(recipes);
  const patterns = cards.map(({ card: { recipe, state: outcome, pages, lines } }) => ({
    ...{ slug: recipe.slug, title: recipe.title, purpose: recipe.purpose, tags: recipe.tags },
    states: STATE_LETTERS[outcome],
    pages: `${pages}`,
    lines: [lines],
  }));
  const facts = { notebooks: [notebook], patterns };
  const result = search?.(state.query);
  // What is only written nearly so is shown where nothing is written so.
  const found = result?.isNear && !isNear ? [] : result?.places;
  const shown = filterPatterns({ facts, notebook, found }, state).flatMap(
    ({ slug }) => cards.find(({ card }) => card.recipe.slug === slug) ?? [],
  );
  return { shown, isExact: result?.isNear === false && shown.length > 0 };
}

/** Cards that stay are not taken out: a press on one would be lost. */
function showCards(shown: readonly Shown[]): void {
  const place = partOf(document, "yours");
  const list = place.querySelector("ul") ?? openList(place);
  const elements = shown.map(({ element }) => element);
  const isSame =
    elements.length === list.children.length &&
    elements.every((element, index) => list.children[index] === element);
  if (!isSame) list.replaceChildren(...elements);
  place.hidden = shown.length === 0;
}

/** Of another page of the book, which lies beside this script's folder. */
function pageAddress(page: string): string {
  return new URL(`../${page}/index.html`, script).href;
}

/** The section is empty where nothing is kept. */
function openList(place: HTMLElement): HTMLElement {
  place.setAttribute("aria-label", "Yours");
  const list = makeElement("ul", { class: "cards", "data-part": "own-cards" });
  place.append(
    makeElement("h2", {}, "Yours"),
    makeElement(
      "p",
      { class: "quiet" },
      "Layouts of your own, ",
      makeElement("a", { href: pageAddress("kept") }, "kept on this device"),
      ".",
    ),
    list,
  );
  return list;
}

const STATES = {
  even: ["even", "Nothing left over"],
  over: ["over", "\u00a0"],
  misfit: ["short", "Does not fit"],
} as const;

function cardElement({ recipe, state, lines, picture }: OwnCard): HTMLElement {
  const [look, words] = STATES[state];
  const link = makeElement(
    "a",
    { href: pageAddress("fit/recipe") + writeMineAddress(recipe.slug) },
    recipe.title,
  );
  const thumb = makeElement("img", {
    class: "thumb",
    src: picture,
    alt: "",
    width: "148",
    height: "210",
  });
  return makeElement(
    "li",
    { class: state === "misfit" ? "card misfit" : "card" },
    makeElement("h3", {}, link),
    makeElement(
      "p",
      {},
      makeElement("span", { class: look }, words),
      " ",
      makeElement("span", { class: "effort numbers" }, sayLines(lines)),
    ),
    makeElement("div", { class: "frame" }, thumb),
  );
}
