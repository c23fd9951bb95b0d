/** What the guide shows beside an example: what the book itself makes of it, or says about it. */
import { splitScene } from "../../draw/figure/split-scene.ts";
import { gridScene } from "../../draw/page/grid-scene.ts";
import { pageScene } from "../../draw/page/page-scene.ts";
import type { Scene } from "../../draw/scene.ts";
import { stripScene } from "../../draw/strip/strip-scene.ts";
import type { Reading, TextFile } from "../../issue/facts/reading.ts";
import { reportIssues } from "../../issue/report/report.ts";
import { asSentence } from "../../issue/words/say-count.ts";
import { saySplitReason } from "../../issue/words/say-split-reason.ts";
import { readNotebook } from "../../notebook/read-notebook.ts";
import { splitReasons } from "../../plan/explain/split-reasons.ts";
import { planPattern } from "../../plan/plan-pattern.ts";
import { UNDATED, type When } from "../../plan/when.ts";
import { areaAt, attemptOf } from "../../recipe/area-tree.ts";
import { readBook } from "../../recipe/read/read-book.ts";
import { readRecipe } from "../../recipe/read/read-recipe.ts";
import { readSetup } from "../../recipe/read/read-setup.ts";
import { readStripRecipe } from "../../recipe/read/read-strip-recipe.ts";
import { readWords } from "../../recipe/read/read-words.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { planStrip } from "../../strip/plan-strip.ts";
import { type MisfitSummary, misfitSummary } from "../pattern/plan-summary.ts";
import { guideDates, guideDatesWords } from "./guide-dates.ts";
import type { ExampleFence } from "./guide-fence.ts";
import { guideNotebook } from "./guide-notebooks.ts";

/** A drawing with its caption, in one of five shapes; or what the reader or the engine answers: a report, or why it does not fit. */
export type ShownExample =
  | {
      readonly kind: "drawing";
      readonly shape: "page" | "spread" | "slice" | "strip" | "sheet";
      readonly scene: Scene;
      readonly caption: string;
    }
  | { readonly kind: "report"; readonly text: string }
  | ({ readonly kind: "misfit" } & MisfitSummary);

/** What an example may refer to: the patterns that its chapter has shown before it, and a word for its drawings' ids. */
export interface ExampleContext {
  readonly id: string;
  readonly patterns: ReadonlyMap<string, Recipe>;
}

/** Throws where an example that should be well is not, and where one that should be refused is not. */
export function showExample(fence: ExampleFence, context: ExampleContext): readonly ShownExample[] {
  if (fence.isWrong) return [reportOf(fence)];
  switch (fence.kind) {
    case "pattern":
      return patternsDrawn(fence, context);
    case "split":
      return fence.on.map((name) => slice(fence, name, context.id));
    case "notebook":
      return [notebookDrawn(fence, context)];
    case "strip":
      return fence.on.map((name) => strip(fence, name, context));
    case "setup":
      checked(readSetup(fileOf(fence)), fence);
      return [];
    case "book":
      checked(readBook(fileOf(fence)), fence);
      return [];
    case "words":
      checked(readWords(fileOf(fence)), fence);
      return [];
  }
}

/** The checked recipe of a pattern's example. */
export function readPattern(fence: ExampleFence): Recipe {
  return checked(readRecipe(fileOf(fence)), fence);
}

function fileOf({ kind, slug, text }: ExampleFence): TextFile {
  const isWhole = kind === "book" || kind === "words";
  return { path: isWhole ? `${kind}.yaml` : `${kind}s/${slug}.md`, text };
}

const READERS = {
  pattern: readRecipe,
  notebook: readNotebook,
  strip: readStripRecipe,
  setup: readSetup,
  book: readBook,
  words: readWords,
} as const;

function reportOf(fence: ExampleFence): ShownExample {
  const file = fileOf(fence);
  if (fence.kind === "split") throw new Error("a split is no file: nothing reports on it");
  const reading = READERS[fence.kind](file);
  if (reading.ok) throw new Error(`the guide's ${file.path} should be refused and is not`);
  return { kind: "report", text: reportIssues(reading.issues, textsOf(file)) };
}

function checked<T>(reading: Reading<T>, fence: ExampleFence): T {
  if (reading.ok) return reading.value;
  throw new Error(reportIssues(reading.issues, textsOf(fileOf(fence))));
}

function textsOf({ path, text }: TextFile): ReadonlyMap<string, string> {
  return new Map([[path, text]]);
}

/** A pattern on each of its notebooks, there for each of its spans. */
function patternsDrawn(fence: ExampleFence, { id }: ExampleContext): readonly ShownExample[] {
  const written = readPattern(fence);
  const whens = guideDates(fence, written.dates?.span);
  const asked = fence.on.flatMap((name) => whens.map((when) => ({ name, when })));
  return asked.map(({ name, when }, index) => drawn(written, { name, when, id: `${id}-${index}` }));
}

interface DrawnOn {
  readonly name: string;
  readonly when: When;
  readonly id: string;
}

/** A pattern on a notebook, or why it does not fit and what would. */
function drawn(written: Recipe, { name, when, id }: DrawnOn): ShownExample {
  const notebook = guideNotebook(name);
  const plan = planPattern(written, notebook, when);
  const { recipe } = plan;
  if (plan.fits) {
    const shape = plan.pages.length > 1 ? "spread" : "page";
    const scene = pageScene({ plan, recipe, notebook });
    return {
      kind: "drawing",
      shape,
      scene: { ...scene, id },
      caption: guideDatesWords(when, notebook.title),
    };
  }
  return { kind: "misfit", ...misfitSummary(plan, recipe) };
}

/** A split is the head of an area: a page around it makes it a recipe. */
function slice(fence: ExampleFence, name: string, id: string): ShownExample {
  const indented = fence.text.trimEnd().replace(/^/gm, "  ");
  const text = `---\ntitle: Split\npurpose: page\npage:\n${indented}\n---\n`;
  const recipe = readPattern({ ...fence, kind: "pattern", slug: "split", text });
  const notebook = guideNotebook(name);
  const plan = planPattern(recipe, notebook);
  const split = plan.fits ? plan.pages[0]?.splits[0] : undefined;
  if (!plan.fits || !split) {
    throw new Error(`the guide's split does not fit ${name}:\n${fence.text}`);
  }
  const written = areaAt(attemptOf(recipe, plan.used), { side: "single", path: split.path })?.split;
  const labels = written?.tracks.map(({ area }) => area.label) ?? [];
  const scene = splitScene({ id, notebook, split, labels });
  const [reason] = splitReasons(recipe, plan);
  const caption = reason ? asSentence(saySplitReason(reason)) : "";
  return { kind: "drawing", shape: "slice", scene, caption };
}

function notebookDrawn(fence: ExampleFence, { id }: ExampleContext): ShownExample {
  const notebook = checked(readNotebook(fileOf(fence)), fence);
  const scene = gridScene(notebook);
  return { kind: "drawing", shape: "page", scene: { ...scene, id }, caption: notebook.title };
}

function strip(fence: ExampleFence, name: string, { id, patterns }: ExampleContext): ShownExample {
  const recipe = checked(readStripRecipe(fileOf(fence)), fence);
  const notebook = guideNotebook(name);
  const recipeOf = (slug: string): Recipe => {
    const pattern = patterns.get(slug);
    if (pattern) return pattern;
    throw new Error(`the guide has not shown the pattern ${slug} before its strip`);
  };
  const scene = stripScene(planStrip({ recipe, notebook, recipeOf, when: UNDATED }));
  return { kind: "drawing", shape: "strip", scene: { ...scene, id }, caption: scene.title };
}
