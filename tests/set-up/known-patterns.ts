/** Patterns of which it is plain what they take on a notebook of 20 by 30 steps, and set-ups of them as files. */
import type { Binding, Notebook } from "../../src/notebook/notebook.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { readSetup } from "../../src/recipe/read/read-setup.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import type { SetupRecipe } from "../../src/recipe/setup-recipe.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import type { Days, KnownPattern, World, WrittenSetup } from "../oracle/set-up-by-the-text.ts";

const PAGE = "page: {rows: 2}";
const SPREAD = "spread: {left: {rows: 2}, right: {columns: 2}}";
/** Five rows of six steps are all that a page of 30 steps holds. */
const ROWS = "page: {rows: {count: weeks, each: {steps: 6}}}";

const always = (what: "page" | "spread" | "nothing") => () => what;

/** The rows of a month: the weeks that have a day in it. */
function weeksIn(days: Days | undefined, { weekBegins }: World): number {
  if (!days) return 6;
  const date = new Date(`${days.from}T00:00:00Z`);
  const since = (date.getUTCDay() + 7 - (weekBegins % 7)) % 7;
  const count = new Date(`${days.to}T00:00:00Z`).getUTCDate();
  return Math.ceil((since + count) / 7);
}

/** The front matter below the title, and what it comes to. */
const PATTERNS: Readonly<Record<string, readonly [keys: string, known: KnownPattern]>> = {
  note: [PAGE, { takes: always("page") }],
  pair: [SPREAD, { takes: always("spread") }],
  wide: ["page: {columns: 50}", { takes: always("nothing") }],
  /** `inner` is the right side of a left page: there two margins land on one side. */
  sided: [
    "page: {margin: {inner: 1, right: 1}, rows: 2}",
    {
      takes: (_, side, { binding }) => (side === "right" || binding === "top" ? "page" : "nothing"),
    },
  ],
  "a-day": [`dates: day\n${PAGE}`, { span: "day", takes: always("page") }],
  "a-week": [`dates: week\n${PAGE}`, { span: "week", takes: always("page") }],
  "week-pair": [`dates: week\n${SPREAD}`, { span: "week", takes: always("spread") }],
  "a-month": [`dates: month\n${PAGE}`, { span: "month", takes: always("page") }],
  "month-grows": [
    `dates: month\n${ROWS}\notherwise: [{${SPREAD}}]`,
    { span: "month", takes: (days, _, world) => (weeksIn(days, world) > 5 ? "spread" : "page") },
  ],
  "month-of-five": [
    `dates: month\n${ROWS}`,
    { span: "month", takes: (days, _, world) => (weeksIn(days, world) > 5 ? "nothing" : "page") },
  ],
  "a-quarter": [`dates: quarter\n${SPREAD}`, { span: "quarter", takes: always("spread") }],
  "a-year": [`dates: year\n${PAGE}`, { span: "year", takes: always("page") }],
};

export const KNOWN: Readonly<Record<string, KnownPattern>> = Object.fromEntries(
  Object.entries(PATTERNS).map(([slug, [, known]]) => [slug, known]),
);

/** The same as the program reads them. Throws for a slug that there is not. */
export function recipeBySlug(slug: string): Recipe {
  const found = RECIPES.get(slug);
  if (!found) throw new RangeError(`there is no ${slug}`);
  return found;
}

export function hasRecipe(slug: string): boolean {
  return RECIPES.has(slug);
}

const RECIPES = new Map(
  Object.entries(PATTERNS).map(([slug, [keys]]) => {
    const text = `---\ntitle: Of ${slug}\npurpose: page\n${keys}\n---\n`;
    const reading = readRecipe({ path: `patterns/${slug}.md`, text });
    if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
    return [slug, reading.value] as const;
  }),
);

export function twentyByThirty(binding: Binding = "left"): Notebook {
  return notebookOf(20, 30, binding);
}

/** A set-up as a file says it; JSON is YAML. */
export function setupText({ dates: { from, to }, first, pages, fill }: WrittenSetup): string {
  const keys = { title: "Tried", dates: `${from}/${to}`, first, pages, ...(fill && { fill }) };
  const lines = Object.entries(keys).map(([key, value]) => `${key}: ${JSON.stringify(value)}`);
  return `---\n${lines.join("\n")}\n---\n`;
}

/** The set-up as it is read. Throws what is wrong with it. */
export function setupOf(written: WrittenSetup): SetupRecipe {
  const reading = readSetup({ path: "setups/tried.md", text: setupText(written) });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}
