/** Fields as people fill them in, rightly and wrongly, for checks that must hold whatever is typed. */
import fc from "fast-check";
import { COUNTS, MIDDLES } from "../../src/measure/grid-axis.ts";
import { BINDINGS, RULINGS } from "../../src/notebook/notebook-keys.ts";
import { PAPER_NAMES } from "../../src/notebook/paper.ts";
import { fieldsOf, type NotebookFields } from "../../src/view/fields/notebook-fields.ts";
import { likelyNotebook } from "./any-notebook.ts";

/** Numbers in every field that takes one, so that each is near what would do or just beyond it. */
export function plausibleFields(): fc.Arbitrary<NotebookFields> {
  const mm = (min: number, max: number) =>
    fc.integer({ min: min * 4, max: max * 4 }).map((quarters) => `${quarters / 4}`);
  const first = fc.oneof(fc.constant(""), fc.constant("0"), mm(0, 20));
  return fc
    .record({
      title: fc.constant(""),
      slug: fc.constant(""),
      paper: fc.constantFrom("own", ...PAPER_NAMES),
      width: mm(15, 300),
      height: mm(15, 300),
      pitch: mm(0.25, 12),
      pitchDown: fc.oneof(fc.constant(""), mm(2, 12)),
      dotsAcross: fc.integer({ min: 1, max: 60 }).map(String),
      dotsDown: fc.integer({ min: 1, max: 60 }).map(String),
      firstLeft: first,
      firstTop: first,
      count: fc.constantFrom(...COUNTS),
      countDown: fc.constantFrom("", ...COUNTS),
      ruling: fc.constantFrom(...RULINGS),
      binding: fc.constantFrom(...BINDINGS),
      middle: fc.constantFrom(...MIDDLES),
    })
    .map((fields) =>
      fields.firstLeft === "" || fields.firstTop === ""
        ? { ...fields, firstLeft: "", firstTop: "" }
        : fields,
    );
}

/** Whatever can be typed, most of it nonsense. */
export function wildFields(): fc.Arbitrary<NotebookFields> {
  const wild = fc.oneof(
    fc.string(),
    fc.string({ unit: "binary" }),
    fc.constantFrom("", "0", "-1", "1e9", "NaN", "Infinity", "0x10", "9999999", "5,5", "٣", "½"),
    fc.double().map(String),
  );
  const likely = likelyNotebook().map(fieldsOf);
  return fc.oneof(plausibleFields(), likely).chain((fields) =>
    fc
      .uniqueArray(fc.constantFrom(...Object.keys(fields)), { maxLength: 3 })
      .chain((names) => fc.dictionary(fc.constantFrom("title", "slug", ...names), wild))
      .map((changed) => ({ ...fields, ...changed })),
  );
}
