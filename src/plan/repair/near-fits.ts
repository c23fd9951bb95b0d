/** The nearest changes with which a pattern fits a notebook, each one solved and not guessed. */
import type { Misfit } from "../../issue/facts/misfit.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { Attempt, Recipe } from "../../recipe/recipe.ts";
import { type Budget, MOST_NEAR_WORK, newBudget, TRY_WORK } from "../layout/budget.ts";
import { layOutAttempt } from "../layout/lay-out-attempt.ts";
import { sameNames } from "../layout/same-names.ts";
import type { Change } from "../plan.ts";
import type { Edited } from "./edit-series.ts";
import { editsAt } from "./find-edits.ts";
import { tidyEdits } from "./tidy-edits.ts";

/** How many changes are told, and how many edits one may need. */
const MOST_CHANGES = 6;
const MOST_EDITS = 3;

/** Changes of one attempt each, those that change the least first. */
export function nearFits(
  { attempts }: Pick<Recipe, "attempts">,
  notebook: Notebook,
): readonly Change[] {
  const budget = newBudget(MOST_NEAR_WORK);
  const found = attempts.flatMap((attempt, index): readonly FoundChange[] =>
    repairs({ attempt, notebook, budget }, MOST_EDITS).map((edits) => ({
      attempt: index,
      edits: tidyEdits(edits, {
        attempt,
        binding: notebook.binding,
        fits: fitsWith(notebook, budget),
      }),
    })),
  );
  return withoutTwins(found)
    .filter((change) => !found.some((other) => other !== change && isWithin(other, change)))
    .sort((a, b) => byHowLittle(a.edits, b.edits) || a.attempt - b.attempt)
    .slice(0, MOST_CHANGES)
    .map(({ attempt, edits }) => ({ attempt, edits: edits.map(({ fact }) => fact) }));
}

function fitsWith(notebook: Notebook, budget: Budget): (attempt: Attempt) => boolean {
  return (attempt) => {
    budget.left -= TRY_WORK;
    return budget.left >= 0 && layOutAttempt(attempt, notebook, budget).kind === "pages";
  };
}

/** Of changes that come to the same edits, the first. */
function withoutTwins(found: readonly FoundChange[]): readonly FoundChange[] {
  const keyOf = ({ attempt, edits }: FoundChange) =>
    JSON.stringify([attempt, edits.map(({ fact }) => fact)]);
  return [...new Map(found.map((change) => [keyOf(change), change])).values()];
}

interface FoundChange {
  readonly attempt: number;
  readonly edits: readonly Edited[];
}

/** Does the first change by itself do what the second one does with more edits? */
function isWithin(first: FoundChange, second: FoundChange): boolean {
  const edits = second.edits.map(({ fact }) => JSON.stringify(fact));
  return (
    first.attempt === second.attempt &&
    first.edits.length < edits.length &&
    first.edits.every(({ fact }) => edits.includes(JSON.stringify(fact)))
  );
}

interface Broken {
  readonly attempt: Attempt;
  readonly notebook: Notebook;
  readonly budget: Budget;
}

/**
 * Lists of edits that make the attempt fit. Each kind of edit is tried from the smallest on until everything fits.
 * Where none of a kind is enough, the smallest that moves the trouble elsewhere is kept, and the next place is mended in
 * the same way.
 */
function repairs(broken: Broken, most: number): readonly (readonly Edited[])[] {
  const { attempt, notebook, budget } = broken;
  const misfit = layOutAttempt(attempt, notebook, budget);
  if (misfit.kind === "pages" || most === 0) return [];
  const hasNames = sameNames(attempt).length > 0;
  return editsAt(attempt, misfit, notebook.binding).flatMap((series) => {
    let moved: readonly [Edited, Attempt] | undefined;
    for (const edit of series) {
      budget.left -= TRY_WORK;
      if (budget.left < 0) return [];
      if (!hasNames && cannotDo(edit, misfit)) continue;
      const edited = edit.edited();
      const result = layOutAttempt(edited, notebook, budget);
      if (result.kind === "pages") return [[edit]];
      if (!samePlace(result, misfit)) moved ??= [edit, edited];
    }
    if (!moved) return [];
    const [edit, edited] = moved;
    const [more] = [...repairs({ ...broken, attempt: edited }, most - 1)].sort(byHowLittle);
    return more ? [[edit, ...more]] : [];
  });
}

/**
 * An edit of the very split that lacks steps has to free all of them; it need not be tried where it does not. Not so
 * with `same` names: an edit that changes a name's size frees more than is written there.
 */
function cannotDo({ fact, freed }: Edited, misfit: Misfit): boolean {
  if (misfit.kind !== "split-too-short" || fact.kind === "smaller-margin") return false;
  return "path" in fact && fact.path === misfit.path && freed < misfit.needs - misfit.has;
}

/** At one name; at one area or split, along one axis, since an area can be too small both ways, or on one side of it. */
function samePlace(a: Misfit, b: Misfit): boolean {
  if (a.kind === "same-impossible" && b.kind === "same-impossible") return a.name === b.name;
  if (a.kind === "margin-clash" && b.kind === "margin-clash" && a.paperSide !== b.paperSide)
    return false;
  if ("axis" in a && "axis" in b && a.axis !== b.axis) return false;
  return "path" in a && "path" in b ? a.path === b.path && a.side === b.side : a.kind === b.kind;
}

/** Those that free fewer steps first, of equals those with fewer edits. */
function byHowLittle(a: readonly Edited[], b: readonly Edited[]): number {
  return freed(a) - freed(b) || a.length - b.length;
}

function freed(edits: readonly Edited[]): number {
  return edits.reduce((steps, edit) => steps + edit.freed, 0);
}
