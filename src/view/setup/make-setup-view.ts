/** A set-up on a notebook, finished: its drawings, its files, and the words that depend on the notebook. */
import { stripScene } from "../../draw/strip/strip-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import { saySetupLeftOut } from "../../issue/words/say-setup-left-out.ts";
import { sayLeftOut } from "../../issue/words/say-strip-note.ts";
import { sayCounting } from "../../issue/words/say-stroke.ts";
import { sayFreePages, saySavingOrder, TOP_BOUND } from "../../issue/words/setup-words.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { sideOfPage } from "../../setup/plan-setup.ts";
import { savingOrder } from "../../setup/saving-order.ts";
import type { Setup } from "../../setup/setup.ts";
import { setupJson } from "../../setup/setup-json.ts";
import { setupStrip } from "../../setup/setup-strip.ts";
import type { Strip } from "../../strip/strip.ts";
import { stripJsonText } from "../../strip/strip-json.ts";
import { rangeTitle } from "../pattern/span-words.ts";
import type { Planner } from "../planner.ts";
import { contentsLines } from "./contents-lines.ts";
import { layoutViews } from "./layout-views.ts";
import type { LeftOutLine, SetupPair, SetupView } from "./setup-view.ts";
import { spreadViews } from "./spread-views.ts";

export interface SetupSources {
  readonly planner: Planner;
  readonly write: WriteSvg;
}

/** Works a set-up out for a notebook and draws its pages small. */
export function makeSetupView(pair: SetupPair, { planner, write }: SetupSources): SetupView {
  const notebook = planner.notebook(pair.notebook);
  const setup = planner.setupOn(pair.setup, pair.notebook);
  const strip = setupStrip(setup, notebook);
  const { rule } = planner.when;
  const { recipe, pages } = setup;
  const { first } = recipe;
  return {
    setupJson: setupJson(setup),
    stripSvg: write(stripScene(strip)),
    stripJson: stripJsonText(strip),
    dates: rangeTitle(recipe.dates, rule),
    paper: paperOf(notebook),
    count: pages.length,
    from: first,
    to: first + pages.length - 1,
    firstSide: sideOfPage(first, notebook.binding),
    spreads: spreadViews(setup, { notebook, write, rule }),
    layouts: layoutViews(setup, notebook, rule),
    counting: sayCounting(notebook.axes),
    contents: contentsLines(setup, planner.recipe, rule),
    ...freeWords(setup, planner),
    leftOut: leftOutLines(setup, planner),
    stripLeftOut: stripLines(strip),
    notes:
      notebook.binding === "top" && setup.plans.some((plan) => plan.pages.length === 2)
        ? [TOP_BOUND]
        : [],
  };
}

function paperOf({ axes }: Notebook): SetupView["paper"] {
  return { width: toMm(axes.across.paper), height: toMm(axes.down.paper) };
}

/** A page that was filled comes from no entry. */
function freeWords(setup: Setup, planner: Planner): Pick<SetupView, "free" | "saving"> {
  const free = setup.pages.filter(({ drawn }) => !drawn).length;
  const filled = setup.pages.filter(({ drawn }) => drawn && drawn.entry === undefined).length;
  const order = savingOrder(setup);
  const titles = order?.entries.map((index) => entryTitle(setup, index, planner)) ?? [];
  return {
    free: sayFreePages(free, filled),
    saving: order ? saySavingOrder(titles, order.free) : "",
  };
}

/** A block is called by what it repeats for. */
function entryTitle({ recipe }: Setup, index: number, planner: Planner): string {
  const entry = recipe.pages[index];
  if (entry?.kind === "pattern") return planner.recipe(entry.pattern).title;
  return entry ? `each ${entry.each}` : "";
}

function leftOutLines({ leftOut }: Setup, planner: Planner): readonly LeftOutLine[] {
  return leftOut.map(({ pattern, dates, why }) => {
    const { title } = planner.recipe(pattern);
    const days = dates ? `, ${rangeTitle(dates, planner.when.rule)}` : "";
    return { title: `${title}${days}`, why: saySetupLeftOut(why) };
  });
}

function stripLines({ sides, patterns }: Strip): readonly LeftOutLine[] {
  const titleOf = (slug: string) => patterns.find((one) => one.slug === slug)?.title ?? slug;
  const lines = sides.flatMap(({ leftOut }) =>
    leftOut
      .filter(({ kind }) => kind !== "no-split")
      .map((fact) => ({ title: titleOf(fact.pattern), why: sayLeftOut(fact) })),
  );
  const known = new Set<string>();
  return lines.filter(({ title, why }) => {
    const isNew = !known.has(`${title} ${why}`);
    known.add(`${title} ${why}`);
    return isNew;
  });
}
