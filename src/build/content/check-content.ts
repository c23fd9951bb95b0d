/** Reads the whole content, or says what is wrong with it. */
import { reportIssues, reportNotes } from "../../issue/report/report.ts";
import { type Content, type ContentOptions, loadContent } from "./load-content.ts";

/** The checked content with what is worth a word, "" where nothing is; or the report of all its problems. */
export async function readContent(
  folder: string,
  options?: ContentOptions,
): Promise<{ readonly content: Content; readonly notes: string } | { readonly report: string }> {
  const reading = await loadContent(folder, options);
  const notes = reportNotes(reading.notes, reading.texts);
  if (reading.ok) return { content: reading.value, notes };
  const report = reportIssues(reading.issues, reading.texts);
  return { report: notes === "" ? report : `${notes}\n\n${report}` };
}

/** Says what is worth a word. */
export function sayNotes(notes: string): void {
  if (notes !== "") console.log(`${notes}\n`);
}

/** `1 pattern`, `3 patterns`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
