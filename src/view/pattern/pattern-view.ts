/** What one pattern comes to on one notebook, finished: drawings, files and sentences, ready to be put on a page. */
import { blankScene } from "../../draw/page/blank-scene.ts";
import { gridScene } from "../../draw/page/grid-scene.ts";
import { pageScene } from "../../draw/page/page-scene.ts";
import { thumbnailScene } from "../../draw/page/thumbnail-scene.ts";
import { pixelsOf } from "../../draw/scene.ts";
import { stripScene } from "../../draw/strip/strip-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import { sayAlternative } from "../../issue/words/say-alternative.ts";
import { sayLeftover } from "../../issue/words/say-leftover.ts";
import { sayReason } from "../../issue/words/say-misfit.ts";
import { sayNearFit, sayNearFits } from "../../issue/words/say-near-fit.ts";
import { sayPlanNote } from "../../issue/words/say-plan-note.ts";
import { sayLeftOut } from "../../issue/words/say-strip-note.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { leftoverOf, sharedOutOf } from "../../plan/explain/leftover-of.ts";
import type { FittingPlan, MisfitPlan } from "../../plan/plan.ts";
import { planJson } from "../../plan/plan-json.ts";
import { planPattern } from "../../plan/plan-pattern.ts";
import { sheetClass } from "../../print/sheets/css-page.ts";
import { labelsOf } from "../../recipe/area-tree.ts";
import type { Attempt, Recipe } from "../../recipe/recipe.ts";
import { buildSingleStrip } from "../../strip/single-strip.ts";
import { type AlongView, alongView } from "../draw-along/draw-along-view.ts";
import { type SplitRow, splitRows } from "./split-rows.ts";

/** Plain JSON: it is kept on disk between builds. */
export interface PatternView extends PlanWords {
  readonly stripLeftOut: readonly string[];
  /** The strokes in their order and the marks; none where it does not fit. */
  readonly along?: AlongView;
  /** The classes that choose the printed sheet. */
  readonly sheet: string;
  /** Of the strip's drawing, in CSS pixels. */
  readonly stripSize: { readonly width: number; readonly height: number };
  readonly planJson: string;
  readonly pageSvg: string;
  readonly thumbSvg: string;
  readonly stripSvg: string;
}

interface PlanWords {
  readonly fits: boolean;
  /** Which attempt of the recipe was taken, from 0. */
  readonly used: number;
  /** Why the first layout was not taken, and which one was; "" where it was. */
  readonly alternative: string;
  readonly pages: number;
  readonly boxes: number;
  /** How many strokes of the pen it takes. */
  readonly lines: number;
  /** Steps that are left over, in all splits together. */
  readonly leftover: number;
  /** So many steps are left over: the beginning of a sentence; "" where it does not fit. */
  readonly leftoverWords: string;
  readonly rows: readonly SplitRow[];
  readonly notes: readonly string[];
  /** Why it does not fit, and what would: "" and empty where it fits. */
  readonly reason: string;
  readonly near: readonly string[];
  /** What stands above these changes. */
  readonly nearHead: string;
}

/** Works a recipe out for a notebook and draws it; where it does not fit, the notebook itself is drawn. */
export function makePatternView(recipe: Recipe, notebook: Notebook, write: WriteSvg): PatternView {
  const plan = planPattern(recipe, notebook);
  const drawing = plan.fits ? { plan, recipe, notebook } : undefined;
  const page = drawing ? pageScene(drawing) : gridScene(notebook);
  const thumb = drawing ? thumbnailScene(drawing) : blankScene(notebook);
  const strip = buildSingleStrip(recipe, notebook, plan);
  const stripDrawing = stripScene(strip);
  const labelAt = labelsOf(attemptOf(recipe, plan.fits ? plan.used : 0));
  return {
    ...(plan.fits ? fittingParts(plan, recipe, notebook) : misfitWords(plan, recipe)),
    stripLeftOut: strip.sides.flatMap((side) =>
      side.leftOut.map((fact) => sayLeftOut(fact, labelAt)),
    ),
    sheet: sheetClass(thumb.frame, page.frame),
    stripSize: pixelsOf(stripDrawing.frame),
    planJson: planJson(plan),
    pageSvg: write(page),
    thumbSvg: write(thumb),
    stripSvg: write(stripDrawing),
  };
}

function fittingParts(
  plan: FittingPlan,
  recipe: Recipe,
  notebook: Notebook,
): PlanWords & Pick<PatternView, "along"> {
  const labelAt = labelsOf(attemptOf(recipe, plan.used));
  const along = alongView(plan, notebook);
  return {
    fits: true,
    used: plan.used,
    alternative: alternativeWords(plan, recipe),
    pages: plan.pages.length,
    boxes: plan.pages.reduce((sum, { boxes }) => sum + boxes.length, 0),
    lines: along.strokes,
    along,
    leftover: leftoverOf(plan),
    leftoverWords: sayLeftover({ leftover: leftoverOf(plan), sharedOut: sharedOutOf(plan) }),
    rows: splitRows(recipe, plan),
    notes: plan.notes.map((note) => sayPlanNote(note, labelAt)),
    reason: "",
    near: [],
    nearHead: "",
  };
}

function alternativeWords({ used, passedOver }: FittingPlan, recipe: Recipe): string {
  if (!passedOver) return "";
  const others = recipe.attempts.length - 1;
  return sayAlternative({ used, others, passedOver }, labelsOf(attemptOf(recipe, 0)));
}

function misfitWords(plan: MisfitPlan, recipe: Recipe): PlanWords {
  return {
    fits: false,
    used: 0,
    alternative: "",
    pages: 0,
    boxes: 0,
    lines: 0,
    leftover: 0,
    leftoverWords: "",
    rows: [],
    notes: [],
    reason: sayReason(plan, labelsOf(attemptOf(recipe, 0))),
    near: plan.near.map(({ attempt, edits }) => {
      const labelAt = labelsOf(attemptOf(recipe, attempt));
      return edits.map((edit) => sayNearFit(edit, labelAt)).join(" ");
    }),
    nearHead: sayNearFits(plan.near.length),
  };
}

function attemptOf(recipe: Recipe, index: number): Attempt {
  const attempt = recipe.attempts[index];
  if (!attempt) throw new RangeError(`the recipe ${recipe.slug} has no attempt ${index}`);
  return attempt;
}
