/** This month and this week on the keeper's notebook, by the device's clock, drawn as they come near. */
import { isBeyondYears, spanHolding } from "../../../src/calendar/span.ts";
import { gridScene } from "../../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../../src/draw/page/page-scene.ts";
import { planPattern } from "../../../src/plan/plan-pattern.ts";
import { UNDATED } from "../../../src/plan/when.ts";
import type { Recipe } from "../../../src/recipe/recipe.ts";
import { writeAddress } from "../../../src/view/address/hash-params.ts";
import { notebookEntries } from "../../../src/view/address/notebook-address.ts";
import { datesEntries } from "../../../src/view/address/span-address.ts";
import { statusWords } from "../../../src/view/pattern/plan-status.ts";
import { spanTitle } from "../../../src/view/pattern/span-words.ts";
import { deviceToday } from "../app/today.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { openSight } from "../ui/in-view.ts";
import { theOne } from "../ui/parts.ts";
import type { Draw } from "../ui/show-drawing.ts";
import type { HomeState, HomeStore } from "./home-store.ts";

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
}

/** Follows the notebook; each figure is named after its pattern. */
export function bindToday(window: Window, store: HomeStore, { draw, queue }: Shows): void {
  const { document: page, spanbookToday: today } = window;
  const shows = new Map(
    today?.recipes.map((recipe) => {
      const figure = theOne(page, `[data-today="${recipe.slug}"]`, HTMLElement);
      return [figure, openFigure(figure, { recipe, when: today.when ?? UNDATED, draw })] as const;
    }),
  );
  const showSoon = (figure: HTMLElement) =>
    queue.put(`today ${figure.id}`, () => {
      shows.get(figure)?.(store.state());
      return false;
    });
  const sight = openSight(new Map([...shows.keys()].map((each) => [each, each])), showSoon);
  let last: unknown;
  store.subscribe(({ asked: { notebook } }) => {
    if (notebook === last) return;
    last = notebook;
    for (const figure of sight.seenAgain()) showSoon(figure);
  });
}

/** Shows it on a notebook: the drawing, its days as the link's words, and the same days behind the link. */
function openFigure(
  figure: HTMLElement,
  { recipe: written, when: book, draw }: Pick<Shows, "draw"> & Dated,
): (state: HomeState) => void {
  const kind = written.dates?.span ?? "month";
  const held = spanHolding(kind, deviceToday(), book.rule);
  const span = isBeyondYears(held) ? held.span : held;
  const when = { ...book, span };
  const plate = theOne(figure, ".plate", HTMLElement);
  const link = theOne(figure, "a", HTMLAnchorElement);
  const said = theOne(figure, "[data-part=state]", HTMLElement);
  const [page = ""] = link.href.split("#");
  return ({ asked, notebook }) => {
    const plan = planPattern(written, notebook, when);
    const { recipe } = plan;
    draw.show(plate, plan.fits ? pageScene({ plan, recipe, notebook }) : gridScene(notebook));
    link.textContent = `${written.title}, ${spanTitle(span, when.rule)}`;
    link.href = `${page}${writeAddress([
      ...notebookEntries(asked.notebook),
      ...datesEntries({ picked: span, calendar: {} }),
    ])}`;
    said.textContent = plan.fits ? "" : statusWords(plan).words;
  };
}

interface Dated {
  readonly recipe: Recipe;
  readonly when: typeof UNDATED;
}
