/** Reads the whole content and says what is wrong with it, or what it holds. */
import { reportIssues } from "../../issue/report/report.ts";
import { type Content, loadContent, type Readers } from "./load-content.ts";

/** The checked content, or the report of all its problems. */
export async function readContent(
  folder: string,
  readers?: Readers,
): Promise<{ readonly content: Content } | { readonly report: string }> {
  const reading = await loadContent(folder, readers);
  return reading.ok
    ? { content: reading.value }
    : { report: reportIssues(reading.issues, reading.texts) };
}

/** The exit code of `npm run check`. */
export async function checkContent(folder: string): Promise<number> {
  const read = await readContent(folder);
  if ("report" in read) {
    console.error(read.report);
    return 1;
  }
  const { recipes, notebooks, strips, setups } = read.content;
  console.log(
    `All is well: ${counted(recipes.length, "pattern")}, ${counted(notebooks.length, "notebook")}, ${counted(strips.length, "strip")} and ${counted(setups.length, "set-up")}.`,
  );
  return 0;
}

/** `1 pattern`, `3 patterns`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
