/** What one pattern comes to on one notebook, finished: drawings, files and sentences, ready to be put on a page. */
import { blankScene } from "../../draw/page/blank-scene.ts";
import { gridScene } from "../../draw/page/grid-scene.ts";
import { pageScene } from "../../draw/page/page-scene.ts";
import { thumbnailScene } from "../../draw/page/thumbnail-scene.ts";
import { pixelsOf } from "../../draw/scene.ts";
import { stripScene } from "../../draw/strip/strip-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import type { Leftovers } from "../../issue/facts/leftovers.ts";
import { sayLeftOut } from "../../issue/words/say-strip-note.ts";
import { BARE_EDGES } from "../../issue/words/sheet-words.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { leftoverOf, NO_LEFTOVER } from "../../plan/explain/leftover-of.ts";
import type { FittingPlan, MisfitPlan } from "../../plan/plan.ts";
import { planJson } from "../../plan/plan-json.ts";
import { planPattern } from "../../plan/plan-pattern.ts";
import { UNDATED, type When } from "../../plan/when.ts";
import { sheetClass } from "../../print/sheets/css-page.ts";
import { attemptOf, labelsOf } from "../../recipe/area-tree.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { buildSingleStrip } from "../../strip/single-strip.ts";
import { type AlongView, alongView } from "../draw-along/draw-along-view.ts";
import { type FitSummary, fitSummary, type MisfitSummary, misfitSummary } from "./plan-summary.ts";
import { type SpanShapes, spanShapes } from "./span-shapes.ts";

/** Plain JSON: it is kept on disk between builds. */
export interface PatternView extends PlanWords {
  readonly stripLeftOut: readonly string[];
  /** The strokes in their order and the marks; none where it does not fit. */
  readonly along?: AlongView;
  /** The classes that choose the printed sheet. */
  readonly sheet: string;
  /** What there is to know where the drawing is as large as its sheet; else "". */
  readonly bareEdges: string;
  /** Of the strip's drawing, in CSS pixels. */
  readonly stripSize: { readonly width: number; readonly height: number };
  readonly planJson: string;
  readonly pageSvg: string;
  readonly thumbSvg: string;
  readonly stripSvg: string;
  /** Of a dated pattern: how it comes out on the longer and the shorter of its spans. */
  readonly spans?: SpanShapes;
}

/** What is said of a misfit is "" and empty where it fits, and the other way round. */
interface PlanWords extends FitSummary, MisfitSummary {
  readonly fits: boolean;
  /** Which attempt of the recipe was taken, from 0. */
  readonly used: number;
  readonly pages: number;
  readonly boxes: number;
  /** How many strokes of the pen it takes. */
  readonly lines: number;
  readonly leftover: Leftovers;
}

export interface PatternTools {
  readonly write: WriteSvg;
  /** What a dated pattern is planned for; left out: for no days yet. */
  readonly when?: When;
}

/** Works a recipe out for a notebook and draws it; where it does not fit, the notebook itself is drawn. */
export function makePatternView(
  written: Recipe,
  notebook: Notebook,
  { write, when }: PatternTools,
): PatternView {
  const plan = planPattern(written, notebook, when);
  const { recipe } = plan;
  const drawing = plan.fits ? { plan, recipe, notebook } : undefined;
  const page = drawing ? pageScene(drawing) : gridScene(notebook);
  const thumb = drawing ? thumbnailScene(drawing) : blankScene(notebook);
  const strip = buildSingleStrip(recipe, notebook, plan);
  const stripDrawing = stripScene(strip);
  const sheet = sheetClass(thumb.frame, page.frame);
  const labelAt = labelsOf(attemptOf(recipe, plan.fits ? plan.used : 0));
  const spans = spanShapes(written, notebook, { write, when: when ?? UNDATED });
  return {
    ...(plan.fits ? fittingParts(plan, recipe, notebook) : misfitWords(plan, recipe)),
    stripLeftOut: strip.sides.flatMap((side) =>
      side.leftOut.map((fact) => sayLeftOut(fact, labelAt)),
    ),
    sheet,
    bareEdges: sheet.includes("cropped") ? BARE_EDGES : "",
    stripSize: pixelsOf(stripDrawing.frame),
    planJson: planJson(plan),
    pageSvg: write(page),
    thumbSvg: write(thumb),
    stripSvg: write(stripDrawing),
    ...(spans && { spans }),
  };
}

function fittingParts(
  plan: FittingPlan,
  recipe: Recipe,
  notebook: Notebook,
): PlanWords & Pick<PatternView, "along"> {
  const along = alongView(plan, notebook);
  return {
    ...fitSummary(plan, recipe),
    fits: true,
    used: plan.used,
    pages: plan.pages.length,
    boxes: plan.pages.reduce((sum, { boxes }) => sum + boxes.length, 0),
    lines: along.strokes,
    along,
    leftover: leftoverOf(plan),
    reason: "",
    near: [],
    nearHead: "",
  };
}

function misfitWords(plan: MisfitPlan, recipe: Recipe): PlanWords {
  return {
    ...misfitSummary(plan, recipe),
    fits: false,
    used: 0,
    alternative: "",
    pages: 0,
    boxes: 0,
    lines: 0,
    leftover: NO_LEFTOVER,
    leftoverWords: "",
    rows: [],
    notes: [],
  };
}
