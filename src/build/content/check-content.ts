/** Reads the whole content and says what is wrong with it, or what it holds. */
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

/** The exit code of `npm run check`. */
export async function checkContent(folder: string, options?: ContentOptions): Promise<number> {
  const read = await readContent(folder, options);
  if ("report" in read) {
    console.error(read.report);
    return 1;
  }
  sayNotes(read.notes);
  const { recipes, notebooks, strips, setups } = read.content;
  console.log(
    `All is well: ${counted(recipes.length, "pattern")}, ${counted(notebooks.length, "notebook")}, ${counted(strips.length, "strip")} and ${counted(setups.length, "set-up")}.`,
  );
  return 0;
}

/** Says what is worth a word. */
export function sayNotes(notes: string): void {
  if (notes !== "") console.log(`${notes}\n`);
}

/** `1 pattern`, `3 patterns`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
