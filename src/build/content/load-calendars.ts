/** Reads the calendar files of a content folder: all `.ics` files of its folder `calendar`, in the order of their names. */
import { readdir, realpath } from "node:fs/promises";
import { join } from "node:path";
import {
  CALENDAR_LIMITS,
  type CalendarFile,
  readCalendarFile,
} from "../../events/calendar-file.ts";
import { eventsIn } from "../../events/events-in.ts";
import type { Issue } from "../../issue/facts/issue.ts";
import type { SetupRecipe } from "../../recipe/setup-recipe.ts";
import { CALENDAR } from "./find-misplaced.ts";
import { isInside, loadBytes, type Root, wholeFileIssue } from "./load-file.ts";
import type { BookFiles } from "./load-files.ts";
import { byCharacters } from "./load-folder.ts";
import { isCalendarByName } from "./misplaced-file.ts";

export interface Calendars {
  readonly files: readonly CalendarFile[];
  readonly issues: readonly Issue[];
  readonly notes: readonly Issue[];
  /** By their paths. */
  readonly texts: ReadonlyMap<string, string>;
}

/** The folder may be missing; what else lies in it is nobody's business. */
export async function loadCalendars(root: Root): Promise<Calendars> {
  const names = await namesIn(root);
  if (typeof names === "string") {
    const issues = names === "absent" ? [] : [wholeFileIssue(CALENDAR, { kind: names })];
    return { files: [], issues, notes: [], texts: new Map() };
  }
  const readings = await Promise.all(
    names
      .filter(isCalendarByName)
      .sort(byCharacters)
      .map((name) => loadBytes(root, `${CALENDAR}/${name}`, CALENDAR_LIMITS.kib)),
  );
  const good = readings.flatMap((reading) => (reading.ok ? [reading.value] : []));
  const files = good.map(readCalendarFile);
  return {
    files,
    issues: [
      ...readings.flatMap((reading) => (reading.ok ? [] : reading.issues)),
      ...files.flatMap(({ issues }) => issues),
    ],
    notes: files.flatMap(({ notes }) => notes),
    texts: new Map(good.map(({ path, bytes }) => [path, new TextDecoder().decode(bytes)])),
  };
}

async function namesIn({
  folder,
  real,
  prefix,
}: Root): Promise<string[] | "absent" | "leaves-folder" | "unreadable-folder"> {
  const full = join(folder, CALENDAR);
  try {
    if (!isInside({ folder, real, prefix }, await realpath(full))) return "leaves-folder";
    return await readdir(full);
  } catch (error) {
    const isGone = error instanceof Error && "code" in error && error.code === "ENOENT";
    return isGone ? "absent" : "unreadable-folder";
  }
}

/** What cannot be shown of the files on the days of set-ups, each once. */
export function issuesOnDays(
  files: readonly CalendarFile[],
  setups: readonly SetupRecipe[],
): readonly Issue[] {
  const found = setups.flatMap(({ dates }) => eventsIn(files, dates).issues);
  const isSame = (a: Issue, b: Issue) => a.at.file === b.at.file && a.at.line === b.at.line;
  return found.filter((one, index) => found.findIndex((other) => isSame(one, other)) === index);
}

/** What is told of calendar files, and their texts, among those of the other files. */
export function withCalendars(files: BookFiles, { issues, notes, texts }: Calendars): BookFiles {
  return {
    ...files,
    issues: [...files.issues, ...issues],
    notes: [...files.notes, ...notes],
    texts: new Map([...files.texts, ...texts]),
    bookTexts: new Map([...files.bookTexts, ...texts]),
  };
}
