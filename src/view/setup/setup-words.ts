/** What is said of a set-up on a notebook: its days and numbers, what to count, the contents, what stays free or is left out. */
import type { WeekRule } from "../../calendar/week.ts";
import { saySetupLeftOut } from "../../issue/words/say-setup-left-out.ts";
import { sayCounting } from "../../issue/words/say-stroke.ts";
import { sayFreePages, saySavingOrder, TOP_BOUND } from "../../issue/words/setup-words.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { sideOfPage } from "../../setup/plan-setup.ts";
import { savingOrder } from "../../setup/saving-order.ts";
import type { Setup } from "../../setup/setup.ts";
import { rangeTitle } from "../pattern/span-words.ts";
import { contentsLines } from "./contents-lines.ts";
import { layoutViews } from "./layout-views.ts";
import type { LeftOutLine, SetupView } from "./setup-view.ts";

/** What it is said by. */
export interface SetupAround {
  readonly notebook: Notebook;
  /** A pattern by its slug: all that the set-up names are known. */
  readonly recipe: (slug: string) => Recipe;
  readonly rule: WeekRule;
}

/** All of a set-up's view but what is drawn, and its files. */
export type SetupWords = Omit<
  SetupView,
  "setupJson" | "stripSvg" | "stripJson" | "spreads" | "events" | "stripLeftOut"
>;

/** The words of a set-up. */
export function setupWords(setup: Setup, around: SetupAround): SetupWords {
  const { notebook, recipe: recipeOf, rule } = around;
  const { recipe, pages, plans } = setup;
  const { first } = recipe;
  const { across, down } = notebook.axes;
  const isTopBound = notebook.binding === "top" && plans.some((plan) => plan.pages.length === 2);
  return {
    dates: rangeTitle(recipe.dates, rule),
    paper: { width: toMm(across.paper), height: toMm(down.paper) },
    count: pages.length,
    from: first,
    to: first + pages.length - 1,
    firstSide: sideOfPage(first, notebook.binding),
    layouts: layoutViews(setup, notebook, rule),
    counting: sayCounting(notebook.axes),
    contents: contentsLines(setup, recipeOf, rule),
    ...freeWords(setup, recipeOf),
    leftOut: leftOutLines(setup, around),
    notes: isTopBound ? [TOP_BOUND] : [],
  };
}

/** A page that was filled comes from no entry. */
function freeWords(
  setup: Setup,
  recipeOf: SetupAround["recipe"],
): Pick<SetupView, "free" | "saving"> {
  const free = setup.pages.filter(({ drawn }) => !drawn).length;
  const filled = setup.pages.filter(({ drawn }) => drawn && drawn.entry === undefined).length;
  const order = savingOrder(setup);
  const titles = order?.entries.map((index) => entryTitle(setup, index, recipeOf)) ?? [];
  return {
    free: sayFreePages(free, filled),
    saving: order ? saySavingOrder(titles, order.free) : "",
  };
}

/** A block is called by what it repeats for. */
function entryTitle({ recipe }: Setup, index: number, recipeOf: SetupAround["recipe"]): string {
  const entry = recipe.pages[index];
  if (entry?.kind === "pattern") return recipeOf(entry.pattern).title;
  return entry ? `each ${entry.each}` : "";
}

function leftOutLines({ leftOut }: Setup, { recipe, rule }: SetupAround): readonly LeftOutLine[] {
  return leftOut.map(({ pattern, dates, why }) => {
    const days = dates ? `, ${rangeTitle(dates, rule)}` : "";
    return { title: `${recipe(pattern).title}${days}`, why: saySetupLeftOut(why) };
  });
}
