/** Reads a notebook from its fields: the same limits and the same rules as for a notebook's file. */
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import { AXES, type Axis } from "../../measure/axis.ts";
import { COUNTS, type GridAxis, MIDDLES } from "../../measure/grid-axis.ts";
import { fromMm } from "../../measure/length.ts";
import { centredDot } from "../../notebook/centred-dot.ts";
import { gridFaults } from "../../notebook/grid-faults.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { BINDINGS, BOUNDS, NOTEBOOK_KEYS, RULINGS } from "../../notebook/notebook-keys.ts";
import { isPaperName, PAPERS } from "../../notebook/paper.ts";
import { AXIS_FIELDS, type FieldName, type NotebookFields, OWN_PAPER } from "./notebook-fields.ts";
import {
  takeChoiceField,
  takeMmField,
  takeSlugField,
  takeTextField,
  takeWholeField,
} from "./take-fields.ts";

/** A notebook as it is asked for: its title and its slug are "" where none was given. */
export type UnnamedNotebook = Notebook;

export type FieldReading<T, Field extends string> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly FieldIssue<Field>[] };

type NoteField = (issue: FieldIssue<FieldName>) => void;

/** The checked notebook, or every problem with its field. */
export function readFields(fields: NotebookFields): FieldReading<UnnamedNotebook, FieldName> {
  const issues: FieldIssue<FieldName>[] = [];
  // The pitch of both axes may stand in one field, whose problem is told once.
  const note: NoteField = (issue) => {
    if (!issues.some(({ field }) => field === issue.field)) issues.push(issue);
  };
  const title = takeTextField({ ...at("title", fields), expected: TITLE, note }) ?? "";
  const slug = takeSlugField({ ...at("slug", fields), note });
  const axes = { across: readAxis("across", fields, note), down: readAxis("down", fields, note) };
  const choice = <T extends string>(field: FieldName, allowed: readonly T[]) =>
    takeChoiceField({ ...at(field, fields), allowed, note });
  const paper = fields.paper;
  if (paper !== OWN_PAPER && !isPaperName(paper))
    note({ field: "paper", kind: "unsuitable", expected: PAPER });
  const ruling = choice("ruling", RULINGS);
  const binding = choice("binding", BINDINGS);
  const middle = choice("middle", MIDDLES);
  const { across, down } = axes;
  if (issues.length > 0 || !across || !down || !ruling || !binding || !middle)
    return { ok: false, issues };
  const named = isPaperName(paper) ? { paperName: paper } : {};
  const value = {
    title,
    slug,
    ...named,
    axes: { across, down },
    ruling,
    binding,
    middle,
    body: "",
  };
  return { ok: true, value };
}

const {
  title: { expected: TITLE },
  paper: { expected: PAPER },
} = NOTEBOOK_KEYS.notebook;
const PITCH = { kind: "millimetres", ...BOUNDS.pitch } as const;
const SIZE = { kind: "millimetres", ...BOUNDS.paper } as const;
const FIRST_DOT = { kind: "millimetres", min: 0, max: BOUNDS.paper.max } as const;
const DOTS = { kind: "whole", unit: "dots", ...BOUNDS.dots } as const;

/** A field by its name, with what is in it. */
function at(field: FieldName, fields: NotebookFields): { field: FieldName; text: string } {
  return { field, text: fields[field] };
}

/** One axis with its grid checked; nothing where a problem was noted. */
function readAxis(axis: Axis, fields: NotebookFields, note: NoteField): GridAxis | undefined {
  const names = AXIS_FIELDS[axis];
  const paper = paperMm(axis, fields, note);
  const pitch = takeMmField({
    ...at(givenField(axis, "pitch", fields), fields),
    expected: PITCH,
    note,
  });
  const dots = takeWholeField({ ...at(names.dots, fields), expected: DOTS, note });
  const count = takeChoiceField({
    ...at(givenField(axis, "count", fields), fields),
    allowed: COUNTS,
    note,
  });
  const first = readFirstDot(names.firstDot, fields, note);
  if (paper === undefined || pitch === undefined || dots === undefined || !count || !first)
    return undefined;
  const sizes = { paper: fromMm(paper), pitch: fromMm(pitch), dots };
  const firstDot = first.mm === undefined ? centredDot(sizes) : fromMm(first.mm);
  const grid = { ...sizes, firstDot, count };
  for (const fault of gridFaults(grid, axis)) {
    note({ ...fault, field: fault.kind === "dots-beyond-paper" ? names.dots : names.firstDot });
  }
  return grid;
}

/** Down, an empty field says the same as across. */
function givenField(axis: Axis, of: "pitch" | "count", fields: NotebookFields): FieldName {
  const own = AXIS_FIELDS[axis][of];
  return fields[own].trim() === "" ? AXIS_FIELDS.across[of] : own;
}

function paperMm(axis: Axis, fields: NotebookFields, note: NoteField): number | undefined {
  if (isPaperName(fields.paper)) return PAPERS[fields.paper][AXES.indexOf(axis) === 0 ? 0 : 1];
  if (fields.paper !== OWN_PAPER) return undefined;
  return takeMmField({ ...at(AXIS_FIELDS[axis].size, fields), expected: SIZE, note });
}

/** An empty field is a centred grid. */
function readFirstDot(
  field: FieldName,
  fields: NotebookFields,
  note: NoteField,
): { readonly mm: number | undefined } | undefined {
  if (fields[field].trim() === "") return { mm: undefined };
  const mm = takeMmField({ ...at(field, fields), expected: FIRST_DOT, note });
  return mm === undefined ? undefined : { mm };
}
