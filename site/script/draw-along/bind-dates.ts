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
import { openDatedPage } from "./show-dated.ts";

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
  const data = theOne(document, "#plan-data", HTMLScriptElement);
  let view: DatedView | undefined;
  let opened: Promise<Opened> | undefined;
  const open = () => {
    opened ??= openPart(window, load).then((part) =>
      openPicker(part, {
        form,
        setStale: (isStale) =>
          theOne(whole, ".plate", HTMLElement).classList.toggle("stale", isStale),
        changed: (next, isBuilt) => {
          view = isBuilt ? undefined : next;
          data.textContent = next.planJson;
          show(view);
          shown(view);
        },
        said,
        say,
        names: () => namesPart(window, load),
      }),
    );
    opened.catch(() => {
      opened = undefined;
      say("The days could not be worked out: a part of this page is missing.");
    });
    return opened;
  };
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
  readonly changed: (view: DatedView, isBuilt: boolean) => void;
  readonly said: (text: string) => void;
  readonly say: (words: string) => void;
  readonly names: () => ReturnType<typeof namesPart>;
}

function openPicker(part: Part, { form, setStale, changed, said, say, names }: Picking): Opened {
  const { catalogue } = part;
  const recipe = catalogue.recipe(form.dataset.pattern ?? "");
  const notebook = catalogue.notebook(form.dataset.notebook ?? "");
  const { when: book, utcOffset } = catalogue;
  let now: DatesChoice = { calendar: {} };
  const showNow = () => {
    const { language } = now.calendar;
    const known = language ? window.spanbookNames?.namesOf(language) : undefined;
    const view = part.datedView({ recipe, notebook, book, choice: now, names: known, utcOffset });
    setStale(false);
    changed(view, part.writeDates(now) === "");
    showForm({ kind: recipe.dates?.span, choice: now, when: view.when });
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

/** Until the form's own script is there: what was pressed last is pressed again, and what was typed is read. */
function bindFirstTouch(form: HTMLFormElement, open: () => Promise<unknown>): void {
  let again: (() => void) | undefined;
  const wait = (act?: () => void) => {
    again = act ?? again;
    void open().then(
      () => {
        for (const [name, listener] of listeners) form.removeEventListener(name, listener);
        again?.();
        again = undefined;
      },
      () => undefined,
    );
  };
  const listeners: readonly (readonly [string, (event: Event) => void])[] = [
    ["focusin", () => wait()],
    ["submit", (event) => event.preventDefault()],
    [
      "click",
      ({ target }) => {
        const button = target instanceof Element ? target.closest("button") : null;
        if (button) wait(() => button.click());
      },
    ],
    [
      "input",
      ({ target }) => {
        if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
        const { value } = target;
        wait(() => {
          target.value = value;
          target.dispatchEvent(new Event("input", { bubbles: true }));
        });
      },
    ],
  ];
  for (const [name, listener] of listeners) form.addEventListener(name, listener);
  form.removeAttribute("data-enhance");
}
