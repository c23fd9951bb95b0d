/** All patterns of the book on this notebook: worked out when there is time, drawn when they come into view. */
import { blankScene } from "../../../src/draw/page/blank-scene.ts";
import { thumbnailScene } from "../../../src/draw/page/thumbnail-scene.ts";
import { sayAddedToStrip } from "../../../src/issue/words/strip-words.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import type { Plan } from "../../../src/plan/plan.ts";
import { planPattern } from "../../../src/plan/plan-pattern.ts";
import { PURPOSES } from "../../../src/recipe/recipe.ts";
import { statusWords } from "../../../src/view/pattern/plan-status.ts";
import { PURPOSE_WORDS } from "../../../src/view/pattern/purpose-words.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { openSight } from "../ui/in-view.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";
import { type Draw, pictureAddress } from "../ui/show-drawing.ts";
import type { CarriedPatterns } from "./carried-patterns.ts";
import { bindCardFilter } from "./filter-cards.ts";
import type { FitStore } from "./fit-store.ts";
import { type Card, makeCard } from "./pattern-card.ts";

/** While somebody types and looks elsewhere, nobody waits for what a hundred other patterns come to. */
const REST_MS = 1_000;

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
  readonly strip: CarriedPatterns;
  readonly say: (words: string) => void;
  /** Brings the large drawing into view. */
  readonly toDrawing: () => void;
}

/** Follows the notebook: statuses of all, pictures of those that can be seen. */
export function bindCards(
  page: ParentNode,
  store: FitStore,
  { draw, queue, strip, say, toDrawing }: Shows,
): void {
  const add = (slug: string) => {
    const { outcome, count } = strip.add(slug);
    say(sayAddedToStrip(outcome, count));
  };
  const cards = makeCards(store, add, toDrawing);
  const cardFilter = bindCardFilter(page, cards);
  partOf(page, "cards").append(...groups(store, cards));
  const byElement = new Map<Element, Card>([...cards.values()].map((card) => [card.element, card]));
  const sight = openSight(byElement, (card) => drawSoon(card.slug));
  let notebook = store.state().notebook;
  let plans = new Map<string, Plan>();
  const planOf = (slug: string): Plan => {
    const plan =
      plans.get(slug) ?? planPattern(store.catalogue.recipe(slug), notebook, store.catalogue.when);
    plans.set(slug, plan);
    return plan;
  };
  const drawSoon = (slug: string) =>
    queue.put(`thumbnail ${slug}`, () => {
      const card = cards.get(slug);
      if (card) drawThumbnail(card, planOf(slug), { draw, notebook });
      return false;
    });
  const planAll = () => {
    const waiting = [...cards.values()];
    queue.put("statuses", () => {
      const card = waiting.shift();
      if (card) card.showStatus(statusWords(planOf(card.slug)));
      if (waiting.length > 0) return true;
      cardFilter.count();
      for (const seen of sight.seenAgain()) drawSoon(seen.slug);
      return false;
    });
  };
  const planInTime = onceInTime(partOf(page, "cards-part"), planAll);
  strip.subscribe((carried) => {
    for (const card of cards.values()) card.showCarried(carried.has(card.slug));
  });
  let last: unknown;
  let drawn: string | undefined;
  store.subscribe(({ fit, notebook: named, errors }) => {
    cardFilter.age(errors.notebook.length > 0);
    if (fit.pattern !== drawn) {
      drawn = fit.pattern;
      for (const card of cards.values()) card.showDrawn(card.slug === drawn);
    }
    if (fit.notebook === last) return;
    last = fit.notebook;
    notebook = named;
    plans = new Map();
    planInTime();
  });
}

/** For each time that it is asked, does it once: now where the place is in view, else when that comes into view or after a rest. */
function onceInTime(place: Element, act: () => void): () => void {
  let resting: ReturnType<typeof setTimeout> | undefined;
  let isDue = false;
  const actNow = () => {
    clearTimeout(resting);
    if (isDue) act();
    isDue = false;
  };
  const sight = openSight(new Map([[place, place]]), actNow);
  return () => {
    isDue = true;
    clearTimeout(resting);
    if (sight.seenAgain().length > 0) actNow();
    else resting = setTimeout(actNow, REST_MS);
  };
}

function makeCards(
  store: FitStore,
  carry: (slug: string) => void,
  toDrawing: () => void,
): ReadonlyMap<string, Card> {
  const actions = {
    draw: (pattern: string) => {
      store.update({ pattern });
      toDrawing();
    },
    carry,
  };
  return new Map(store.catalogue.recipes.map((recipe) => [recipe.slug, makeCard(recipe, actions)]));
}

/** By what they are for, in the book's order. */
function groups({ catalogue }: FitStore, cards: ReadonlyMap<string, Card>): readonly HTMLElement[] {
  return PURPOSES.flatMap((purpose) => {
    const recipes = catalogue.recipes.filter((recipe) => recipe.purpose === purpose);
    if (recipes.length === 0) return [];
    const elements = recipes.flatMap(({ slug }) => cards.get(slug)?.element ?? []);
    const list = makeElement("ul", { class: "cards" }, ...elements);
    const heading = makeElement("h3", {}, PURPOSE_WORDS[purpose].title);
    return [makeElement("div", { class: "group" }, heading, list)];
  });
}

function drawThumbnail(
  card: Card,
  plan: Plan,
  { draw, notebook }: { draw: Draw; notebook: Notebook },
): void {
  const { recipe } = plan;
  const scene = plan.fits ? thumbnailScene({ plan, recipe, notebook }) : blankScene(notebook);
  const { width, height } = scene.frame;
  card.showPicture(pictureAddress(draw.file(scene)), width, height);
}
