/** The guide's drawings that are not of an example: each has a name by which a chapter calls for it. */
import { barsScene } from "../../draw/figure/bars-scene.ts";
import { bothWaysScene } from "../../draw/figure/both-ways-scene.ts";
import { countingScene } from "../../draw/figure/counting-scene.ts";
import { evenChartScene } from "../../draw/figure/even-chart-scene.ts";
import { splitScene } from "../../draw/figure/split-scene.ts";
import { stripEndScene } from "../../draw/figure/strip-end-scene.ts";
import { pageScene } from "../../draw/page/page-scene.ts";
import type { Scene } from "../../draw/scene.ts";
import { pocketScene, pocketSize } from "../../draw/strip/pocket-scene.ts";
import { asSentence } from "../../issue/words/say-count.ts";
import { COUNT_WORDS } from "../../issue/words/say-plan-note.ts";
import type { Axis } from "../../measure/axis.ts";
import { COUNTS, type Count, usableSteps } from "../../measure/grid-axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { PlanSplit } from "../../plan/plan.ts";
import { planPattern } from "../../plan/plan-pattern.ts";
import { sheetScene } from "../../print/sheets/sheet-scene.ts";
import { stripSheets } from "../../print/sheets/strip-sheets.ts";
import { readRecipe } from "../../recipe/read/read-recipe.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { buildSingleStrip } from "../../strip/single-strip.ts";
import { guideNotebook } from "./guide-notebooks.ts";

/** Draws a figure; the id must be its own in its page. */
type MakeScene = (id: string) => Scene;

const FIGURES: Readonly<Record<string, MakeScene>> = {
  fencepost: (id) => counting(id, "square", ["dot-to-dot", "edge-to-dot"]),
  "four-ways": (id) => counting(id, "square", COUNTS),
  "wide-edge": (id) => counting(id, "a5", ["edge-to-dot", "dot-to-dot"]),
  "middle-even": (id) => middle(id, "a5"),
  "middle-odd": (id) => middle(id, "jis-b5"),
  sheet: (id) => sheet(id, "square"),
  bars: barsScene,
  "even-chart": evenChartScene,
  "both-ways": (id) => bothWaysScene(id, guideNotebook("square")),
  meant: (id) => thirds(id, { sizes: [8, 8, 8], gaps: [1, 1] }),
  mended: (id) => thirds(id, { sizes: [8, 7, 8], gaps: [2, 1] }),
  "strip-end": stripEndScene,
  sketch: (id) => sketch(id, "card"),
  pocket: (id) => pocket(id, "square"),
};

/** The names of all figures. */
export const FIGURE_NAMES: readonly string[] = Object.keys(FIGURES);

/** The drawing of that name. Throws where there is none. */
export function guideFigure(name: string, id: string): Scene {
  const draw = FIGURES[name];
  if (!draw) throw new RangeError(`the guide has no figure ${name}`);
  return draw(id);
}

function counting(id: string, name: string, counts: readonly Count[]): Scene {
  const ways = counts.map((count) => ({ count, words: asSentence(COUNT_WORDS[count]) }));
  return countingScene({ id, notebook: guideNotebook(name), ways });
}

/** All the steps as one part: what is left to see is where they begin, where they end and where their middle is. */
function middle(id: string, name: string): Scene {
  const notebook = guideNotebook(name);
  const axis: Axis = "across";
  const length = usableSteps(notebook.axes[axis]);
  const split = {
    path: "columns",
    axis,
    from: 0,
    length,
    sizes: [length],
    gaps: [],
    leftover: 0,
    before: 0,
    after: 0,
  };
  return splitScene({ id, notebook, split });
}

/** Three parts of an A5 page, as they were meant or as a hand drew them. */
function thirds(id: string, { sizes, gaps }: Pick<PlanSplit, "sizes" | "gaps">): Scene {
  const notebook = guideNotebook("a5");
  const length = usableSteps(notebook.axes.across);
  const place = { path: "columns", axis: "across", from: 0, length } as const;
  return splitScene({
    id,
    notebook,
    split: { ...place, sizes, gaps, leftover: 0, before: 0, after: 0 },
  });
}

/** A page as it is sketched on a card of few squares. */
function sketch(id: string, name: string): Scene {
  const { recipe, notebook } = rotaOn(name);
  const plan = planPattern(recipe, notebook);
  if (!plan.fits) throw new RangeError(`the sketch does not fit ${name}`);
  return { ...pageScene({ plan, recipe, notebook }), id };
}

/** The pocket of a strip of thirds and a heading. */
function pocket(id: string, name: string): Scene {
  const { recipe, notebook } = rotaOn(name);
  const strip = buildSingleStrip(recipe, notebook, planPattern(recipe, notebook));
  const size = pocketSize(strip, LONGEST_POCKET);
  if ("kind" in size) throw new RangeError(`a strip for ${name} has no pocket`);
  return { ...pocketScene(strip, size), id };
}

/** The sheet on which a strip of thirds and a heading is printed. */
function sheet(id: string, name: string): Scene {
  const { recipe, notebook } = rotaOn(name);
  const strip = buildSingleStrip(recipe, notebook, planPattern(recipe, notebook));
  const [first] = stripSheets({ title: strip.title, strips: [strip], paper: "A4" }).sheets;
  if (!first) throw new RangeError(`a strip for ${name} has no room on a sheet`);
  return { ...sheetScene(first, id), title: "A printed sheet" };
}

function rotaOn(name: string): { readonly recipe: Recipe; readonly notebook: Notebook } {
  const reading = readRecipe({ path: "patterns/rota.md", text: ROTA });
  if (!reading.ok) throw new RangeError("the figures' own pattern has a problem");
  return { recipe: reading.value, notebook: guideNotebook(name) };
}

/** In millimetres: what A4 has room for. */
const LONGEST_POCKET = 280;

const ROTA = `---
title: Watering rota
purpose: tracker
page:
  rows:
    gap: 1
    tracks:
      - {label: Water, steps: 3}
      - columns: {count: 3, gap: 1}
---
`;
