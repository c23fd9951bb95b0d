/** What the recipe page needs of an editor: a plain field does it, and so does the one that is loaded when it can be. */
import type { Place } from "../../../../src/issue/facts/place.ts";

export interface Editor {
  text(): string;
  setText(text: string): void;
  /** Marks the places of problems, each with its words. */
  mark(faults: readonly MarkedIssue[]): void;
  /** Puts the caret at a place and shows it. */
  goTo(place: Place): void;
  focus(): void;
}

/** A problem as the editor marks it. */
export interface MarkedIssue {
  readonly place: Place;
  readonly words: string;
}

/** The part with the editor that knows YAML, once it is loaded. */
export interface EditorPart {
  /** Takes the place of a field, with its text and its label; tells every change. */
  openEditor(field: HTMLTextAreaElement, changed: () => void): Editor;
}

declare global {
  interface Window {
    readonly spanbookEditor?: EditorPart;
  }
}

/** The stretch of a text that a place marks, in characters from 0; a place of no width marks nothing. */
export function textRangeOf(
  text: string,
  { line, column, width }: Place,
): [from: number, to: number] {
  let start = 0;
  for (let passed = 1; passed < line; passed++) {
    const end = text.indexOf("\n", start);
    if (end < 0) break;
    start = end + 1;
  }
  const end = text.indexOf("\n", start);
  const lineEnd = end < 0 ? text.length : end;
  const from = Math.min(start + column - 1, lineEnd);
  return [from, Math.min(from + width, lineEnd)];
}

/** A field as an editor: problems are only listed beside it. */
export function plainEditor(field: HTMLTextAreaElement, changed: () => void): Editor {
  field.addEventListener("input", changed);
  return {
    text: () => field.value,
    setText: (text) => {
      field.value = text;
    },
    mark: (faults) => {
      field.setAttribute("aria-invalid", `${faults.length > 0}`);
    },
    goTo: (place) => {
      field.focus();
      field.setSelectionRange(...textRangeOf(field.value, place));
    },
    focus: () => field.focus(),
  };
}
