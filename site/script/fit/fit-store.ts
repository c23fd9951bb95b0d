/** The page's store: what the fit page shows now, and who is told when that changes. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { Fit } from "../../../src/view/address/fit-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { type FitResult, fitResult } from "../../../src/view/fit-result.ts";

/** The forms of the page. While one has a fault, what is shown is of what was written in it before. */
export type FormName = "notebook" | "strip" | "printer";

export type Faults = Readonly<Record<FormName, readonly FieldIssue[]>>;

/** What is asked, and everything that follows from it. */
export interface FitPageState extends FitResult {
  readonly fit: Fit;
  readonly faults: Faults;
}

export type Show = (state: FitPageState) => void;

export interface FitStore {
  readonly catalogue: Catalogue;
  state(): FitPageState;
  /** Changes some of what is asked, whose faults are mended with that; everybody is told before this returns. */
  change(part: Partial<Fit>): void;
  /** Says what is wrong in a form now: what is shown stays, and everybody is told that it is an old one. */
  blame(form: FormName, issues: readonly FieldIssue[]): void;
  /** Tells what is shown now, and then every change. */
  tell(show: Show): void;
}

/** A store that shows something from the start. */
export function openFitStore(catalogue: Catalogue, start: Fit): FitStore {
  const listeners: Show[] = [];
  let state: FitPageState = { fit: start, faults: NO_FAULTS, ...fitResult(start, catalogue) };
  const show = (next: FitPageState) => {
    state = next;
    for (const each of listeners) each(state);
  };
  return {
    catalogue,
    state: () => state,
    change: (part) => {
      const fit = { ...state.fit, ...part };
      const faults = {
        ...state.faults,
        ...(part.notebook && { notebook: [] }),
        ...(part.strip && { strip: [] }),
      };
      show({ fit, faults, ...fitResult(fit, catalogue) });
    },
    blame: (form, issues) => {
      if (issues.length === 0 && state.faults[form].length === 0) return;
      show({ ...state, faults: { ...state.faults, [form]: issues } });
    },
    tell: (each) => {
      listeners.push(each);
      each(state);
    },
  };
}

const NO_FAULTS: Faults = { notebook: [], strip: [], printer: [] };
