/** Fields make the same notebook as a file that says the same, or say at the field what is wrong. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayFieldIssue } from "../../src/issue/words/say-field-issue.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import {
  fieldsOf,
  type NotebookFields,
  USUAL_FIELDS,
} from "../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../src/view/fields/read-notebook-fields.ts";
import { plausibleFields } from "../random/any-fields.ts";
import { anyNotebook } from "../random/any-notebook.ts";

describe("the fields of a notebook", () => {
  it("read as that notebook, whatever it is", () => {
    fc.assert(
      fc.property(anyNotebook(), (notebook) => {
        const title = notebook.title.trim();
        const named = { ...notebook, title, body: "" };
        expect(readFields(fieldsOf(named))).toEqual({ ok: true, value: named });
      }),
      { seed: 70_001, numRuns: 1_000 },
    );
  });

  it("are all right exactly where a file that says the same is, and mean the same", () => {
    let good = 0;
    let bad = 0;
    fc.assert(
      fc.property(plausibleFields(), (fields) => {
        const typed = readFields(fields);
        const written = readNotebook({ path: "notebooks/x.md", text: fileOf(fields) });
        expect(typed.ok).toBe(written.ok);
        if (typed.ok && written.ok) {
          good += 1;
          expect({ ...typed.value, slug: "x", title: "X" }).toEqual(written.value);
        } else bad += 1;
      }),
      { seed: 70_002, numRuns: 2_000 },
    );
    expect(good).toBeGreaterThan(300);
    expect(bad).toBeGreaterThan(300);
  });
});

/** The fields as front matter, with nothing checked. */
function fileOf(f: NotebookFields): string {
  const or = (text: string, other: string) => (text === "" ? other : text);
  const paper = f.paper === "own" ? `[${f.width}, ${f.height}]` : f.paper;
  return [
    "---",
    "title: X",
    `paper: ${paper}`,
    `pitch: {across: ${f.pitch}, down: ${or(f.pitchDown, f.pitch)}}`,
    `dots: [${f.dotsAcross}, ${f.dotsDown}]`,
    f.firstLeft === "" ? "" : `firstDot: [${f.firstLeft}, ${f.firstTop}]`,
    `count: {across: ${f.count}, down: ${or(f.countDown, f.count)}}`,
    `ruling: ${f.ruling}`,
    `binding: ${f.binding}`,
    `middle: ${f.middle}`,
    "---",
  ].join("\n");
}

describe("a pitch in inches", () => {
  it("makes the notebook of the same pitch in millimetres", () => {
    const [inches, mm] = ["1/4 in", "6.35"].map((pitch) =>
      readFields({ ...USUAL_FIELDS, pitch, dotsAcross: "20", dotsDown: "30" }),
    );
    expect(inches).toEqual(mm);
    expect(inches?.ok).toBe(true);
  });
});

describe("what is said at a field", () => {
  const said = (change: Partial<NotebookFields>) => {
    const reading = readFields({ ...USUAL_FIELDS, ...change });
    return reading.ok ? [] : reading.issues.map((p) => [p.field, sayFieldIssue(p)]);
  };

  it.each<[Partial<NotebookFields>, readonly (readonly [string, string])[]]>([
    [{}, []],
    [{ pitch: "5,0" }, []],
    [{ pitch: "5 mm", pitchDown: "1/5 in" }, []],
    [{ firstLeft: "1/2 in", firstTop: "12,5 mm" }, []],
    [{ pitch: "1/4" }, [["pitch", "This needs a number of millimetres from 0.5 to 100."]]],
    [{ pitch: "5 in" }, [["pitch", "This needs a number of millimetres from 0.5 to 100."]]],
    [
      { firstLeft: "200" },
      [["firstLeft", "The first dot lies 200 mm in, and the sheet is 148 mm wide."]],
    ],
    [
      { firstTop: "210" },
      [["firstTop", "The first dot lies 210 mm in, and the sheet is 210 mm high."]],
    ],
    [{ dotsAcross: "many" }, [["dotsAcross", "This needs a whole number of dots from 2 to 400."]]],
    [{ dotsAcross: "" }, [["dotsAcross", "This needs a whole number of dots from 2 to 400."]]],
    [{ dotsAcross: "26.5" }, [["dotsAcross", "This needs a whole number of dots from 2 to 400."]]],
    [{ pitch: "1e1" }, [["pitch", "This needs a number of millimetres from 0.5 to 100."]]],
    [{ pitch: "5.0000001" }, [["pitch", "At most 6 decimals are kept exactly."]]],
    [
      { dotsAcross: "40" },
      [["dotsAcross", "40 dots at 5 mm need 195 mm; the sheet is 148 mm wide; 30 fit."]],
    ],
    // 22 steps of 6.35 mm are the sheet's very 139.7 mm: 23 dots would touch both of its edges.
    [
      { paper: "own", width: "5.5 in", pitch: "1/4 in", dotsDown: "20" },
      [["dotsAcross", "26 dots at 6.35 mm need 158.75 mm; the sheet is 139.7 mm wide; 22 fit."]],
    ],
    [
      { dotsAcross: "40", firstLeft: "8" },
      [
        [
          "dotsAcross",
          "These dots need 195 mm, and the sheet has 140 mm to the right of the first. At this pitch 29 dots fit.",
        ],
      ],
    ],
    [
      { firstTop: "0" },
      [
        [
          "firstTop",
          "The first dot down lies on the edge of the sheet, so the step between them has no size. Start counting at the dot, or move the first dot.",
        ],
      ],
    ],
    [
      { paper: "own", width: "12", height: "210", dotsAcross: "2" },
      [["width", "This needs a number of millimetres from 20 to 2000."]],
    ],
    [
      { pitch: "x", dotsDown: "-1", title: "a\u0007" },
      [
        ["title", "This has a character in it that cannot be shown."],
        ["pitch", "This needs a number of millimetres from 0.5 to 100."],
        ["dotsDown", "This needs a whole number of dots from 2 to 400."],
      ],
    ],
  ])("%j", (change, sentences) => {
    expect(said(change)).toEqual(sentences);
  });
});
