/** What is wrong with a set-up once its patterns are known: what cannot stand where it does, and what is too much. */
import { isBeyondYears, SPAN_KINDS, type SpanKind } from "../calendar/span.ts";
import type { WeekRule } from "../calendar/week.ts";
import type { Issue } from "../issue/facts/issue.ts";
import type { Place } from "../issue/facts/place.ts";
import { pagesOf } from "../recipe/area-tree.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { SETUP_LIMITS } from "../recipe/setup-keys.ts";
import type { EachKind, PatternEntry, SetupEntry, SetupRecipe } from "../recipe/setup-recipe.ts";
import { mostBoxes } from "./count-boxes.ts";
import { wantedPages } from "./wanted-pages.ts";

export interface CheckSources {
  /** Nothing where there is no such pattern, or where it is wrong itself: both are told elsewhere. */
  readonly recipe: (slug: string) => Recipe | undefined;
  readonly rule: WeekRule;
}

/** Every problem of some set-ups with the patterns that there are, whether or not a book has them all. */
export function issuesOfSetups(
  setups: readonly SetupRecipe[],
  recipes: readonly Recipe[],
  rule: WeekRule,
): readonly Issue[] {
  const known = new Map(recipes.map((recipe) => [recipe.slug, recipe]));
  return setups.flatMap((setup) => setupIssues(setup, { recipe: (slug) => known.get(slug), rule }));
}

/** Every problem. Pages and boxes are counted as if each first layout fitted, and only where all patterns are known. */
export function setupIssues(setup: SetupRecipe, sources: CheckSources): readonly Issue[] {
  const nowhere = { file: `setups/${setup.slug}.md`, line: 1, column: 1, width: 0 };
  const issues = [
    ...setup.pages.flatMap((entry) => entryIssues(entry, { ...sources, nowhere })),
    ...fillIssues(setup, sources, nowhere),
  ];
  const isKnown = slugsOf(setup).every((slug) => sources.recipe(slug));
  return issues.length > 0 || !isKnown ? issues : countIssues(setup, sources, nowhere);
}

/** Every pattern that it names, once. */
export function slugsOf({ pages, fill }: Pick<SetupRecipe, "pages" | "fill">): readonly string[] {
  const within = (entry: SetupEntry): readonly string[] =>
    entry.kind === "each" ? entry.pages.flatMap(within) : [entry.pattern];
  return [...new Set([...pages.flatMap(within), ...(fill === undefined ? [] : [fill])])];
}

interface EntryContext extends CheckSources {
  readonly nowhere: Place;
  /** The nearest block around. */
  readonly each?: EachKind;
}

function entryIssues(entry: SetupEntry, context: EntryContext): readonly Issue[] {
  const { each, nowhere } = context;
  if (entry.kind === "pattern") return patternIssues(entry, context);
  const at = entry.place ?? nowhere;
  const larger: readonly Issue[] =
    each && isLarger(entry.each, each)
      ? [{ about: "rule", kind: "larger-than-each", span: entry.each, each, at }]
      : [];
  const inner = entry.pages.flatMap((one) => entryIssues(one, { ...context, each: entry.each }));
  return [...larger, ...inner];
}

function patternIssues(
  { pattern, times, place, timesPlace }: PatternEntry,
  { recipe, nowhere, each }: EntryContext,
): readonly Issue[] {
  const span = recipe(pattern)?.dates?.span;
  if (!span) return [];
  const issues: Issue[] = [];
  const at = place ?? nowhere;
  if (timesPlace || times > 1) {
    const about = { about: "rule", kind: "times-with-dates", pattern, span } as const;
    issues.push({ ...about, at: timesPlace ?? at });
  }
  if (each && isLarger(span, each)) {
    issues.push({ about: "rule", kind: "larger-than-each", pattern, span, each, at });
  }
  return issues;
}

function isLarger(span: SpanKind, around: EachKind): boolean {
  return SPAN_KINDS.indexOf(span) > SPAN_KINDS.indexOf(around);
}

function fillIssues(
  { fill, fillPlace }: SetupRecipe,
  { recipe }: CheckSources,
  nowhere: Place,
): readonly Issue[] {
  const filling = fill === undefined ? undefined : recipe(fill);
  if (!filling) return [];
  const about = { about: "rule", pattern: filling.slug, at: fillPlace ?? nowhere } as const;
  return [
    ...(filling.dates ? [{ ...about, kind: "fill-with-dates" } as const] : []),
    ...(isSpread(filling) ? [{ ...about, kind: "fill-is-spread" } as const] : []),
  ];
}

function isSpread({ attempts: [first] }: Recipe): boolean {
  return first !== undefined && pagesOf(first).length === 2;
}

/** Ends at the first thing that is too much, so that it never takes longer than a set-up that is allowed. */
function countIssues(
  setup: SetupRecipe,
  { recipe, rule }: CheckSources,
  nowhere: Place,
): readonly Issue[] {
  const at = setup.pagesPlace ?? nowhere;
  const boxesOf = openBoxCount();
  const known = (slug: string): Recipe => {
    const found = recipe(slug);
    if (!found) throw new RangeError(`there is no pattern ${slug}`);
    return found;
  };
  const filled = setup.fill === undefined ? 0 : boxesOf(known(setup.fill));
  let [pages, boxes] = [0, 0];
  for (const wanted of wantedPages(setup, { recipe: known, rule })) {
    if (isBeyondYears(wanted)) {
      const place = setup.datesPlace ?? nowhere;
      return [{ about: "rule", kind: "span-beyond-years", span: wanted.span.kind, at: place }];
    }
    const takes = isSpread(wanted.recipe) ? 2 : 1;
    const isFree = takes === 2 && (setup.first + pages) % 2 === 1;
    pages += takes + (isFree ? 1 : 0);
    boxes += boxesOf(wanted.recipe) + (isFree ? filled : 0);
    const { pages: limit } = SETUP_LIMITS;
    if (pages > limit) return [{ about: "rule", kind: "too-many-pages", limit, at }];
    if (boxes > SETUP_LIMITS.boxes) {
      return [{ about: "rule", kind: "too-many-boxes", limit: SETUP_LIMITS.boxes, at }];
    }
  }
  return [];
}

function openBoxCount(): (recipe: Recipe) => number {
  const known = new Map<string, number>();
  return (recipe) => {
    const boxes = known.get(recipe.slug) ?? mostBoxes(recipe);
    known.set(recipe.slug, boxes);
    return boxes;
  };
}
