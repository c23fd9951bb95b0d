/** Reads a whole content folder: every file checked, every name in it found, all problems at once. */
import type { Calendar } from "../../calendar/calendar.ts";
import { ENGLISH } from "../../calendar/english.ts";
import { namesOf } from "../../calendar/names.ts";
import { ISO_WEEKS, type WeekRule } from "../../calendar/week.ts";
import type { CalendarFile } from "../../events/calendar-file.ts";
import type { Issue } from "../../issue/facts/issue.ts";
import type { Reading } from "../../issue/facts/reading.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { When } from "../../plan/when.ts";
import type { BookFile } from "../../recipe/book-file.ts";
import { byTitle, chosenOf, takenTitles, unknownIn, unlistedOf } from "../../recipe/chosen.ts";
import { marginClashes } from "../../recipe/margin-clashes.ts";
import { moonWithoutOffset } from "../../recipe/moon-without-offset.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { SetupRecipe } from "../../recipe/setup-recipe.ts";
import type { StripRecipe } from "../../recipe/strip-recipe.ts";
import type { WordGroups } from "../../recipe/words.ts";
import { issuesOfSetups } from "../../setup/check-setup.ts";
import type { CatalogueData } from "../../view/catalogue.ts";
import type { Misplaced } from "./find-misplaced.ts";
import { issuesOnDays, loadCalendars, withCalendars } from "./load-calendars.ts";
import { openRoot, type Root } from "./load-file.ts";
import { type BookFiles, loadFiles } from "./load-files.ts";
import type { Folder } from "./load-folder.ts";
import type { OtherFolders } from "./open-packs.ts";
import { openReaders, type Readers } from "./open-readers.ts";

export interface Content extends CatalogueData {
  readonly book: BookFile;
  /** The book's, in its order. */
  readonly notebooks: readonly Notebook[];
  /** The book's: in its order where it lists them, else by title. */
  readonly recipes: readonly Recipe[];
  /** Patterns that have no page in the book, but strips carry them or set-ups draw them. By slug. */
  readonly unlisted: readonly Recipe[];
  /** The book's: in its order where it lists them, else by slug. */
  readonly strips: readonly StripRecipe[];
  /** The book's: in its order where it lists them, else by slug. */
  readonly setups: readonly SetupRecipe[];
  /** Words that people use for one thing, of all folders. */
  readonly words: WordGroups;
  /** What is drawn on the days of set-ups; by the names of the files. */
  readonly calendars: readonly CalendarFile[];
  /** Every file that was read, by its path in the book, in whichever folder it lies. */
  readonly texts: ReadonlyMap<string, string>;
  /** By such a path, the title of the folder that the book builds on and has the file from; none for its own. */
  readonly origins: ReadonlyMap<string, string>;
  /** Where the folders that it builds on lie. */
  readonly packs: readonly string[];
}

export type ContentReading = {
  /** What folders to build on say in vain: no problems. */
  readonly notes: readonly Issue[];
  /** The text of each file by its path as issues and notes name it. */
  readonly texts: ReadonlyMap<string, string>;
  /** The folders that the content builds on; a path that begins with one's prefix is one in it. */
  readonly roots: readonly Root[];
} & (
  | { readonly ok: true; readonly value: Content }
  | { readonly ok: false; readonly issues: readonly Issue[] }
);

/** What else a reading of content takes. */
export interface ContentOptions extends OtherFolders {
  readonly readers?: Readers;
}

/** The content of a folder, or every problem in it. Files that the book leaves out are checked, too. */
export async function loadContent(
  folder: string,
  { readers = openReaders(), ...others }: ContentOptions = {},
): Promise<ContentReading> {
  const root = await openRoot(folder);
  if ("about" in root) return { ok: false, issues: [root], notes: [], texts: new Map(), roots: [] };
  const [files, calendars] = await Promise.all([loadFiles(root, others), loadCalendars(root)]);
  const reading = checked(withCalendars(files, calendars), calendars.files, readers);
  readers.settle();
  return reading;
}

