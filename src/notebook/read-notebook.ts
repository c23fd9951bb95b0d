/** Reads a notebook's file: paper and grid in exact lengths, and whether the grid lies on the paper. */
import type { Issue } from "../issue/facts/issue.ts";
import { type Note, type Reading, readingOf, type TextFile } from "../issue/facts/reading.ts";
import { AXES, type Axis } from "../measure/axis.ts";
import type { GridAxis } from "../measure/grid-axis.ts";
import { fromMm } from "../measure/length.ts";
import { readFrontMatter } from "../source/front-matter/read-front-matter.ts";
import { checkSchema } from "../source/schema/check-schema.ts";
import { plainKeys } from "../source/schema/plain-value.ts";
import { slugOf } from "../source/slug.ts";
import { entryOf, type SourceMapping } from "../source/tree.ts";
import { centredDot } from "./centred-dot.ts";
import { gridFaults } from "./grid-faults.ts";
import type { Notebook } from "./notebook.ts";
import { GRID_SCHEMA, type GridHead, NOTEBOOK_SHAPE } from "./notebook-shape.ts";
import { PAPERS } from "./paper.ts";

/** The checked notebook, or every problem in it. Lengths are whole nanometres. */
export function readNotebook(file: TextFile): Reading<Notebook> {
  const matter = readFrontMatter(file);
  if (!matter.ok) return matter;
  const { tree, body, faults } = matter.value;
  const issues: Issue[] = [...faults];
  const note: Note = (issue) => issues.push(issue);
  const head = checkSchema(NOTEBOOK_SHAPE, tree, note);
  const grid = GRID_SCHEMA.safeParse(plainKeys(tree, NOTEBOOK_SHAPE.keys));
  if (!grid.success) return { ok: false, issues };
  const axes = { across: gridAxis(grid.data, "across"), down: gridAxis(grid.data, "down") };
  for (const axis of AXES) noteGrid(axes[axis], axis, { tree, note });
  if (!head) return { ok: false, issues };
  const { title, paper, ruling, binding, middle } = head;
  const notebook: Notebook = {
    slug: slugOf(file.path),
    title,
    ...(typeof paper === "string" ? { paperName: paper } : {}),
    axes,
    ruling,
    binding,
    middle,
    body,
  };
  return readingOf(notebook, issues);
}

/** One axis of the grid; without a written first dot it is centred, to half a nanometre. */
function gridAxis(head: GridHead, axis: Axis): GridAxis {
  const index = axis === "across" ? 0 : 1;
  const size = typeof head.paper === "string" ? PAPERS[head.paper] : head.paper;
  const dots = head.dots[index];
  const paper = fromMm(size[index]);
  const pitch = fromMm(typeof head.pitch === "number" ? head.pitch : head.pitch[axis]);
  const firstDot = head.firstDot
    ? fromMm(head.firstDot[index])
    : centredDot({ paper, dots, pitch });
  const count = typeof head.count === "string" ? head.count : head.count[axis];
  return { dots, pitch, firstDot, paper, count };
}

/** Notes what is wrong with an axis, at the dots or at the first dot. */
function noteGrid(
  grid: GridAxis,
  axis: Axis,
  { tree, note }: { readonly tree: SourceMapping; readonly note: Note },
): void {
  const dots = entryOf(tree, "dots")?.value.at ?? tree.at;
  const first = entryOf(tree, "firstDot")?.value.at;
  for (const fault of gridFaults(grid, axis)) {
    const at = fault.kind === "dots-beyond-paper" ? dots : (first ?? dots);
    note({ about: "rule", ...fault, at });
  }
}
