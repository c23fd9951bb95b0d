/** A division that somebody asks for: equal parts of a page with a gap, in one direction, on their notebook. */
import type { ShareSize } from "../../divide/question.ts";
import { type DivisionAnswer, sayDivisionTitle } from "../../issue/words/say-division.ts";
import type { Axis } from "../../measure/axis.ts";
import {
  type GridAxis,
  positionLength,
  type StepPlace,
  stepPlace,
  usableSteps,
} from "../../measure/grid-axis.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type Plan, type PlanSplit, trackIntervals, trackMarks } from "../../plan/plan.ts";
import { planPattern } from "../../plan/plan-pattern.ts";
import type { Area, Recipe, Split } from "../../recipe/recipe.ts";

/** What is asked; all in steps. */
export interface DivisionChoice {
  readonly axis: Axis;
  readonly parts: number;
  readonly gap: number;
  /** Left free before the first part and after the last. */
  readonly margin: readonly [before: number, after: number];
}

/** What a page asks for first: the thirds that nobody can see at a glance. */
export const USUAL_DIVISION: DivisionChoice = { axis: "across", parts: 3, gap: 1, margin: [0, 0] };

/** The division worked out as a page of its own, so that it is drawn, printed and counted like any other. */
export interface WorkedDivision {
  readonly choice: DivisionChoice;
  readonly recipe: Recipe;
  readonly plan: Plan;
  /** Nothing where the parts do not fit. */
  readonly answer?: DivisionAnswer;
}

/** Works it out for a notebook. */
export function workOutDivision(choice: DivisionChoice, notebook: Notebook): WorkedDivision {
  const recipe = divisionRecipe(choice);
  const plan = planPattern(recipe, notebook);
  const split = plan.fits ? plan.pages[0]?.splits[0] : undefined;
  return {
    choice,
    recipe,
    plan,
    ...(split && { answer: answerOf(split, choice, notebook.axes[choice.axis]) }),
  };
}

/** The text of `division-data`; `null` where the parts do not fit. */
export function divisionJson({ choice, answer }: WorkedDivision): string {
  if (!answer) return "null";
  const { axis, parts, gap, margin } = choice;
  const { sizes, marks, leftover } = answer;
  return JSON.stringify({ axis, parts, gap, margin, sizes, marks, leftover });
}

function answerOf(split: PlanSplit, { gap }: DivisionChoice, grid: GridAxis): DivisionAnswer {
  const place = (position: number): StepPlace & { readonly mm: number } => ({
    ...stepPlace(grid, position),
    mm: toMm(positionLength(grid, position)),
  });
  return {
    steps: usableSteps(grid),
    gap,
    sizes: split.sizes,
    marks: trackMarks(split),
    leftover: split.leftover,
    parts: trackIntervals(split).map(({ from, length }) => ({
      steps: length,
      from: place(from),
      to: place(from + length),
    })),
  };
}

function divisionRecipe(choice: DivisionChoice): Recipe {
  const { axis, parts, gap, margin } = choice;
  const [before, after] = margin;
  const steps = axis === "across" ? { left: before, right: after } : { top: before, bottom: after };
  const split = equalSplit(axis, parts, gap);
  return {
    slug: `division-${parts}-${axis}`,
    title: sayDivisionTitle(choice),
    purpose: "page",
    tags: [],
    attempts: [{ kind: "page", page: { ...leaf(steps), split } }],
    body: "",
  };
}

/** So many parts that are alike, with a gap, what is left over at the end. */
export function equalSplit(axis: Axis, parts: number, gap: number): Split {
  return {
    axis,
    tracks: Array.from({ length: parts }, () => ({ size: SHARE, area: leaf({}) })),
    gap: { min: gap, max: gap },
    leftover: { kind: "end" },
  };
}

const SHARE: ShareSize = { kind: "share", weight: 100, min: 1, max: Number.POSITIVE_INFINITY };

function leaf(steps: Area["margin"]["steps"]): Area {
  return { label: "", margin: { steps }, fill: "blank", every: 1 };
}
