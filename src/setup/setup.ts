/** A set-up worked out for one notebook: its pages by number, the plans drawn on them, and what it had to leave out. */
import type { DayRange, Span } from "../calendar/span.ts";
import type { SetupLeftOut } from "../issue/facts/setup-left-out.ts";
import type { FacingSide } from "../measure/paper-side.ts";
import type { Binding } from "../notebook/notebook.ts";
import type { FittingPlan, Plan } from "../plan/plan.ts";
import type { SetupRecipe } from "../recipe/setup-recipe.ts";

export interface Setup {
  readonly recipe: SetupRecipe;
  readonly notebook: { readonly slug: string; readonly title: string; readonly binding: Binding };
  /** In the order of their numbers, which follow one another. */
  readonly pages: readonly SetupPage[];
  /** One for each pattern, days and side, in the order of its first page; a spread's has both pages. */
  readonly plans: readonly FittingPlan[];
  /** The titles of its patterns, by slug. */
  readonly titles: ReadonlyMap<string, string>;
  readonly leftOut: readonly LeftOutPlace[];
}

export interface SetupPage {
  readonly number: number;
  /** Where it lies in the open notebook. */
  readonly side: FacingSide;
  /** Left out: the page stays free. */
  readonly drawn?: DrawnPage;
}

/** What is drawn on a page. */
export interface DrawnPage {
  readonly pattern: string;
  readonly dates?: DayRange;
  /** The index of its plan, and that of the page in the plan. */
  readonly plan: number;
  readonly page: number;
  /** The index of the outermost entry that it comes from; none of a page that was filled. */
  readonly entry?: number;
  /** The place of the very entry: its index in each list from the outermost in, such as `2.0`. */
  readonly path?: string;
  /** The unit of the outermost block that it belongs to, and that of the nearest. */
  readonly unit?: Span;
  readonly within?: Span;
}

/** A pattern that takes no page, with the days that it does not fit for. */
export interface LeftOutPlace {
  readonly pattern: string;
  readonly dates?: DayRange;
  readonly why: SetupLeftOut;
  /** As it was tried. */
  readonly plan: Plan;
}

/** The days that a page is for: its own, or of one without dates those of the unit that it is drawn for. */
export function daysOfPage({ drawn }: SetupPage): DayRange | undefined {
  return drawn?.dates ?? drawn?.within;
}

/** The two halves of a spread count as one; everything else that is drawn is a page of its own. */
export function beginsPlan({ drawn, number }: SetupPage, { plans }: Setup): boolean {
  if (!drawn) return false;
  return plans[drawn.plan]?.pages.length !== 2 || number % 2 === 0;
}
