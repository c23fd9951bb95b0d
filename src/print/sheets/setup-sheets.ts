/** The pages of a set-up on paper of the notebook's own size, in their order; one that stays free is a blank sheet. */
import type { DatedEvent } from "../../events/events-in.ts";
import { saySetupPage } from "../../issue/words/setup-words.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { Setup, SetupPage } from "../../setup/setup.ts";
import { pageSheets } from "./page-sheets.ts";
import type { Bookmark, Sheet } from "./sheet.ts";

export interface SetupSheetsQuestion {
  readonly setup: Setup;
  readonly notebook: Notebook;
  /** On its days, from calendar files. */
  readonly events?: readonly DatedEvent[];
}

/** One sheet after another, each made when it is asked for: a set-up may have a thousand. */
export function* setupSheets(question: SetupSheetsQuestion): Iterable<Sheet> {
  for (const page of question.setup.pages) yield setupSheet(page, question);
}

function setupSheet(page: SetupPage, { setup, notebook, events = [] }: SetupSheetsQuestion): Sheet {
  const title = titleOf(page, setup);
  const plan = page.drawn && setup.plans[page.drawn.plan];
  const drawn = plan?.pages[page.drawn?.page ?? 0];
  if (!plan || !drawn) {
    const { across, down } = notebook.axes;
    return { title, width: toMm(across.paper), height: toMm(down.paper), parts: [] };
  }
  const recipe = { ...plan.recipe, title: setup.titles.get(plan.pattern) ?? plan.pattern };
  const [sheet] = pageSheets({ plan: { ...plan, pages: [drawn] }, recipe, notebook, events });
  return { title, width: sheet?.width ?? 0, height: sheet?.height ?? 0, parts: sheet?.parts ?? [] };
}

/** A line for each page, so that a reader finds them by their numbers. */
export function setupBookmarks(setup: Setup): readonly Bookmark[] {
  return setup.pages.map((page, index) => ({ title: titleOf(page, setup), page: index }));
}

function titleOf({ number, side, drawn }: SetupPage, { titles }: Setup): string {
  return saySetupPage({ number, side }, drawn && (titles.get(drawn.pattern) ?? drawn.pattern));
}
