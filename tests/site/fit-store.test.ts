/** The fit page's store while something in its forms is not valid: what is shown stays, and everybody knows that it is old. */
import { describe, expect, it } from "vitest";
import { type FormName, openFitStore } from "../../site/script/fit/fit-store.ts";
import type { FieldIssue } from "../../src/issue/facts/field-issue.ts";
import { USUAL_FIELDS } from "../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../src/view/fields/read-notebook-fields.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { catalogue } = await demoCatalogue();
const FAULT: FieldIssue = { field: "dotsAcross", kind: "control-character" };

function storeWith(form: FormName) {
  const reading = readFields(USUAL_FIELDS);
  if (!reading.ok) throw new Error("the usual notebook is not all right");
  const store = openFitStore(catalogue, {
    notebook: reading.value,
    pattern: "seed-list",
    dates: { calendar: {} },
  });
  const told: (readonly number[])[] = [];
  store.subscribe(({ errors }) =>
    told.push([errors.notebook.length, errors.dates.length, errors.printer.length]),
  );
  const before = store.state();
  store.setErrors(form, [FAULT]);
  return { store, told, before };
}

describe("a form with a fault", () => {
  it("changes nothing of what is shown, and everybody is told", () => {
    const { store, told, before } = storeWith("notebook");
    const { errors, ...shown } = store.state();
    const { errors: none, ...was } = before;
    expect(shown).toEqual(was);
    expect(none).toEqual({ notebook: [], dates: [], printer: [] });
    expect(errors.notebook).toEqual([FAULT]);
    expect(told).toEqual([
      [0, 0, 0],
      [1, 0, 0],
    ]);
  });

  it.each<[FormName, "notebook" | "pattern" | "dates", number]>([
    ["notebook", "notebook", 0],
    ["notebook", "pattern", 1],
    ["notebook", "dates", 1],
    ["dates", "dates", 0],
    ["dates", "notebook", 1],
    ["printer", "notebook", 1],
  ])("of the %s is over with another %s: %i left", (form, part, left) => {
    const { store } = storeWith(form);
    const { fit } = store.state();
    store.update({ [part]: fit[part] });
    expect(store.state().errors[form]).toHaveLength(left);
  });

  it("is over when it is told to be, and nothing is told twice", () => {
    const { store, told } = storeWith("printer");
    store.setErrors("printer", []);
    store.setErrors("printer", []);
    expect(told).toEqual([
      [0, 0, 0],
      [0, 0, 1],
      [0, 0, 0],
    ]);
  });
});
