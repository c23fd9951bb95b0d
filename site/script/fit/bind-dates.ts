/** The days of the chosen pattern: picked in their form, with names of other languages as they are wanted. */
import { saySpanFault } from "../../../src/issue/words/say-span-fault.ts";
import { NO_DATES } from "../../../src/view/fields/span-fields.ts";
import { deviceToday } from "../app/today.ts";
import { moonPart } from "../lazy/moon/moon-part.ts";
import { namesPart } from "../lazy/names/names-part.ts";
import { enhancePart, theOne } from "../ui/parts.ts";
import { bindSpanPicker } from "../ui/span-picker.ts";
import type { FitStore } from "./fit-store.ts";

interface Loading {
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Keeps the form and the page the same, and brings the names of a chosen language. */
export function bindDates(window: Window, store: FitStore, { load, say }: Loading): void {
  const { document } = window;
  const form = theOne(document, '[data-part="dates"]', HTMLFormElement);
  const names = () => namesPart(window, load);
  const show = bindSpanPicker(form, {
    book: store.catalogue.when,
    today: deviceToday,
    loadLists: names,
    pick: (dates) => store.update({ dates }),
    setErrors: (issues) => store.setErrors("dates", issues),
  });
  enhancePart(document, "dates");
  let asked = "";
  let isMoonAsked = false;
  const { utcOffset } = store.catalogue;
  store.subscribe(({ fit, when }) => {
    const { dates = NO_DATES, pattern } = fit;
    show({ kind: store.catalogue.recipe(pattern).dates?.span, choice: dates, when });
    if (when.span && utcOffset !== undefined && !isMoonAsked) {
      isMoonAsked = true;
      moonPart(window, load).then(
        ({ moonAt }) => store.addMoon(moonAt(utcOffset)),
        () => say("The moon could not be loaded: a part of this page is missing."),
      );
    }
    const { language = "" } = dates.calendar;
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
