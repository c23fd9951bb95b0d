/** For which notebook and which days: a kind of span, the span itself, and how weeks are counted. */
import {
  isBeyondYears,
  SPAN_KINDS,
  type SpanKind,
  spanHolding,
} from "../../../src/calendar/span.ts";
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { asSentence } from "../../../src/issue/words/say-count.ts";
import { saySpanFault } from "../../../src/issue/words/say-span-fault.ts";
import { isLonger } from "../../../src/recipe/read/read-days.ts";
import { SETUP_LIMITS } from "../../../src/recipe/setup-keys.ts";
import { daysBeside } from "../../../src/setup/next-setup.ts";
import { unnamed } from "../../../src/view/fields/name-notebook.ts";
import type { DatesChoice } from "../../../src/view/fields/span-fields.ts";
import { rangeTitle, spanFacts } from "../../../src/view/pattern/span-words.ts";
import { keepersNotebook } from "../app/keepers-notebook.ts";
import { deviceToday } from "../app/today.ts";
import type { Device } from "../device/device.ts";
import { moonPart } from "../lazy/moon/moon-part.ts";
import { namesPart } from "../lazy/names/names-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { enhancePart, theOne } from "../ui/parts.ts";
import { bindSpanPicker } from "../ui/span-picker.ts";
import type { SetupState, SetupStore } from "./setup-store.ts";

interface Loading {
  readonly device: Device;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Keeps the fields and the page the same, and brings the names of a chosen language, and the moon. */
export function bindDaysForm(window: Window, store: SetupStore, loading: Loading): void {
  const { document } = window;
  bindNotebookChoice(document, store, loading.device);
  bindKindChoice(document, store);
  bindDates(window, store, loading);
  bindNames(window, store, loading);
}

/** The keeper's own stands first; that it is shown here changes nothing for other pages. */
function bindNotebookChoice(page: Document, store: SetupStore, device: Device): void {
  const { catalogue } = store;
  const select = theOne(page, "#notebook", HTMLSelectElement);
  const options = catalogue.notebooks.map(({ slug, title }) =>
    makeElement("option", { value: slug }, title),
  );
  const own = makeElement("option", { value: "" });
  select.append(own, ...options);
  store.subscribe(({ notebook }) => {
    const isOfBook = catalogue.notebooks.some(({ slug }) => slug === notebook.slug);
    own.hidden = isOfBook && own.textContent === "";
    if (!isOfBook) own.textContent = notebook.title;
    select.value = isOfBook ? notebook.slug : "";
  });
  select.addEventListener("change", () => {
    const chosen = catalogue.notebooks.find(({ slug }) => slug === select.value);
    store.update({ notebook: chosen ? unnamed(chosen) : keepersNotebook(device, catalogue) });
  });
}

/** Days that are no span of any kind are shown as such. */
function bindKindChoice(page: Document, store: SetupStore): void {
  const select = theOne(page, "#span-kind", HTMLSelectElement);
  store.subscribe((state) => {
    select.value = kindOf(state) ?? "";
  });
  select.addEventListener("change", () => {
    const kind = SPAN_KINDS.find((one) => one === select.value);
    const { asked, when } = store.state();
    const span = kind && spanHolding(kind, asked.setup.dates.from, when.rule);
    if (!span || isBeyondYears(span)) return;
    const { from, to } = span;
    store.update({ setup: { ...asked.setup, dates: { from, to } } });
  });
}

function kindOf({ asked: { setup }, when }: SetupState): SpanKind | undefined {
  const { from, to } = setup.dates;
  return SPAN_KINDS.find((kind) => {
    const span = spanHolding(kind, from, when.rule);
    return !isBeyondYears(span) && span.from === from && span.to === to;
  });
}

function bindDates(window: Window, store: SetupStore, { load }: Loading): void {
  const form = theOne(window.document, '[data-part="dates"]', HTMLFormElement);
  /** The same days are the same thing, so that what is typed just now is not written over. */
  let choice: DatesChoice = { calendar: {} };
  const show = bindSpanPicker(form, {
    book: store.catalogue.when,
    today: deviceToday,
    loadLists: () => namesPart(window, load),
    check: daysIssues,
    pick: (picking) => {
      const { picked, calendar } = picking;
      const { setup } = store.state().asked;
      choice = picking;
      const dates = picked ? { from: picked.from, to: picked.to } : setup.dates;
      store.update({ setup: { ...setup, dates }, calendar });
    },
    setErrors: (issues) => store.setErrors("dates", issues),
  });
  enhancePart(window.document, "dates");
  store.subscribe((state) => {
    const { asked, when } = state;
    const { dates } = asked.setup;
    const { picked, calendar } = choice;
    const isSame = picked?.from === dates.from && picked.to === dates.to;
    if (!isSame || calendar !== asked.calendar)
      choice = { picked: dates, calendar: asked.calendar };
    const range = {
      days: dates,
      words: rangeWords(state),
      beside: (by: number) => daysBeside(dates, by),
    };
    show({ kind: kindOf(state) ?? "month", choice, when, range });
  });
}

function rangeWords(state: SetupState): string {
  const { asked, when } = state;
  const { dates } = asked.setup;
  const kind = kindOf(state);
  const facts = kind ? spanFacts({ ...dates, kind }, when.rule) : "";
  return asSentence(rangeTitle(dates, when.rule)) + (facts === "" ? "" : `: ${facts}`);
}

function daysIssues({ picked }: DatesChoice): readonly FieldIssue[] {
  const { years } = SETUP_LIMITS;
  if (!picked) return [{ field: "dates", kind: "no-span" }];
  return isLonger(picked, years) ? [{ field: "dates", kind: "too-many-years", limit: years }] : [];
}

function bindNames(window: Window, store: SetupStore, { load, say }: Loading): void {
  let asked = "";
  let isMoonAsked = false;
  const { utcOffset } = store.catalogue;
  store.subscribe(({ asked: { calendar }, question }) => {
    if (question && utcOffset !== undefined && !isMoonAsked) {
      isMoonAsked = true;
      moonPart(window, load).then(
        ({ moonAt }) => store.addMoon(moonAt(utcOffset)),
        () => say("The moon could not be loaded: a part of this page is missing."),
      );
    }
    const { language = "" } = calendar;
    if (language === asked) return;
    asked = language;
    if (language === "") return;
    namesPart(window, load)
      .then((part) => part.namesOf(language))
      .then((known) => {
        if (known) store.addNames(language, known);
        else say(saySpanFault({ kind: "unknown-language" }));
      })
      .catch(() => say("The names could not be loaded: a part of this page is missing."));
  });
}
