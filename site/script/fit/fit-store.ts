/** The fit page's store: what is asked, what follows from it, and what is wrong in a form just now. */
import type { MoonOn } from "../../../src/calendar/names/moon-names.ts";
import type { Names } from "../../../src/calendar/names.ts";
import type { DatedEvent } from "../../../src/events/events-in.ts";
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { Fit } from "../../../src/view/address/fit-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { NO_DATES } from "../../../src/view/fields/span-fields.ts";
import { type FitResult, fitResult } from "../../../src/view/fit-result.ts";
import type { DatesStore } from "../app/bind-dates.ts";
import { type EventsIn, openEvents } from "../app/open-events.ts";
import { openStore, type Store } from "../app/store.ts";
import type { PlanStore } from "../draw-along/along-plan.ts";

/** The forms of the page. While one has an error, what is shown is of what was written in it before. */
export type FormName = "notebook" | "dates" | "printer";

export type FormErrors = Readonly<Record<FormName, readonly FieldIssue[]>>;

/** What is asked, and everything that follows from it. */
export interface FitPageState extends FitResult {
  readonly fit: Fit;
  readonly errors: FormErrors;
  /** On the days that are picked, from calendar files. */
  readonly events: readonly DatedEvent[];
}

export interface FitStore extends Pick<Store<FitPageState>, "state" | "subscribe"> {
  readonly catalogue: Catalogue;
  /** Changes some of what is asked, whose errors are mended with that. */
  update(part: Partial<Fit>): void;
  /** Brings the names of a language, for whoever chooses it. */
  addNames(language: string, names: Names): void;
  /** Brings the moon, for labels that ask for it. */
  addMoon(moonOn: MoonOn): void;
  /** Brings other events than before. */
  setEvents(eventsIn: EventsIn): void;
  /** Says what is wrong in a form now: what is shown stays, as an old one. */
  setErrors(form: FormName, issues: readonly FieldIssue[]): void;
}

/** Are they one drawing, whatever else is asked? */
export function isSameDrawing(one: FitPageState, other: FitPageState): boolean {
  return (
    one.fit.notebook === other.fit.notebook &&
    one.events === other.events &&
    isOnSameDays(one, other)
  );
}

function isOnSameDays(one: FitPageState, other: FitPageState): boolean {
  return (
    one.fit.pattern === other.fit.pattern &&
    one.fit.dates === other.fit.dates &&
    one.when.names === other.when.names &&
    one.when.moonOn === other.when.moonOn
  );
}

/** A store that shows something from the start. */
export function openFitStore(catalogue: Catalogue, start: Fit): FitStore {
  const known = new Map<string, Names>();
  let moonOn: MoonOn | undefined;
  const eventsOn = openEvents();
  const resultOf = (fit: Fit) => {
    const names = known.get(fit.dates?.calendar.language ?? "");
    const result = fitResult(fit, catalogue, { names, moonOn });
    return { ...result, events: eventsOn.days(result.when.span) };
  };
  const { state, set, subscribe } = openStore<FitPageState>({
    fit: start,
    errors: NO_ERRORS,
    ...resultOf(start),
  });
  return {
    catalogue,
    state,
    subscribe,
    update: (part) => {
      const fit = { ...state().fit, ...part };
      const errors = {
        ...state().errors,
        ...(part.notebook && { notebook: [] }),
        ...(part.dates && { dates: [] }),
      };
      set({ fit, errors, ...resultOf(fit) });
    },
    addNames: (language, names) => {
      known.set(language, names);
      const { fit, errors } = state();
      if (fit.dates?.calendar.language === language) set({ fit, errors, ...resultOf(fit) });
    },
    addMoon: (moon) => {
      moonOn = moon;
      const { fit, errors } = state();
      set({ fit, errors, ...resultOf(fit) });
    },
    setEvents: (eventsIn) => {
      eventsOn.set(eventsIn);
      const { fit, errors } = state();
      set({ fit, errors, ...resultOf(fit) });
    },
    setErrors: (form, issues) => {
      const { errors } = state();
      if (issues.length === 0 && errors[form].length === 0) return;
      set({ ...state(), errors: { ...errors, [form]: issues } });
    },
  };
}

/** The store as the form of its days needs it. */
export function datesOf(store: FitStore): DatesStore {
  const { catalogue, addNames, addMoon } = store;
  return {
    ...{ catalogue, addNames, addMoon },
    pick: (dates) => store.update({ dates }),
    setErrors: (issues) => store.setErrors("dates", issues),
    subscribe: (show) => {
      let last: FitPageState | undefined;
      store.subscribe((state) => {
        if (last && isOnSameDays(last, state)) return;
        last = state;
        const { dates = NO_DATES, pattern } = state.fit;
        show({ kind: catalogue.recipe(pattern).dates?.span, choice: dates, when: state.when });
      });
    },
  };
}

/** The store as drawing along needs it. */
export function plansOf(store: FitStore): PlanStore {
  let last: FitPageState | undefined;
  return {
    notebook: store.state().notebook,
    subscribe: (show) =>
      store.subscribe((state) => {
        if (last && isSameDrawing(last, state)) return;
        last = state;
        show(state);
      }),
  };
}

const NO_ERRORS: FormErrors = { notebook: [], dates: [], printer: [] };
