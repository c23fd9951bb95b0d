/** While a form of the bench has a fault, nothing is saved or printed that goes by it. */
import { holdButtons } from "../page/hold-buttons.ts";
import { theOne } from "../page/parts.ts";
import type { Bench, FormName } from "./bench.ts";

/** The part of the page that each form is. */
const FORM_PARTS = {
  notebook: "notebook",
  strip: "strip-fields",
  printer: "printer",
} as const satisfies Readonly<Record<FormName, string>>;

/** Holds and frees the buttons of each form as its faults come and go; `say` tells who pressed one what it waits for. */
export function bindHolding(page: Document, bench: Bench, say: (words: string) => void): void {
  const hold = holdButtons(page, say);
  const formOf = (name: FormName) =>
    theOne(page, `[data-part="${FORM_PARTS[name]}"]`, HTMLFormElement);
  bench.tell(({ faults }) => {
    hold(formOf("notebook"), faults.notebook);
    hold(formOf("strip"), faults.strip);
    hold(formOf("printer"), faults.printer);
  });
}
