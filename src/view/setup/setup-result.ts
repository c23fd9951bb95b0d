/** The set-up that somebody asks for, on their notebook: named and checked, and how it is worked out, with the engine of the build. */
import type { MoonOn } from "../../calendar/names/moon-names.ts";
import type { Names } from "../../calendar/names.ts";
import type { Issue } from "../../issue/facts/issue.ts";
import type { Said } from "../../issue/words/said.ts";
import { saySetupIssue } from "../../issue/words/say-setup-issue.ts";
import { sayUnknownLayout } from "../../issue/words/setup-words.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { When } from "../../plan/when.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { SetupEntry, SetupRecipe } from "../../recipe/setup-recipe.ts";
import { setupIssues } from "../../setup/check-setup.ts";
import type { SetupQuestion } from "../../setup/plan-setup.ts";
import type { AskedSetup } from "../address/setup-address.ts";
import type { Catalogue } from "../catalogue.ts";
import { nameNotebook } from "../fields/name-notebook.ts";
import { nameSetup } from "../fields/setup-fields.ts";
import { weekRuleOf } from "../fields/span-fields.ts";
import { type EntryPath, pathIn } from "./edit-setup.ts";

/** What a set-up is worked out by, beside what is asked. */
export interface SetupSources {
  readonly catalogue: Catalogue;
  /** Layouts that are kept on the device; a name that the book has is the book's. */
  readonly own: readonly Recipe[];
  readonly names?: Names | undefined;
  readonly moonOn?: MoonOn | undefined;
}

/** What is wrong, and where: at an entry, at `fill`, `dates` or `pages`. */
export interface SetupFault extends Said {
  readonly at: EntryPath | "fill" | "dates" | "pages";
}

export interface SetupResult {
  readonly notebook: Notebook;
  /** With its names. */
  readonly recipe: SetupRecipe;
  readonly when: When;
  readonly faults: readonly SetupFault[];
  /** What is to be worked out; left out where there is nothing, or something is wrong. */
  readonly question?: SetupQuestion;
}

/** A layout of the book or of the device. */
export function layoutIn({ catalogue, own }: SetupSources, slug: string): Recipe | undefined {
  return catalogue.carried.has(slug)
    ? catalogue.recipe(slug)
    : own.find((recipe) => recipe.slug === slug);
}

/** Whether it can be worked out is known at once, the pages only when they are planned. */
export function setupResult(asked: AskedSetup, sources: SetupSources): SetupResult {
  const { catalogue, names, moonOn } = sources;
  const rule = weekRuleOf(asked.calendar, catalogue.when.rule);
  const when = { rule, names: names ?? catalogue.when.names, ...(moonOn && { moonOn }) };
  const notebook = nameNotebook(asked.notebook, catalogue.notebooks);
  const recipe = nameSetup(asked.setup, catalogue.setups ?? [], rule);
  const faults = faultsOf(recipe, sources, when);
  const isBare = !recipe.pages.some(drawsSomething);
  const known = (slug: string): Recipe => {
    const found = layoutIn(sources, slug);
    if (!found) throw new RangeError(`there is no layout ${slug}`);
    return found;
  };
  const question = { setup: recipe, notebook, when, recipe: known };
  return { notebook, recipe, when, faults, ...(faults.length === 0 && !isBare && { question }) };
}

function drawsSomething(entry: SetupEntry): boolean {
  return entry.kind === "pattern" || entry.pages.some(drawsSomething);
}

function faultsOf(
  recipe: SetupRecipe,
  sources: SetupSources,
  { rule }: When,
): readonly SetupFault[] {
  const layout = (slug: string) => layoutIn(sources, slug);
  const placed: SetupRecipe = {
    ...recipe,
    pages: recipe.pages.map((entry, index) => withPlace(entry, `${index}`)),
    ...{ fillPlace: placeAt("fill"), datesPlace: placeAt("dates"), pagesPlace: placeAt("pages") },
  };
  const unknown = recipe.pages.flatMap((entry, index) => unknownIn(entry, `${index}`, layout));
  const fill = recipe.fill !== undefined && !layout(recipe.fill) ? [recipe.fill] : [];
  return [
    ...unknown,
    ...fill.map((slug) => ({ at: "fill" as const, ...sayUnknownLayout(slug) })),
    ...setupIssues(placed, { recipe: layout, rule }).flatMap(faultOf),
  ];
}

function unknownIn(
  entry: SetupEntry,
  at: EntryPath,
  layout: (slug: string) => Recipe | undefined,
): readonly SetupFault[] {
  if (entry.kind === "each")
    return entry.pages.flatMap((inner, index) => unknownIn(inner, pathIn(at, index), layout));
  return layout(entry.pattern) ? [] : [{ at, ...sayUnknownLayout(entry.pattern) }];
}

/** A place whose file is the place in the list: the check tells it with each issue. */
function placeAt(path: string) {
  return { file: path, line: 1, column: 1, width: 0 };
}

function withPlace(entry: SetupEntry, path: EntryPath): SetupEntry {
  const place = placeAt(path);
  if (entry.kind === "pattern") return { ...entry, place };
  const pages = entry.pages.map((inner, index) => withPlace(inner, pathIn(path, index)));
  return { ...entry, place, pages };
}

function faultOf(issue: Issue): readonly SetupFault[] {
  if (issue.about !== "rule") return [];
  switch (issue.kind) {
    case "times-with-dates":
    case "larger-than-each":
    case "fill-with-dates":
    case "fill-is-spread":
    case "span-beyond-years":
    case "too-many-pages":
    case "too-many-boxes": {
      const { sentence, hint } = saySetupIssue(issue);
      const plain = (words: string) => words.replaceAll("`", "");
      return [{ at: issue.at.file, sentence: plain(sentence), hint: plain(hint) }];
    }
    default:
      return [];
  }
}
