/** Which patterns the front page draws for today: of each kind the one that is used most. */
import { expect, it } from "vitest";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { patternEntry, type StripRecipe } from "../../src/recipe/strip-recipe.ts";
import { todaysPatterns } from "../../src/view/pattern/todays-patterns.ts";
import { area, onePage, recipeOf, spread } from "../oracle/recipe-of.ts";

const pattern = (slug: string, purpose: Recipe["purpose"], attempt = onePage(area())): Recipe => ({
  ...recipeOf(attempt),
  slug,
  purpose,
  ...(purpose === "week" || purpose === "month"
    ? { dates: { span: purpose, outside: "pale" } }
    : {}),
});
const strip = (...slugs: readonly string[]): StripRecipe => ({
  slug: "daily",
  title: "Daily",
  lanes: 4,
  make: "edges",
  width: 30,
  across: slugs.map(patternEntry),
  down: [],
  body: "",
});

const MONTHS = [pattern("a-month", "month"), pattern("b-month", "month")];
const WEEKS = [pattern("a-week", "week"), pattern("b-week", "week")];
const SPREAD = pattern("a-spread", "week", spread(area(), area()));

it.each<[string, readonly Recipe[], readonly StripRecipe[], readonly string[]]>([
  ["the first of each where none is used", [...MONTHS, ...WEEKS], [], ["a-month", "a-week"]],
  ["the used one", [...MONTHS, ...WEEKS], [strip("b-week")], ["a-month", "b-week"]],
  ["the one that more use", WEEKS, [strip("a-week"), strip("b-week"), strip("b-week")], ["b-week"]],
  ["no spread, however much it is used", [SPREAD, ...WEEKS], [strip("a-spread")], ["a-week"]],
  ["no list", [pattern("a-list", "list")], [], []],
  ["none of a book without any", [], [], []],
])("are %s", (_, recipes, strips, slugs) => {
  const drawn = todaysPatterns({ notebooks: [], recipes, strips });
  expect(drawn.map(({ slug }) => slug)).toEqual(slugs);
});
