/** The fields of a division as somebody types them, and what is wrong with them. */
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import { AXES } from "../../measure/axis.ts";
import { LIMITS } from "../../recipe/limits.ts";
import type { DivisionChoice } from "../division/division.ts";
import type { FieldReading } from "./read-notebook-fields.ts";
import { takeChoiceField, takeWholeField } from "./take-fields.ts";

/** Everything is text, as typed; all but the direction in steps. */
export interface DivisionFields {
  readonly axis: string;
  readonly parts: string;
  readonly gap: string;
  readonly before: string;
  readonly after: string;
}

export type DivisionFieldName = keyof DivisionFields;

export const DIVISION_FIELD_NAMES = ["axis", "parts", "gap", "before", "after"] as const;

/** The fields that read as this division. */
export function divisionFieldsOf({ axis, parts, gap, margin }: DivisionChoice): DivisionFields {
  const [before, after] = margin;
  return { axis, parts: `${parts}`, gap: `${gap}`, before: `${before}`, after: `${after}` };
}

/** The checked division, or every problem with its field. An empty gap or margin is none. */
export function readDivisionFields(
  fields: DivisionFields,
): FieldReading<DivisionChoice, DivisionFieldName> {
  const issues: FieldIssue<DivisionFieldName>[] = [];
  const note = (issue: FieldIssue<DivisionFieldName>) => issues.push(issue);
  const space = (field: "gap" | "before" | "after") =>
    takeWholeField({ field, text: fields[field].trim() || "0", expected: SPACE, note });
  const axis = takeChoiceField({ field: "axis", text: fields.axis, allowed: AXES, note });
  const parts = takeWholeField({ field: "parts", text: fields.parts, expected: PARTS, note });
  const [gap, before, after] = [space("gap"), space("before"), space("after")];
  if (!axis || parts === undefined || gap === undefined || before === undefined)
    return { ok: false, issues };
  if (after === undefined) return { ok: false, issues };
  return { ok: true, value: { axis, parts, gap, margin: [before, after] } };
}

const PARTS = { kind: "whole", unit: "parts", min: 1, max: LIMITS.tracks } as const;
const SPACE = { kind: "whole", unit: "steps", min: 0, max: LIMITS.space } as const;
