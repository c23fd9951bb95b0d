/** The words that a file may use where it has to choose one: what each means, and a drawing where it can be drawn. */
import { pageScene } from "../../../draw/page/page-scene.ts";
import { asSentence } from "../../../issue/words/say-count.ts";
import { COUNT_WORDS } from "../../../issue/words/say-plan-note.ts";
import { COUNTS } from "../../../measure/grid-axis.ts";
import { PAPER_NAMES, PAPERS } from "../../../notebook/paper.ts";
import { planPattern } from "../../../plan/plan-pattern.ts";
import { FILLS, type Fill, PURPOSES, type Recipe } from "../../../recipe/recipe.ts";
import { guideNotebook } from "../../../view/guide/guide-notebooks.ts";
import { PURPOSE_WORDS } from "../../../view/pattern/purpose-words.ts";
import { openSvgWriter } from "../../artifacts/make/svg-writer.ts";

interface ReferenceWord {
  readonly word: string;
  readonly meaning: string;
}

interface FillDrawing extends ReferenceWord {
  readonly svg: string;
}

export interface ReferenceWords {
  readonly purposes: readonly ReferenceWord[];
  readonly counts: readonly ReferenceWord[];
  /** Width and height in millimetres. */
  readonly papers: readonly { readonly name: string; readonly size: string }[];
  readonly fills: readonly FillDrawing[];
}

/** From the tables that the readers check with, so that none is missing and none too many. */
export function referenceWords(): ReferenceWords {
  return {
    purposes: PURPOSES.map((word) => ({ word, meaning: PURPOSE_WORDS[word].about })),
    counts: COUNTS.map((word) => ({ word, meaning: `${asSentence(COUNT_WORDS[word])}.` })),
    papers: PAPER_NAMES.map((name) => ({ name, size: PAPERS[name].join(" × ") })),
    fills: fillDrawings(),
  };
}

const FILL_WORDS: Readonly<Record<Fill, string>> = {
  blank: "Nothing.",
  lines: "A line for each step.",
  checks: "A line for each step with a box to tick in front of it.",
  squares: "Squares of a step each.",
  dots: "A dot on every crossing, stronger than the notebook’s own.",
  numbers: "A number for each step along the longer side, from 1.",
};

function fillDrawings(): readonly FillDrawing[] {
  const write = openSvgWriter();
  const notebook = guideNotebook("card");
  return FILLS.map((fill) => {
    const recipe = fillRecipe(fill);
    const plan = planPattern(recipe, notebook);
    if (!plan.fits) throw new RangeError(`${fill} does not fit ${notebook.title}`);
    const scene = pageScene({ plan, recipe, notebook, options: { hasBands: false } });
    return { word: fill, meaning: FILL_WORDS[fill], svg: write(scene, "inline") };
  });
}

function fillRecipe(fill: Fill): Recipe {
  const margin = { steps: { left: 1, right: 1, top: 1, bottom: 1 } };
  const page = { label: "", margin, fill, every: 1 };
  return {
    slug: `fill-${fill}`,
    title: asSentence(fill),
    purpose: "reference",
    tags: [],
    attempts: [{ kind: "page", page }],
    body: "",
  };
}
