/** What a pattern's page asks the engine for, once it is there: a notebook and days, from the address or from the form. */
import { saySpanFault } from "../../../src/issue/words/say-span-fault.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import { type Catalogue, openCatalogue } from "../../../src/view/catalogue.ts";
import type { DatesChoice } from "../../../src/view/fields/span-fields.ts";
import { deviceToday } from "../app/today.ts";
import { type DatesPart, datesPart, type LiveView } from "../lazy/dates/dates-part.ts";
import type { namesPart } from "../lazy/names/names-part.ts";
import type { OwnDates } from "./own-dates.ts";
import { isOwnSaid, type SaidParts } from "./page-address.ts";
import type { ShowAround } from "./show-around.ts";
import type { ShowYear } from "./year-row.ts";

export interface Part extends DatesPart {
  readonly catalogue: Catalogue;
}

/** The engine, and the book's recipes and notebooks for it. */
export async function openPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<Part> {
  const [part] = await Promise.all([datesPart(window, load), load("../fit/book.js")]);
  return { ...part, catalogue: openCatalogue(window.spanbookContent) };
}

export interface Asking {
  /** Shows what an address says, or tells why it cannot be read. */
  take(said: SaidParts): string | undefined;
  /** Shows that where nothing was shown yet. */
  begin(said: SaidParts): void;
  /** Shows once more what is shown, for instance with other events. */
  again(): void;
}

interface Asked {
  readonly form: HTMLFormElement | undefined;
  /** Of the page as it was built. */
  readonly slugs: { readonly pattern: string; readonly notebook: string };
  readonly setStale: (isStale: boolean) => void;
  readonly eventsIn: OwnDates["eventsIn"];
  readonly changed: (view: LiveView, said: SaidParts) => void;
  readonly said: (dates: string) => void;
  readonly say: (words: string) => void;
  readonly names: () => ReturnType<typeof namesPart>;
  readonly showYear: ShowYear;
  readonly showAround: ShowAround;
}

/** What it is shown on: a notebook as it is said, and the page of a set-up. */
interface On {
  readonly said: string;
  readonly notebook: Notebook;
  readonly setup?: string;
}

/** Shows nothing by itself. */
export function openAsking(part: Part, asked: Asked): Asking {
  const { form, slugs, changed, said, names, showYear, showAround } = asked;
  const { catalogue } = part;
  const recipe = catalogue.recipe(slugs.pattern);
  const { when: book, utcOffset } = catalogue;
  let now: DatesChoice = { calendar: {} };
  let on: On = { said: "", notebook: catalogue.notebook(slugs.notebook) };
  let isShown = false;
  const showNow = () => {
    const { language } = now.calendar;
    const { notebook } = on;
    const known = language ? window.spanbookNames?.namesOf(language) : undefined;
    const { setup } = on;
    const asking = { recipe, notebook, book, choice: now, setup, names: known, utcOffset };
    const view = part.liveView({ ...asking, eventsIn: asked.eventsIn });
    isShown = true;
    asked.setStale(false);
    showAround(
      isOwnSaid(on.said) ? { part, catalogue, pattern: recipe.slug, notebook } : undefined,
    );
    changed(view, { notebook: on.said, dates: part.writeDates(now), ...(setup && { setup }) });
    showForm?.({ kind: recipe.dates?.span, choice: now, when: view.when });
    showYear(part, { recipe, notebook, book, choice: now, when: view.when, on: on.said });
    if (language && !known) void bringNames(language, asked).then((has) => has && showNow());
  };
  const pick = (choice: DatesChoice) => {
    now = choice;
    showNow();
    said(part.writeDates(now));
  };
  const showForm =
    form &&
    part.bindSpanPicker(form, {
      book,
      today: deviceToday,
      loadLists: names,
      pick,
      setErrors: (issues) => asked.setStale(issues.length > 0),
    });
  const take = (next: SaidParts) => {
    const choice = part.readDates(next.dates);
    if (typeof choice === "string") return choice;
    const notebook = isOwnSaid(next.notebook)
      ? part.readNotebook(next.notebook, catalogue)
      : catalogue.notebook(slugs.notebook);
    if (typeof notebook === "string") return notebook;
    now = choice;
    on = { said: next.notebook, notebook, ...(next.setup && { setup: next.setup }) };
    showNow();
    return undefined;
  };
  return {
    take,
    begin: (next) => {
      if (!isShown) take(next);
    },
    again: () => {
      if (isShown) showNow();
    },
  };
}

/** Are the names of a language there now? What is wrong is said. */
async function bringNames(
  language: string,
  { names, say }: Pick<Asked, "names" | "say">,
): Promise<boolean> {
  try {
    const isKnown = (await names()).namesOf(language) !== undefined;
    if (!isKnown) say(saySpanFault({ kind: "unknown-language" }));
    return isKnown;
  } catch {
    say("The names could not be loaded: a part of this page is missing.");
    return false;
  }
}
