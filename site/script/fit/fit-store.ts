/** The fit page's store: what is asked, what follows from it, and what is wrong in a form just now. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { Fit } from "../../../src/view/address/fit-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { type FitResult, fitResult } from "../../../src/view/fit-result.ts";
import { openStore, type Store } from "../app/store.ts";

/** The forms of the page. While one has an error, what is shown is of what was written in it before. */
export type FormName = "notebook" | "strip" | "printer";

export type FormErrors = Readonly<Record<FormName, readonly FieldIssue[]>>;

/** What is asked, and everything that follows from it. */
export interface FitPageState extends FitResult {
  readonly fit: Fit;
  readonly errors: FormErrors;
}

export interface FitStore extends Pick<Store<FitPageState>, "state" | "subscribe"> {
  readonly catalogue: Catalogue;
  /** Changes some of what is asked, whose errors are mended with that. */
  update(part: Partial<Fit>): void;
  /** Says what is wrong in a form now: what is shown stays, as an old one. */
  setErrors(form: FormName, issues: readonly FieldIssue[]): void;
}

/** A store that shows something from the start. */
export function openFitStore(catalogue: Catalogue, start: Fit): FitStore {
  const { state, set, subscribe } = openStore<FitPageState>({
    fit: start,
    errors: NO_ERRORS,
    ...fitResult(start, catalogue),
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
        ...(part.strip && { strip: [] }),
      };
      set({ fit, errors, ...fitResult(fit, catalogue) });
    },
    setErrors: (form, issues) => {
      const { errors } = state();
      if (issues.length === 0 && errors[form].length === 0) return;
      set({ ...state(), errors: { ...errors, [form]: issues } });
    },
  };
}

const NO_ERRORS: FormErrors = { notebook: [], strip: [], printer: [] };
