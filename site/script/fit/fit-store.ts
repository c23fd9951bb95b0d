/** The bench: what the fit page shows now, and who is told when that changes. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { Fit } from "../../../src/view/address/fit-address.ts";
import type { BookShelf } from "../../../src/view/catalogue.ts";
import { type WorkedOut, workOut } from "../../../src/view/fit-result.ts";

/** The forms of the page. While one has a fault, what is shown is of what was written in it before. */
export type FormName = "notebook" | "strip" | "printer";

export type Faults = Readonly<Record<FormName, readonly FieldIssue[]>>;

/** What is asked, and everything that follows from it. */
export interface Shown extends WorkedOut {
  readonly fit: Fit;
  readonly faults: Faults;
}

export type Show = (shown: Shown) => void;

export interface Bench {
  readonly shelf: BookShelf;
  shown(): Shown;
  /** Changes some of what is asked, whose faults are mended with that; everybody is told before this returns. */
  change(part: Partial<Fit>): void;
  /** Says what is wrong in a form now: what is shown stays, and everybody is told that it is an old one. */
  blame(form: FormName, issues: readonly FieldIssue[]): void;
  /** Tells what is shown now, and then every change. */
  tell(show: Show): void;
}

/** A bench that shows something from the start. */
export function openBench(shelf: BookShelf, start: Fit): Bench {
  const told: Show[] = [];
  let shown: Shown = { fit: start, faults: NO_FAULTS, ...workOut(start, shelf) };
  const show = (next: Shown) => {
    shown = next;
    for (const each of told) each(shown);
  };
  return {
    shelf,
    shown: () => shown,
    change: (part) => {
      const fit = { ...shown.fit, ...part };
      const faults = {
        ...shown.faults,
        ...(part.notebook && { notebook: [] }),
        ...(part.strip && { strip: [] }),
      };
      show({ fit, faults, ...workOut(fit, shelf) });
    },
    blame: (form, issues) => {
      if (issues.length === 0 && shown.faults[form].length === 0) return;
      show({ ...shown, faults: { ...shown.faults, [form]: issues } });
    },
    tell: (each) => {
      told.push(each);
      each(shown);
    },
  };
}

const NO_FAULTS: Faults = { notebook: [], strip: [], printer: [] };