function checked(
  files: BookFiles,
  calendars: readonly CalendarFile[],
  readers: Readers,
): ContentReading {
  const { book, misplaced, notes, texts } = files;
  const told = { notes, texts, roots: files.packs.map(({ root }) => root) };
  const { notebooks, patterns, strips, setups } = files.folders;
  const notebook = gathered(notebooks, notebooks.files.map(readers.notebook));
  const recipe = gathered(patterns, patterns.files.map(readers.recipe));
  const stripReadings = strips.files.map(readers.strip);
  const strip = gathered(strips, stripReadings);
  const setupReadings = setups.files.map(readers.setup);
  const setup = gathered(setups, setupReadings);
  const words = files.words.map(readers.words);
  const named = [...stripReadings, ...setupReadings].flatMap((reading) => reading.named);
  const booksOfBook = chosenOf(book.chosen.notebooks, notebook.values);
  const recipesOfBook = chosenOf(book.chosen.patterns, byTitle(recipe.values));
  const unlisted = unlistedOf(named, recipesOfBook, recipe.values);
  const planned = [...recipesOfBook, ...unlisted];
  const found = [
    ...(book.ok ? [] : book.issues),
    ...files.issues,
    ...notebook.issues,
    ...recipe.issues,
    ...strip.issues,
    ...setup.issues,
    ...words.flatMap((one) => (one.ok ? [] : one.issues)),
    ...unknownIn(book.chosen.notebooks, "notebook", notebooks.slugs),
    ...unknownIn(book.chosen.patterns, "pattern", patterns.slugs),
    ...unknownIn(book.chosen.strips, "strip", strips.slugs),
    ...unknownIn(book.chosen.setups, "setup", setups.slugs),
    ...unknownIn(named, "pattern", patterns.slugs),
    ...issuesOnDays(calendars, setup.values),
    ...issuesOfSetups(setup.values, recipe.values, weekRuleOf(book)),
    ...stripReadings.flatMap(({ divisions }) => takenTitles(divisions, patterns.slugs)),
    ...planned.flatMap((one) => marginClashes(one, booksOfBook)),
    // A book with other problems may have lost its calendar to them.
    ...(book.ok && book.value.calendar?.utcOffset === undefined
      ? planned.flatMap(moonWithoutOffset)
      : []),
  ];
  const issues = [...misplaced.issues, ...found.filter((one) => !isExplained(one, misplaced))];
  if (!book.ok || issues.length > 0) return { ok: false, issues, ...told };
  const { calendar } = book.value;
  const value: Content = {
    book: book.value,
    ...(calendar ? { when: whenOf(calendar) } : {}),
    ...(calendar?.utcOffset === undefined ? {} : { utcOffset: calendar.utcOffset }),
    notebooks: booksOfBook,
    recipes: recipesOfBook,
    unlisted,
    strips: chosenOf(book.value.strips, strip.values),
    setups: chosenOf(book.value.setups, setup.values),
    words: words.flatMap((one) => (one.ok ? one.value : [])),
    calendars,
    texts: files.bookTexts,
    origins: files.origins,
    packs: told.roots.map(({ real }) => real),
  };
  return { ok: true, value, ...told };
}

/** Where a folder has a wrong name, all that it lacks under the right one has one cause. */
function isExplained(issue: Issue, { meant }: Misplaced): boolean {
  if (issue.about === "book" && issue.kind === "unknown-slug") {
    return meant.has(`${issue.what}s`);
  }
  return issue.about === "file" && issue.kind === "missing" && meant.has(issue.at.file);
}

/** What plans take of a calendar; its language is checked. */
function whenOf({ language, firstWeekday, weekOne }: Calendar): When {
  return { rule: { firstWeekday, weekOne }, names: namesOf(language) ?? ENGLISH };
}

function weekRuleOf(book: Reading<BookFile>): WeekRule {
  return (book.ok && book.value.calendar) || ISO_WEEKS;
}

function gathered<T>(
  folder: Folder,
  readings: readonly Reading<T>[],
): { readonly values: readonly T[]; readonly issues: readonly Issue[] } {
  return {
    values: readings.flatMap((reading) => (reading.ok ? [reading.value] : [])),
    issues: [
      ...folder.issues,
      ...readings.flatMap((reading) => (reading.ok ? [] : reading.issues)),
    ],
  };
}
