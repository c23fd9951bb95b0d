/** A notebook's pitch from a length over many steps, and how sure one can be of it. */
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import { sayMm } from "../../issue/words/say-count.ts";
import { BOUNDS } from "../../notebook/notebook-keys.ts";
import type { FieldReading } from "./read-notebook-fields.ts";
import { takeMmField, takeWholeField } from "./take-fields.ts";

export type PitchField = "steps" | "length";

export interface MeasuredPitch {
  /** In mm. */
  readonly pitch: number;
  /** The pitch lies within this of the truth, in mm. */
  readonly doubt: number;
  /** A pitch that notebooks are printed with, where exactly one lies within the doubt. */
  readonly likely?: number;
}

/** A ruler is read to a quarter of a millimetre at either end (common practice, no source). */
const READING_MM = 0.5;

/** Pitches that are sold: round millimetres, and parts of an inch of 25.4 mm (common practice, no source). */
const SOLD = [2, 2.5, 3, 3.175, 3.7, 4, 4.2, 5, 5.08, 6, 6.35, 7, 8, 10, 12.7] as const;

/** The pitch, or what is wrong with the fields. */
export function readPitch(
  texts: Readonly<Record<PitchField, string>>,
): FieldReading<MeasuredPitch, PitchField> {
  const issues: FieldIssue<PitchField>[] = [];
  const note = (issue: FieldIssue<PitchField>) => issues.push(issue);
  const steps = takeWholeField({ field: "steps", text: texts.steps, expected: STEPS, note });
  const length = takeMmField({ field: "length", text: texts.length, expected: LENGTH, note });
  if (steps === undefined || length === undefined) return { ok: false, issues };
  const pitch = length / steps;
  if (pitch < BOUNDS.pitch.min || pitch > BOUNDS.pitch.max) {
    const expected = {
      kind: "millimetres",
      min: Math.max(1, BOUNDS.pitch.min * steps),
      max: Math.min(LENGTH.max, BOUNDS.pitch.max * steps),
    } as const;
    return { ok: false, issues: [{ field: "length", kind: "unsuitable", expected }] };
  }
  const doubt = READING_MM / steps;
  const near = SOLD.filter((sold) => Math.abs(sold - pitch) <= doubt);
  const [likely] = near;
  return {
    ok: true,
    value: { pitch, doubt, ...(near.length === 1 && likely !== undefined && { likely }) },
  };
}

const STEPS = { kind: "whole", unit: "steps", min: 1, max: 400 } as const;
const LENGTH = { kind: "millimetres", min: 1, max: 2_000 } as const;

/** What was found, and what would make it surer. */
export function sayPitch({ pitch, doubt, likely }: MeasuredPitch): string {
  const found = `${sayMm(pitch)}, give or take ${sayMm(Math.max(doubt, 0.01))}.`;
  if (likely !== undefined) return `${found} So it is ${sayMm3(likely)}.`;
  return `${found} That is none of the usual pitches alone: measure over more steps to be sure.`;
}

function sayMm3(mm: number): string {
  return `${Number(mm.toFixed(3))} mm`;
}
