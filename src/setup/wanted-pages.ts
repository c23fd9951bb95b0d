/** What a set-up wants drawn, entry by entry: which pattern, and for which days. */
import {
  type BeyondYears,
  commonDays,
  type DayRange,
  isBeyondYears,
  type Span,
  type SpanKind,
  spansTouching,
} from "../calendar/span.ts";
import type { WeekRule } from "../calendar/week.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Borders, SetupEntry, SetupRecipe } from "../recipe/setup-recipe.ts";

/** One page or spread. */
export interface WantedPage {
  readonly recipe: Recipe;
  /** Of a dated pattern. */
  readonly span?: Span;
  /** The index of the outermost entry. */
  readonly entry: number;
  /** The entry's own place in the file: its index in each list from the outermost in, such as `2.0`. */
  readonly path: string;
  /** The unit of the outermost block, and that of the nearest. */
  readonly unit?: Span;
  readonly within?: Span;
}

export interface WantedSources {
  /** Throws where there is none: names are checked before. */
  readonly recipe: (slug: string) => Recipe;
  readonly rule: WeekRule;
}

/**
 * All that is wanted, in order; where a span that is needed leaves the years 1 to 9999, that comes instead. What one entry
 * has given for a span or a unit it does not give again, so that a week between two months comes with the first.
 */
export function* wantedPages(
  { dates, pages }: Pick<SetupRecipe, "dates" | "pages">,
  sources: WantedSources,
): Iterable<WantedPage | BeyondYears> {
  const given = new Set<string>();
  const isNew = (key: string): boolean => {
    const has = given.has(key);
    given.add(key);
    return !has;
  };
  for (const [entry, one] of pages.entries()) {
    yield* pagesOfEntry(one, { ...sources, dates, isNew, entry, path: `${entry}`, around: dates });
  }
}

interface Around extends WantedSources {
  readonly dates: DayRange;
  readonly isNew: (key: string) => boolean;
  readonly entry: number;
  readonly path: string;
  /** The days of the nearest unit around. */
  readonly around: DayRange;
  readonly unit?: Span;
  readonly within?: Span;
}

function* pagesOfEntry(entry: SetupEntry, place: Around): Iterable<WantedPage | BeyondYears> {
  if (entry.kind === "pattern") {
    yield* pagesOfPattern(entry, place);
    return;
  }
  for (const unit of spansFor(entry.each, entry.borders, place)) {
    if (isBeyondYears(unit)) {
      yield unit;
      continue;
    }
    const inside = { ...place, around: unit, unit: place.unit ?? unit, within: unit };
    for (const [index, inner] of entry.pages.entries()) {
      yield* pagesOfEntry(inner, { ...inside, path: `${place.path}.${index}` });
    }
  }
}

function* pagesOfPattern(
  { pattern, times, borders }: Extract<SetupEntry, { kind: "pattern" }>,
  place: Around,
): Iterable<WantedPage | BeyondYears> {
  const { entry, unit, within, path, around, isNew } = place;
  const recipe = place.recipe(pattern);
  const from = { recipe, entry, path, ...(unit && { unit }), ...(within && { within }) };
  if (!recipe.dates) {
    if (!isNew(`${path} ${around.from} ${around.to}`)) return;
    for (let time = 0; time < times; time++) yield from;
    return;
  }
  for (const span of spansFor(recipe.dates.span, borders, place)) {
    if (isBeyondYears(span)) yield span;
    else if (isNew(`${path} ${span.from}`)) yield { ...from, span };
  }
}

/** The spans of a kind with a day in the set-up's days and in the unit around, but for the borders that are not wanted. */
function spansFor(
  kind: SpanKind,
  borders: Borders,
  { dates, around, rule }: Around,
): readonly (Span | BeyondYears)[] {
  return spansTouching(kind, commonDays(around, dates), rule).filter((found) => {
    const span = isBeyondYears(found) ? found.span : found;
    if (borders === "first") return span.from >= dates.from;
    return borders === "both" || span.to <= dates.to;
  });
}
