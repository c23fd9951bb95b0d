/** What other programs take from the npm package: the engine from a file's text to plans and strips, pure and exact. */

export type { SpanReading } from "../calendar/read-span.ts";
export { readSpan } from "../calendar/read-span.ts";
export type { DayRange } from "../calendar/span.ts";
export { divide, isShortage } from "../divide/divide.ts";
export type { Division, FixedSize, Question, ShareSize, Shortage } from "../divide/question.ts";
export type { Reading, TextFile } from "../issue/facts/reading.ts";
export { reportIssues } from "../issue/report/report.ts";
export type { Notebook } from "../notebook/notebook.ts";
export { readNotebook } from "../notebook/read-notebook.ts";
export type { FittingPlan, MisfitPlan, Plan } from "../plan/plan.ts";
export { planJson } from "../plan/plan-json.ts";
export { planPattern } from "../plan/plan-pattern.ts";
export { UNDATED, type When } from "../plan/when.ts";
export { readRecipe } from "../recipe/read/read-recipe.ts";
export { readStripRecipe } from "../recipe/read/read-strip-recipe.ts";
export type { Recipe } from "../recipe/recipe.ts";
export type { StripRecipe } from "../recipe/strip-recipe.ts";
export { type PlanStripQuestion, planStrip } from "../strip/plan-strip.ts";
export type { Strip } from "../strip/strip.ts";
export { type StripJson, stripJson } from "../strip/strip-json.ts";
