/** Picking days on a pattern's page: the engine comes when somebody asks for it, and the page shows what it works out. */
import { saySpanFault } from "../../../src/issue/words/say-span-fault.ts";
import { openCatalogue } from "../../../src/view/catalogue.ts";
import type { DatesChoice } from "../../../src/view/fields/span-fields.ts";
import { deviceToday } from "../app/today.ts";
import { type DatedView, type DatesPart, datesPart } from "../lazy/dates/dates-part.ts";
import { namesPart } from "../lazy/names/names-part.ts";
import { openNotice } from "../ui/notice.ts";
import { theOne } from "../ui/parts.ts";
import { openStatus } from "../ui/status.ts";
import { bindFirstTouch } from "./first-touch.ts";
import { openDatedLinks } from "./page-address.ts";
import { openDatedPage } from "./show-dated.ts";
import { bindYearRow, type ShowYear } from "./year-row.ts";

export interface PatternDates {
  /** Shows the days of an address. */
  take(text: string): Promise<void>;
  /** What is shown for picked days; nothing while what was built is. */
  view(): DatedView | undefined;
}

interface Dates {
  readonly form: HTMLFormElement;
  readonly whole: HTMLElement;
  readonly load: (name: string) => Promise<void>;
  /** Told of every change, before its days are said in the address. */
  readonly shown: (view: DatedView | undefined) => void;
  readonly said: (text: string) => void;
}

/** Enhances the form: with the first touch of it the engine is loaded, and what was done meanwhile is done again. */
export function bindDates(window: Window, { form, whole, load, shown, said }: Dates): PatternDates {
  const { document } = window;
  const [say, notice] = [openStatus(document), openNotice(document)];
  const show = openDatedPage(document, whole);
  const carry = openDatedLinks(document);
  const data = theOne(document, "#plan-data", HTMLScriptElement);
  let view: DatedView | undefined;
  let opened: Promise<Opened> | undefined;
  const open = () => {
    opened ??= openPart(window, load).then((part) =>
      openPicker(part, {
        form,
        setStale: (isStale) =>
          theOne(whole, ".plate", HTMLElement).classList.toggle("stale", isStale),
        changed: (next, text) => {
          view = text === "" ? undefined : next;
          data.textContent = next.planJson;
          carry(text);
          show(view);
          shown(view);
        },
        said,
        say,
        names: () => namesPart(window, load),
        showYear,
      }),
    );
    opened.catch(() => {
      opened = undefined;
      say("The days could not be worked out: a part of this page is missing.");
    });
    return opened;
  };
  const showYear = bindYearRow(window, { open, goTo: form });
  bindFirstTouch(form, open);
  return {
    view: () => view,
    take: async (text) => {
      try {
        const { take } = await open();
        const issue = take(text);
        if (issue === undefined) notice.clear();
        else notice.broken(issue, "What was shown before stays.");
      } catch {
        // It was said already that the part is missing.
      }
    },
  };
}

interface Part extends DatesPart {
  readonly catalogue: ReturnType<typeof openCatalogue>;
}

/** The engine, and the book's recipes and notebooks for it. */
async function openPart(window: Window, load: Dates["load"]): Promise<Part> {
  const [part] = await Promise.all([datesPart(window, load), load("../fit/book.js")]);
  return { ...part, catalogue: openCatalogue(window.spanbookContent) };
}

interface Opened {
  /** Shows what an address says, or tells why it cannot be read. */
  take(text: string): string | undefined;
}

interface Picking {
  readonly form: HTMLFormElement;
  readonly setStale: (isStale: boolean) => void;
  /** With what the address says of it; "" where what was built is shown. */
  readonly changed: (view: DatedView, text: string) => void;
  readonly said: (text: string) => void;
  readonly say: (words: string) => void;
  readonly names: () => ReturnType<typeof namesPart>;
  readonly showYear: ShowYear;
}

function openPicker(part: Part, picking: Picking): Opened {
  const { form, setStale, changed, said, say, names, showYear } = picking;
  const { catalogue } = part;
  const recipe = catalogue.recipe(form.dataset.pattern ?? "");
  const notebook = catalogue.notebook(form.dataset.notebook ?? "");
  const book = catalogue.when;
  let now: DatesChoice = { calendar: {} };
  const showNow = () => {
    const { language } = now.calendar;
    const known = language ? window.spanbookNames?.namesOf(language) : undefined;
    const view = part.datedView({ recipe, notebook, book, choice: now, names: known });
    setStale(false);
    changed(view, part.writeDates(now));
    showForm({ kind: recipe.dates?.span, choice: now, when: view.when });
    showYear(part, { recipe, notebook, book, choice: now, when: view.when });
    if (!language || known) return;
    names().then(
      (loaded) => {
        if (loaded.namesOf(language)) showNow();
        else say(saySpanFault({ kind: "unknown-language" }));
      },
      () => say("The names could not be loaded: a part of this page is missing."),
    );
  };
  const showForm = part.bindSpanPicker(form, {
    book,
    today: deviceToday,
    loadLists: names,
    pick: (choice) => {
      now = choice;
      showNow();
      said(part.writeDates(now));
    },
    setErrors: (issues) => setStale(issues.length > 0),
  });
  showNow();
  return {
    take: (text) => {
      const choice = part.readDates(text);
      if (typeof choice === "string") return choice;
      now = choice;
      showNow();
      return undefined;
    },
  };
}
