/** A label of a dated pattern as it is written: text with placeholders in braces, such as `{weekday} {day}`. */
import type { Place } from "../issue/facts/place.ts";
import { nearest } from "../source/nearest-word.ts";

export const PLACEHOLDERS = [
  "day",
  "weekday",
  "week",
  "week year",
  "month",
  "month number",
  "quarter",
  "year",
  "last day",
  "last month",
  "last year",
  "moon",
] as const;
export type Placeholder = (typeof PLACEHOLDERS)[number];

/** Plain text, or what a placeholder stands for. */
export type LabelPart =
  | { readonly kind: "text"; readonly text: string }
  | {
      readonly kind: "placeholder";
      readonly name: Placeholder;
      /** Of `{moon}`, where it is written: not every book's calendar knows on which day the moon is full. */
      readonly at?: Place;
    };

/** What is wrong with a label: `index` counts its UTF-16 units from 0. */
export type LabelFault =
  | { readonly kind: "unclosed-placeholder"; readonly index: number }
  | {
      readonly kind: "unknown-placeholder";
      readonly index: number;
      readonly written: string;
      readonly nearest?: Placeholder;
    };

export interface LabelTemplate {
  readonly parts: readonly LabelPart[];
  readonly faults: readonly LabelFault[];
}

/** The parts of a label. `{{` is one brace; what is faulty is left out of the parts. */
export function readLabelTemplate(label: string): LabelTemplate {
  const parts: LabelPart[] = [];
  const faults: LabelFault[] = [];
  let text = "";
  const flush = () => {
    if (text !== "") parts.push({ kind: "text", text });
    text = "";
  };
  for (let at = 0; at < label.length; at++) {
    const letter = label.charAt(at);
    if (letter !== "{") {
      text += letter;
    } else if (label.charAt(at + 1) === "{") {
      text += "{";
      at++;
    } else {
      flush();
      const end = label.indexOf("}", at);
      if (end < 0) {
        faults.push({ kind: "unclosed-placeholder", index: at });
        break;
      }
      const written = label.slice(at + 1, end);
      const name = PLACEHOLDERS.find((known) => known === written);
      if (name) parts.push({ kind: "placeholder", name });
      else faults.push(unknown(written, at));
      at = end;
    }
  }
  flush();
  return { parts, faults };
}

function unknown(written: string, index: number): LabelFault {
  const meant = nearest(written.trim().toLowerCase(), PLACEHOLDERS);
  const name = PLACEHOLDERS.find((known) => known === meant);
  return { kind: "unknown-placeholder", index, written, ...(name ? { nearest: name } : {}) };
}
