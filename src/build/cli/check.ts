/** Checks a content folder, once or after each edit, and tells people or their editors what is wrong with it. */
import { existsSync } from "node:fs";
import { isAbsolute, join, relative, resolve } from "node:path";
import { issueLines, reportIssues, reportNotes, sayTotal } from "../../issue/report/report.ts";
import { counted } from "../content/check-content.ts";
import { type Content, type ContentReading, loadContent } from "../content/load-content.ts";
import type { OtherFolders } from "../content/open-packs.ts";
import { openReaders } from "../content/open-readers.ts";
import { watchFolder } from "./watch-folder.ts";

export interface CheckCall extends OtherFolders {
  readonly content: string;
  /** From where paths are told to editors. */
  readonly typedIn: string;
  /** A line for each problem, as editors read them, instead of a report. */
  readonly format?: "lines";
  /** Goes on checking after each edit. */
  readonly watch?: boolean;
}

/** What is said on the two streams, "" for nothing, and the exit code. */
interface Said {
  readonly out: string;
  readonly err: string;
  readonly code: number;
}

/** The exit code of `npm run check`; of a check that goes on, when it is stopped. */
export async function checkBook(call: CheckCall): Promise<number> {
  const { content, typedIn: _, format, watch, ...others } = call;
  const readers = openReaders();
  const check = async () => {
    const reading = await loadContent(content, { ...others, readers });
    return format === "lines" ? inLines(reading, call) : inFull(reading);
  };
  // Where there is no folder there is nothing to wait for.
  if (watch && existsSync(content)) return checkOn(call, check);
  const said = await check();
  tell(said);
  return said.code;
}

/** Editors write a file in several steps, and several files at once. */
const SETTLED_MS = 100;

/** Checks now and after edits, one check after another, and tells what comes of it where that is something else. */
function checkOn({ content, packs = [] }: CheckCall, check: () => Promise<Said>): Promise<number> {
  let last: Said | undefined;
  let due: NodeJS.Timeout | undefined;
  let end: (code: number) => void = () => undefined;
  const checkAgain = async () => {
    const said = await check();
    if (said.out === last?.out && said.err === last.err) return;
    if (last) console.error("\nChecking again …");
    tell(said);
    if (!last) console.error("\nEach edit is checked (Ctrl-C ends it).");
    last = said;
    // What comes back in its place is another folder, which nobody watches.
    if (!existsSync(content)) end(said.code);
  };
  const onEdit = () => {
    clearTimeout(due);
    due = setTimeout(() => {
      running = running.then(checkAgain);
    }, SETTLED_MS);
  };
  const folders = [content, ...packs.map(({ folder }) => folder)].filter((one) => existsSync(one));
  const unwatch = folders.map((folder) => watchFolder(folder, onEdit));
  let running = checkAgain();
  return new Promise((resolve) => {
    end = (code) => {
      clearTimeout(due);
      for (const stop of unwatch) stop();
      resolve(code);
    };
    process.once("SIGINT", () => end(0));
    process.once("SIGTERM", () => end(0));
  });
}

function tell({ out, err }: Said): void {
  if (out !== "") console.log(out);
  if (err !== "") console.error(err);
}

function inFull(reading: ContentReading): Said {
  const notes = reportNotes(reading.notes, reading.texts);
  const said = reading.ok ? sayWell(reading.value) : reportIssues(reading.issues, reading.texts);
  const all = notes === "" ? said : `${notes}\n\n${said}`;
  return reading.ok ? { out: all, err: "", code: 0 } : { out: "", err: all, code: 1 };
}

/** Nothing but lines on the one stream; how many on the other. What is only worth a word counts as no problem. */
function inLines(reading: ContentReading, call: CheckCall): Said {
  const issues = reading.ok ? [] : reading.issues;
  const pathOf = (file: string) => pathFrom(file, reading, call);
  const out = issueLines([...issues, ...reading.notes], pathOf).join("\n");
  return reading.ok
    ? { out, err: sayWell(reading.value), code: 0 }
    : { out, err: sayTotal(issues), code: 1 };
}

/** Where a file of the content lies, as seen from where the command was typed; in full where that is not above it. */
function pathFrom(
  file: string,
  { roots }: ContentReading,
  { content, typedIn }: CheckCall,
): string {
  const root = roots.find(({ prefix }) => file.startsWith(prefix));
  const isNamed = /^\.\.?(\/|$)/.test(file);
  const full = root
    ? join(root.folder, file.slice(root.prefix.length))
    : resolve(isNamed ? typedIn : content, file);
  const path = relative(typedIn, full);
  return path === "" || path.startsWith("..") || isAbsolute(path) ? full : path;
}

function sayWell({ recipes, notebooks, strips, setups }: Content): string {
  return `All is well: ${counted(recipes.length, "pattern")}, ${counted(notebooks.length, "notebook")}, ${counted(strips.length, "strip")} and ${counted(setups.length, "set-up")}.`;
}
