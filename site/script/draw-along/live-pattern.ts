/** A pattern's page for picked days or for another notebook than it was built for: the engine comes when it is asked for, and the page shows what it works out. */
import { saySpanFault } from "../../../src/issue/words/say-span-fault.ts";
import { type Catalogue, openCatalogue } from "../../../src/view/catalogue.ts";
import type { DatesChoice } from "../../../src/view/fields/span-fields.ts";
import { deviceToday } from "../app/today.ts";
import type { OwnNotebook } from "../device/own-notebook.ts";
import { type DatesPart, datesPart, type LiveView } from "../lazy/dates/dates-part.ts";
import { namesPart } from "../lazy/names/names-part.ts";
import { openNotice } from "../ui/notice.ts";
import { theOne } from "../ui/parts.ts";
import { openStatus } from "../ui/status.ts";
import { bindFirstTouch } from "./first-touch.ts";
import { isOwnSaid, type SaidParts } from "./page-address.ts";
import { openPageLinks } from "./page-links.ts";
import { openAround, type ShowAround } from "./show-around.ts";
import { openLivePage } from "./show-live.ts";
import { bindYearRow, type ShowYear } from "./year-row.ts";

export interface LivePattern {
  /** Shows the notebook and the days of an address. */
  take(said: SaidParts): Promise<void>;
  /** What is shown in place of what was built; nothing while that is. */
  view(): LiveView | undefined;
}

interface Shows {
  readonly whole: HTMLElement;
  readonly own: OwnNotebook | undefined;
  readonly load: (name: string) => Promise<void>;
  /** Told of every change, before it is said in the address. */
  readonly shown: (view: LiveView | undefined) => void;
  /** Told of the days that somebody picked. */
  readonly said: (dates: string) => void;
}

/** Enhances the form for days, where there is one: with the first touch of it the engine is loaded. */
export function bindLivePattern(window: Window, shows: Shows): LivePattern {
  const { document } = window;
  const { whole, own, load, shown, said } = shows;
  const [say, notice] = [openStatus(document), openNotice(document)];
  const form = document.querySelector<HTMLFormElement>('form[data-part="dates"]') ?? undefined;
  const page = openLivePage(document, whole);
  const { pattern = "", notebook: slug = "" } = whole.dataset;
  const link = openPageLinks(document, { own, built: { slug, title: page.notebook } });
  const data = theOne(document, "#plan-data", HTMLScriptElement);
  const plate = theOne(whole, ".plate", HTMLElement);
  let view: LiveView | undefined;
  let opened: Promise<Asking> | undefined;
  const show = (next: LiveView | undefined, now: SaidParts) => {
    const isBuilt = !isOwnSaid(now.notebook) && now.dates === "";
    view = isBuilt ? undefined : next;
    data.textContent = next?.planJson ?? "null";
    link(now);
    page.show(view, now.notebook === own?.said);
    shown(view);
  };
  const open = () => {
    opened ??= openPart(window, load).then((part) =>
      openAsking(part, {
        form,
        slugs: { pattern, notebook: slug },
        setStale: (isStale) => plate.classList.toggle("stale", isStale),
        changed: show,
        said,
        say,
        names: () => namesPart(window, load),
        showYear,
        showAround,
      }),
    );
    opened.catch(() => {
      opened = undefined;
      say("It could not be worked out: a part of this page is missing.");
    });
    return opened;
  };
  const showYear = bindYearRow(window, { open, goTo: form ?? whole });
  const showAround = openAround(window);
  if (form) bindFirstTouch(form, open);
  return {
    view: () => view,
    take: async (now) => {
      // What was built needs no engine.
      if (!opened && !isOwnSaid(now.notebook) && now.dates === "") return show(undefined, now);
      try {
        const { take } = await open();
        const issue = take(now);
        if (issue === undefined) notice.clear();
        else notice.broken(issue, "What was shown before stays.");
      } catch {
        // It was said already that the part is missing.
      }
    },
  };
}

interface Part extends DatesPart {
  readonly catalogue: Catalogue;
}

/** The engine, and the book's recipes and notebooks for it. */
async function openPart(window: Window, load: Shows["load"]): Promise<Part> {
  const [part] = await Promise.all([datesPart(window, load), load("../fit/book.js")]);
  return { ...part, catalogue: openCatalogue(window.spanbookContent) };
}

interface Asking {
  /** Shows what an address says, or tells why it cannot be read. */
  take(said: SaidParts): string | undefined;
}

interface Asked {
  readonly form: HTMLFormElement | undefined;
  /** Of the page as it was built. */
  readonly slugs: { readonly pattern: string; readonly notebook: string };
  readonly setStale: (isStale: boolean) => void;
  readonly changed: (view: LiveView, said: SaidParts) => void;
  readonly said: (dates: string) => void;
  readonly say: (words: string) => void;
  readonly names: () => ReturnType<typeof namesPart>;
  readonly showYear: ShowYear;
  readonly showAround: ShowAround;
}

function openAsking(part: Part, asked: Asked): Asking {
  const { form, slugs, setStale, changed, said, say, names, showYear, showAround } = asked;
  const { catalogue } = part;
  const recipe = catalogue.recipe(slugs.pattern);
  const { when: book, utcOffset } = catalogue;
  let now: DatesChoice = { calendar: {} };
  let on = { said: "", notebook: catalogue.notebook(slugs.notebook) };
  const showNow = () => {
    const { language } = now.calendar;
    const { notebook } = on;
    const known = language ? window.spanbookNames?.namesOf(language) : undefined;
    const view = part.liveView({ recipe, notebook, book, choice: now, names: known, utcOffset });
    setStale(false);
    showAround(
      isOwnSaid(on.said) ? { part, catalogue, pattern: recipe.slug, notebook } : undefined,
    );
    changed(view, { notebook: on.said, dates: part.writeDates(now) });
    showForm?.({ kind: recipe.dates?.span, choice: now, when: view.when });
    showYear(part, { recipe, notebook, book, choice: now, when: view.when, on: on.said });
    if (!language || known) return;
    names().then(
      (loaded) => {
        if (loaded.namesOf(language)) showNow();
        else say(saySpanFault({ kind: "unknown-language" }));
      },
      () => say("The names could not be loaded: a part of this page is missing."),
    );
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
      setErrors: (issues) => setStale(issues.length > 0),
    });
  showNow();
  return {
    take: (next) => {
      const choice = part.readDates(next.dates);
      if (typeof choice === "string") return choice;
      const notebook = isOwnSaid(next.notebook)
        ? part.readNotebook(next.notebook, catalogue)
        : catalogue.notebook(slugs.notebook);
      if (typeof notebook === "string") return notebook;
      now = choice;
      on = { said: next.notebook, notebook };
      showNow();
      return undefined;
    },
  };
}
