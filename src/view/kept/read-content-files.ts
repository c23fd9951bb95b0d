/** Files that somebody brings, each read as the build reads content: what is good can be kept, what is wrong is told. */
import type { Issue } from "../../issue/facts/issue.ts";
import type { Reading, TextFile } from "../../issue/facts/reading.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { readNotebook } from "../../notebook/read-notebook.ts";
import { UNDATED, type When } from "../../plan/when.ts";
import { takenTitles, unknownIn } from "../../recipe/chosen.ts";
import { marginClashes } from "../../recipe/margin-clashes.ts";
import { moonWithoutOffset } from "../../recipe/moon-without-offset.ts";
import { readRecipe } from "../../recipe/read/read-recipe.ts";
import { readSetup } from "../../recipe/read/read-setup.ts";
import { readStripRecipe } from "../../recipe/read/read-strip-recipe.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { setupIssues } from "../../setup/check-setup.ts";
import type { NamedSlug } from "../../source/schema/named-slugs.ts";
import { slugOf } from "../../source/slug.ts";
import type { CatalogueData } from "../catalogue.ts";
import { type KeptFile, type KeptKind, kindOf } from "./kept-file.ts";

/** What is known beside the files: the book, and what is kept already. */
export interface Around {
  readonly book: Pick<CatalogueData, "recipes" | "unlisted" | "notebooks" | "when" | "utcOffset">;
  readonly kept: readonly KeptFile[];
}

export interface ContentFile extends KeptFile {
  readonly title: string;
}

export interface ContentFiles {
  readonly files: readonly ContentFile[];
  readonly issues: readonly Issue[];
}

/** The good files with their titles, and every problem of the others. */
export function readContentFiles(files: readonly KeptFile[], around: Around): ContentFiles {
  // Each is read once, however often it is asked for: of a large file that is most of the work.
  const readers = { recipeIn: readOnce(readRecipe), notebookIn: readOnce(readNotebook) };
  const known: Known = {
    ...around.book,
    ...readers,
    notebooks: [
      ...around.book.notebooks,
      ...goodOf(files, { kind: "notebooks", read: readers.notebookIn }),
    ],
    known: recipesAround(files, around, readers.recipeIn),
  };
  const read = files.map((file) => {
    const { title, issues } = checked(file, known);
    return { file: { ...file, title }, issues };
  });
  return {
    files: read.flatMap(({ file, issues }) => (issues.length === 0 ? [file] : [])),
    issues: read.flatMap(({ issues }) => issues),
  };
}

/** What is read of any file: its title, or what is wrong with it by itself. */
export function readTitle(file: KeptFile): Reading<{ readonly title: string }> {
  return READERS[kindOf(file.path)](file);
}

/** The title that a file gives; its name where it cannot be read. */
export function titleOf(file: KeptFile): string {
  const reading = readTitle(file);
  return reading.ok ? reading.value.title : slugOf(file.path);
}

const READERS: Readonly<Record<KeptKind, (file: TextFile) => Reading<{ readonly title: string }>>> =
  {
    patterns: readRecipe,
    notebooks: readNotebook,
    strips: readStripRecipe,
    setups: readSetup,
  };

type Reader<Value> = (file: KeptFile) => Reading<Value>;

function readOnce<Value>(read: Reader<Value>): Reader<Value> {
  const readings = new Map<KeptFile, Reading<Value>>();
  return (file) => {
    const reading = readings.get(file) ?? read(file);
    readings.set(file, reading);
    return reading;
  };
}

interface Known {
  readonly recipeIn: Reader<Recipe>;
  readonly notebookIn: Reader<Notebook>;
  readonly notebooks: readonly Notebook[];
  readonly known: ReadonlyMap<string, Recipe>;
  readonly when?: When;
  readonly utcOffset?: number;
}

interface Checked {
  readonly title: string;
  readonly issues: readonly Issue[];
}

function checked(file: KeptFile, known: Known): Checked {
  switch (kindOf(file.path)) {
    case "notebooks":
      return plain(known.notebookIn(file));
    case "patterns":
      return checkedPattern(file, known);
    case "strips": {
      const reading = readStripRecipe(file);
      const slugs = [...known.known.keys()];
      return plain(reading, [
        ...unknownIn(reading.named, "pattern", slugs),
        ...takenTitles(reading.divisions, slugs),
      ]);
    }
    case "setups":
      return checkedSetup(file, known);
  }
}

function plain(reading: Reading<{ readonly title: string }>, more: readonly Issue[] = []): Checked {
  return reading.ok
    ? { title: reading.value.title, issues: more }
    : { title: "", issues: [...reading.issues, ...more] };
}

function checkedPattern(file: KeptFile, { recipeIn, notebooks, utcOffset }: Known): Checked {
  const reading = recipeIn(file);
  if (!reading.ok) return plain(reading);
  return plain(reading, [
    ...marginClashes(reading.value, notebooks),
    ...(utcOffset === undefined ? moonWithoutOffset(reading.value) : []),
  ]);
}

function checkedSetup(file: KeptFile, { known, when = UNDATED }: Known): Checked {
  const reading = readSetup(file);
  const named: readonly NamedSlug[] = reading.named;
  const strangers = unknownIn(named, "pattern", [...known.keys()]);
  const sources = { recipe: (slug: string) => known.get(slug), rule: when.rule };
  return plain(reading, [...strangers, ...(reading.ok ? setupIssues(reading.value, sources) : [])]);
}

/** Every pattern that a strip or a set-up may name: what is brought goes before what is kept, and that before the book's. */
function recipesAround(
  files: readonly KeptFile[],
  { book, kept }: Around,
  read: Reader<Recipe>,
): ReadonlyMap<string, Recipe> {
  const own = [...kept, ...files];
  const recipes = [
    ...book.recipes,
    ...(book.unlisted ?? []),
    ...goodOf(own, { kind: "patterns", read }),
  ];
  return new Map(recipes.map((recipe) => [recipe.slug, recipe]));
}

function goodOf<Value>(
  files: readonly KeptFile[],
  { kind, read }: { readonly kind: KeptKind; readonly read: Reader<Value> },
): readonly Value[] {
  return files
    .filter(({ path }) => kindOf(path) === kind)
    .flatMap((file) => {
      const reading = read(file);
      return reading.ok ? [reading.value] : [];
    });
}
