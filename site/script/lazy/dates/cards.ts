/** Cards of patterns on a notebook: outcomes when there is time, pictures when they come into view. */
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import type { When } from "../../../../src/plan/when.ts";
import type { Recipe } from "../../../../src/recipe/recipe.ts";
import { type Catalogue, openCatalogue } from "../../../../src/view/catalogue.ts";
import { showLines, showOutcome } from "../../device/open-on-notebook.ts";
import { openQueue } from "../../ui/idle-queue.ts";
import { openSight } from "../../ui/in-view.ts";
import type { CardsQuestion, CardView, DrawnCards } from "./dates-part.ts";
import { readNotebook } from "./read-notebook.ts";

type WorkOut = (recipe: Recipe, notebook: Notebook, book: When) => CardView;

/** Begins at once. Throws where the book's content is missing; what is wrong with the notebook is said. */
export function openCards(
  window: Window,
  question: CardsQuestion,
  workOut: WorkOut,
): DrawnCards | string {
  const { elements, isShown, told } = question;
  const catalogue = openCatalogue(window.spanbookContent);
  const notebook = readNotebook(question.said, catalogue);
  if (typeof notebook === "string") return notebook;
  const viewOf = openViews(catalogue, notebook, workOut);
  const queue = openQueue(window);
  const outcomes = new Map<string, CardView>();
  const drawSoon = (slug: string) =>
    queue.put(`picture ${slug}`, () => {
      if (isShown())
        elements.get(slug)?.querySelector("img")?.setAttribute("src", viewOf(slug).picture().src);
      return false;
    });
  const sight = openSight(new Map([...elements].map(([slug, card]) => [card, slug])), drawSoon);
  const waiting = [...elements.keys()];
  queue.put("outcomes", () => {
    const slug = waiting.shift();
    if (slug !== undefined) {
      outcomes.set(slug, viewOf(slug));
      if (isShown()) showCard(elements.get(slug), viewOf(slug));
    }
    if (waiting.length === 0) told(outcomes);
    return waiting.length > 0;
  });
  return {
    again: () => {
      for (const [slug, view] of outcomes) showCard(elements.get(slug), view);
      for (const slug of sight.seenAgain()) drawSoon(slug);
    },
  };
}

/** Each pattern is worked out once. */
function openViews(catalogue: Catalogue, notebook: Notebook, workOut: WorkOut) {
  const views = new Map<string, CardView>();
  return (slug: string): CardView => {
    const view = views.get(slug) ?? workOut(catalogue.recipe(slug), notebook, catalogue.when);
    views.set(slug, view);
    return view;
  };
}

function showCard(card: HTMLElement | undefined, { state, lines }: CardView): void {
  const words = card?.querySelector<HTMLElement>("[data-state]");
  if (words) showOutcome(words, state);
  const effort = card?.querySelector(".effort");
  if (effort) showLines(effort, lines);
}
