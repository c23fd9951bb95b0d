/** The strip page's store: what is asked, the strip that follows from it, and what is wrong in a form just now. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import type { StripChoice } from "../../../src/view/fields/strip-fields.ts";
import {
  recipeLookup,
  type StripQuestion,
  type StripResult,
  stripResult,
} from "../../../src/view/strip/strip-result.ts";
import { openStore, type Store } from "../app/store.ts";

/** The forms of the page. While one has an error, what is shown is of what was written in it before. */
export type FormName = "carried" | "fields" | "printer";

export type FormErrors = Readonly<Record<FormName, readonly FieldIssue[]>>;

export interface StripState extends StripResult {
  readonly asked: StripQuestion;
  readonly errors: FormErrors;
}

export interface StripStore extends Pick<Store<StripState>, "state" | "subscribe"> {
  readonly catalogue: Catalogue;
  /** The title of a pattern of the book, or of the keeper's own. */
  titleOf(slug: string): string;
  /** Changes some of what is asked; the errors of what lies on the strip are mended with that. */
  update(part: Partial<StripQuestion>): void;
  /** Changes the strip from what it is now. */
  edit(change: (strip: StripChoice) => StripChoice): void;
  /** Says what is wrong in a form now: what is shown stays, as an old one. */
  setErrors(form: FormName, issues: readonly FieldIssue[]): void;
}

/** Does anything lie on it? */
export function isBare({ recipe }: StripState): boolean {
  return recipe.across.length + recipe.down.length === 0;
}

/** A store that shows something from the start. */
export function openStripStore(catalogue: Catalogue, start: StripQuestion): StripStore {
  const { state, set, subscribe } = openStore<StripState>({
    asked: start,
    errors: NO_ERRORS,
    ...stripResult(start, catalogue),
  });
  const update = (part: Partial<StripQuestion>) => {
    const asked = { ...state().asked, ...part };
    const errors = { ...state().errors, ...(part.strip && { carried: [], fields: [] }) };
    set({ asked, errors, ...stripResult(asked, catalogue) });
  };
  return {
    catalogue,
    state,
    subscribe,
    titleOf: (slug) => recipeLookup(state().asked, catalogue)(slug).title,
    update,
    edit: (change) => update({ strip: change(state().asked.strip) }),
    setErrors: (form, issues) => {
      const { errors } = state();
      if (issues.length === 0 && errors[form].length === 0) return;
      set({ ...state(), errors: { ...errors, [form]: issues } });
    },
  };
}

const NO_ERRORS: FormErrors = { carried: [], fields: [], printer: [] };
