/** The days of what a page draws: picked in their form, with names of other languages and the moon as they are wanted. */
import type { MoonOn } from "../../../src/calendar/names/moon-names.ts";
import type { Names } from "../../../src/calendar/names.ts";
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { saySpanFault } from "../../../src/issue/words/say-span-fault.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import type { DatesChoice } from "../../../src/view/fields/span-fields.ts";
import { moonPart } from "../lazy/moon/moon-part.ts";
import { namesPart } from "../lazy/names/names-part.ts";
import { enhancePart, theOne } from "../ui/parts.ts";
import { bindSpanPicker, type PickedDates } from "../ui/span-picker.ts";
import { deviceToday } from "./today.ts";

/** What the form needs of a page's store. */
export interface DatesStore {
  readonly catalogue: Pick<Catalogue, "when" | "utcOffset">;
  /** Tells what is drawn, and for which days. */
  subscribe(show: (picked: PickedDates) => void): void;
  pick(dates: DatesChoice): void;
  setErrors(issues: readonly FieldIssue[]): void;
  /** Brings the names of a language, for whoever chooses it. */
  addNames(language: string, names: Names): void;
  /** Brings the moon, for labels that ask for it. */
  addMoon(moonOn: MoonOn): void;
}

interface Loading {
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Keeps the form and the page the same, and brings the names of a chosen language. */
export function bindDates(window: Window, store: DatesStore, { load, say }: Loading): void {
  const { document } = window;
  const form = theOne(document, '[data-part="dates"]', HTMLFormElement);
  const names = () => namesPart(window, load);
  const show = bindSpanPicker(form, {
    book: store.catalogue.when,
    today: deviceToday,
    loadLists: names,
    pick: store.pick,
    setErrors: store.setErrors,
  });
  enhancePart(document, "dates");
  let asked = "";
  let isMoonAsked = false;
  const { utcOffset } = store.catalogue;
  store.subscribe((picked) => {
    const { choice, when } = picked;
    show(picked);
    if (when.span && utcOffset !== undefined && !isMoonAsked) {
      isMoonAsked = true;
      moonPart(window, load).then(
        ({ moonAt }) => store.addMoon(moonAt(utcOffset)),
        () => say("The moon could not be loaded: a part of this page is missing."),
      );
    }
    const { language = "" } = choice.calendar;
    if (language === asked) return;
    asked = language;
    if (language === "") return;
    names()
      .then((part) => part.namesOf(language))
      .then((known) => {
        if (known) store.addNames(language, known);
        else say(saySpanFault({ kind: "unknown-language" }));
      })
      .catch(() => say("The names could not be loaded: a part of this page is missing."));
  });
}
