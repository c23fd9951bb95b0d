/** A notebook as somebody writes it: read, written again as a file and as an address, drawn; or every problem told at its place. */
import fc from "fast-check";
import { gridScene } from "../../src/draw/page/grid-scene.ts";
import { AXES } from "../../src/measure/axis.ts";
import { positionLength, usableSteps } from "../../src/measure/grid-axis.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { writeNotebook } from "../../src/notebook/write-notebook.ts";
import {
  readDivisionAddress,
  writeDivisionAddress,
} from "../../src/view/address/division-address.ts";
import { divisionJson, USUAL_DIVISION, workOutDivision } from "../../src/view/division/division.ts";
import { unnamed } from "../../src/view/fields/name-notebook.ts";
import { fieldsOf } from "../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../src/view/fields/read-notebook-fields.ts";
import { notebookJson } from "../../src/view/notebook/notebook-json.ts";
import { anyNotebook } from "../random/any-notebook.ts";
import { wildFile } from "../random/wild-file.ts";
import { promiseMarks } from "./plan-promises.ts";
import { promise, promiseSame, promiseTold, type Seen } from "./promises.ts";
import type { Sources } from "./sources.ts";

export function notebookKind({ texts, slugs }: Sources) {
  const cases = wildFile({
    owner: "notebook",
    texts: fc.oneof(texts.notebooks, anyNotebook().map(writeNotebook)),
    slugs,
  });
  const path = "notebooks/one.md";

  function attempt(text: string, seen: Seen): void {
    const reading = seen.run(() => readNotebook({ path, text }));
    if (!reading.ok) {
      seen.depth("refused");
      promiseTold(reading.issues, { path, text }, seen);
      return;
    }
    seen.depth("read");
    const notebook = reading.value;
    promiseMarks(seen.run(() => gridScene(notebook)).marks);
    JSON.parse(notebookJson(notebook));
    JSON.parse(divisionJson(seen.run(() => workOutDivision(USUAL_DIVISION, notebook))));
    promisePositions(notebook);
    promiseWritten(notebook);
  }

  return { name: "notebooks", cases, attempt };
}

/** Each position lies beyond the one before it, on the paper. */
function promisePositions({ axes }: Notebook): void {
  for (const axis of AXES) {
    const grid = axes[axis];
    let before = -1;
    for (let position = 0; position <= usableSteps(grid); position++) {
      const at = positionLength(grid, position);
      const isNext = Number.isInteger(at) && at > before && at <= grid.paper;
      promise(isNext, "a position out of its order", { axis, position, at, before });
      before = at;
    }
  }
}

/** As a file, as fields and as an address it is the same again. */
function promiseWritten(notebook: Notebook): void {
  const text = writeNotebook(notebook);
  const again = readNotebook({ path: `notebooks/${notebook.slug}.md`, text });
  promiseSame(again, { ok: true, value: notebook }, "a file that reads as another notebook");
  const bare = unnamed(notebook);
  promiseSame(readFields(fieldsOf(bare)), { ok: true, value: bare }, "fields of another notebook");
  const asked = { notebook: bare, division: USUAL_DIVISION };
  const said = readDivisionAddress(writeDivisionAddress(asked));
  promiseSame(said, { ok: true, value: asked }, "an address that reads as another notebook");
}
