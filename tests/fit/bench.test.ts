/** The bench while something in its forms will not do: what is shown stays, and everybody knows that it is old. */
import { describe, expect, it } from "vitest";
import { type FormName, openBench } from "../../site/script/fit/fit-store.ts";
import type { FieldIssue } from "../../src/issue/facts/field-issue.ts";
import { USUAL_FIELDS } from "../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../src/view/fields/read-notebook-fields.ts";
import { NO_STRIP } from "../../src/view/fields/strip-fields.ts";
import { demoShelf } from "./page-shelf.ts";

const { shelf } = await demoShelf();
const FAULT: FieldIssue = { field: "dotsAcross", kind: "control-character" };

function benchWith(form: FormName) {
  const reading = readFields(USUAL_FIELDS);
  if (!reading.ok) throw new Error("the usual notebook is not all right");
  const bench = openBench(shelf, {
    notebook: reading.value,
    pattern: "seed-list",
    strip: NO_STRIP,
  });
  const told: (readonly number[])[] = [];
  bench.tell(({ faults }) =>
    told.push([faults.notebook.length, faults.strip.length, faults.printer.length]),
  );
  const before = bench.shown();
  bench.blame(form, [FAULT]);
  return { bench, told, before };
}

describe("a form with a fault", () => {
  it("changes nothing of what is shown, and everybody is told", () => {
    const { bench, told, before } = benchWith("notebook");
    const { faults, ...shown } = bench.shown();
    const { faults: none, ...was } = before;
    expect(shown).toEqual(was);
    expect(none).toEqual({ notebook: [], strip: [], printer: [] });
    expect(faults.notebook).toEqual([FAULT]);
    expect(told).toEqual([
      [0, 0, 0],
      [1, 0, 0],
    ]);
  });

  it.each<[FormName, "notebook" | "pattern" | "strip", number]>([
    ["notebook", "notebook", 0],
    ["notebook", "pattern", 1],
    ["notebook", "strip", 1],
    ["strip", "strip", 0],
    ["strip", "notebook", 1],
    ["printer", "notebook", 1],
  ])("of the %s is over with another %s: %i left", (form, part, left) => {
    const { bench } = benchWith(form);
    const { fit } = bench.shown();
    bench.change({ [part]: fit[part] });
    expect(bench.shown().faults[form]).toHaveLength(left);
  });

  it("is over when it is told to be, and nothing is told twice", () => {
    const { bench, told } = benchWith("printer");
    bench.blame("printer", []);
    bench.blame("printer", []);
    expect(told).toEqual([
      [0, 0, 0],
      [0, 0, 1],
      [0, 0, 0],
    ]);
  });
});
