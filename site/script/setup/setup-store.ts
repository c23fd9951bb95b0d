/** The set-up page's store: what is asked, what is wrong with it, and the pages that follow, worked out when there is time. */
import type { MoonOn } from "../../../src/calendar/names/moon-names.ts";
import type { Names } from "../../../src/calendar/names.ts";
import type { DatedEvent } from "../../../src/events/events-in.ts";
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { Plan } from "../../../src/plan/plan.ts";
import type { Recipe } from "../../../src/recipe/recipe.ts";
import type { SetupEntry } from "../../../src/recipe/setup-recipe.ts";
import { setupSteps } from "../../../src/setup/plan-setup.ts";
import type { Setup } from "../../../src/setup/setup.ts";
import type { PackedLayout } from "../../../src/view/address/carried-layouts.ts";
import type { AskedSetup } from "../../../src/view/address/setup-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { layoutIn, type SetupResult, setupResult } from "../../../src/view/setup/setup-result.ts";
import type { OwnLayout } from "../../../src/view/strip/strip-result.ts";
import { type EventsIn, openEvents } from "../app/open-events.ts";
import { openStore, type Store } from "../app/store.ts";
import type { Queue } from "../ui/idle-queue.ts";

/** The forms of the page. While one has an error, what is shown is of what was written in it before. */
export type FormName = "pages" | "dates" | "fields" | "printer";

export type FormErrors = Readonly<Record<FormName, readonly FieldIssue[]>>;

export interface SetupState extends SetupResult {
  readonly asked: AskedSetup;
  readonly errors: FormErrors;
  /** Layouts of the device, and of the address. */
  readonly own: readonly Recipe[];
  /** The same as an address carries them. */
  readonly packed: readonly PackedLayout[];
  /** On its days, from calendar files: drawn, and planned for by nothing. */
  readonly events: readonly DatedEvent[];
  /** Left out while it is worked out, and where it cannot be. */
  readonly setup?: Setup;
}

export interface SetupStore extends Pick<Store<SetupState>, "state" | "subscribe"> {
  readonly catalogue: Catalogue;
  /** A layout of the book or of the device. */
  layout(slug: string): Recipe | undefined;
  /** Changes some of what is asked; the errors of what is set anew are mended with that. */
  update(part: Partial<AskedSetup>): void;
  /** Changes the list of pages from what it is now. */
  edit(change: (pages: readonly SetupEntry[]) => readonly SetupEntry[]): void;
  /** Brings what the page loads later: layouts of the device, the names of a language, the moon. */
  addLayouts(own: readonly OwnLayout[]): void;
  addNames(language: string, names: Names): void;
  addMoon(moonOn: MoonOn): void;
  /** Brings other events than before; what is planned stays. */
  setEvents(eventsIn: EventsIn): void;
  /** Says what is wrong in a form now: what is shown stays, as an old one. */
  setErrors(form: FormName, issues: readonly FieldIssue[]): void;
}

/** What the page shows first; layouts that come along are read only later. */
export interface SetupStoreStart {
  readonly asked: AskedSetup;
  readonly packed: readonly PackedLayout[];
}

/** A store that shows something from the start; `queue` has the time to plan. */
export function openSetupStore(
  catalogue: Catalogue,
  start: SetupStoreStart,
  queue: Queue,
): SetupStore {
  const names = new Map<string, Names>();
  let own: readonly Recipe[] = [];
  let { packed } = start;
  let moonOn: MoonOn | undefined;
  const eventsOn = openEvents();
  const resultOf = (asked: AskedSetup) => {
    const known = names.get(asked.calendar.language ?? "");
    const result = setupResult(asked, { catalogue, own, names: known, moonOn });
    return { asked, own, packed, ...result, events: eventsOn.days(result.recipe.dates) };
  };
  const { state, set, subscribe } = openStore<SetupState>({
    ...resultOf(start.asked),
    errors: NO_ERRORS,
  });
  const plan = openPlanning(queue, (setup) => set({ ...state(), setup }));
  const put = (asked: AskedSetup, errors: FormErrors) => {
    set({ errors, ...resultOf(asked) });
    plan(state());
  };
  const again = () => put(state().asked, state().errors);
  const update = (part: Partial<AskedSetup>) => {
    const mended = part.setup && { pages: [], fields: [], dates: [] };
    put({ ...state().asked, ...part }, { ...state().errors, ...mended });
  };
  plan(state());
  return {
    ...{ catalogue, state, subscribe, update },
    layout: (slug) => layoutIn({ catalogue, own }, slug),
    edit: (change) => {
      const { setup } = state().asked;
      update({ setup: { ...setup, pages: change(setup.pages) } });
    },
    addLayouts: (layouts) => {
      if (layouts.length + own.length === 0) return;
      own = layouts.map(({ recipe }) => recipe);
      packed = layouts;
      plan.forget();
      again();
    },
    addNames: (language, known) => {
      names.set(language, known);
      if (state().asked.calendar.language === language) again();
    },
    addMoon: (moon) => {
      moonOn = moon;
      plan.forget();
      again();
    },
    setEvents: (eventsIn) => {
      eventsOn.set(eventsIn);
      set({ ...state(), events: eventsOn.days(state().recipe.dates) });
    },
    setErrors: (form, issues) => {
      const { errors } = state();
      if (issues.length === 0 && errors[form].length === 0) return;
      set({ ...state(), errors: { ...errors, [form]: issues } });
    },
  };
}

const NO_ERRORS: FormErrors = { pages: [], dates: [], fields: [], printer: [] };

/** More plans than a long set-up has are not remembered. */
const MOST_PLANS = 3_000;

/** Works one set-up out after another, a page at a time; plans of the same notebook and calendar are made once. */
function openPlanning(queue: Queue, done: (setup: Setup) => void) {
  const known = new Map<string, Plan>();
  let knownFor = "";
  const plan = ({ question, notebook, when }: SetupResult) => {
    const now = JSON.stringify([notebook, when.rule, when.names]);
    if (now !== knownFor || known.size > MOST_PLANS) known.clear();
    knownFor = now;
    const steps = question && setupSteps({ ...question, known });
    queue.put("plan", () => {
      const step = steps?.next();
      if (step?.done) done(step.value);
      return step?.done === false;
    });
  };
  return Object.assign(plan, { forget: () => known.clear() });
}
