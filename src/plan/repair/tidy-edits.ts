/** Takes out of a list of edits what it can do without: an edit that later ones made needless, and steps too many. */
import type { NearFit } from "../../issue/facts/near-fit.ts";
import type { Binding } from "../../notebook/notebook.ts";
import type { Attempt } from "../../recipe/recipe.ts";
import type { Edited } from "./edit-series.ts";
import { seriesOf } from "./find-edits.ts";
import { isOver, pays, type Search, tryOut } from "./search.ts";

export interface Tidying {
  readonly attempt: Attempt;
  /** How many tracks it has. */
  readonly tracks: number;
  readonly search: Search;
}

/** Edits after which the attempt still fits, none of which can be left out or be made one step smaller. */
export function tidyEdits(edits: readonly Edited[], tidying: Tidying): readonly Edited[] {
  // A single one was tried from small to large.
  return edits.length < 2 ? edits : tidied(edits, tidying);
}

function tidied(edits: readonly Edited[], tidying: Tidying): readonly Edited[] {
  for (const index of edits.keys()) {
    if (isOver(tidying.search)) return edits;
    const less = withoutEdit(edits, index, tidying) ?? withSmallerEdit(edits, index, tidying);
    if (less) return tidied(less, tidying);
  }
  return edits;
}

function withoutEdit(edits: readonly Edited[], index: number, tidying: Tidying) {
  return replayed(
    edits.map(({ fact }) => fact).filter((_, i) => i !== index),
    tidying,
  );
}

function withSmallerEdit(edits: readonly Edited[], index: number, tidying: Tidying) {
  const facts = edits.map(({ fact }) => fact);
  const now = edits[index];
  const before = edited(facts.slice(0, index), tidying);
  if (!now || !before) return undefined;
  for (const { fact, freed } of seriesOf(before.attempt, now.fact, bindingOf(tidying))) {
    if (freed >= now.freed || isOver(tidying.search)) return undefined;
    const found = replayed(
      facts.map((other, i) => (i === index ? fact : other)),
      tidying,
    );
    if (found) return found;
  }
  return undefined;
}

/** The edits as they are after one another, where all are still there to be made and the attempt fits after them. */
function replayed(facts: readonly NearFit[], tidying: Tidying): readonly Edited[] | undefined {
  const after = edited(facts, tidying);
  return after && tryOut(tidying.search, after.attempt)?.kind === "pages" ? after.edits : undefined;
}

interface After {
  readonly attempt: Attempt;
  readonly edits: readonly Edited[];
}

function edited(facts: readonly NearFit[], tidying: Tidying): After | undefined {
  let so: After = { attempt: tidying.attempt, edits: [] };
  for (const fact of facts) {
    if (isOver(tidying.search)) return undefined;
    const series = seriesOf(so.attempt, fact, bindingOf(tidying));
    if (!pays(tidying.search, tidying.tracks + series.length)) return undefined;
    const edit = series.find((one) => one.fact.to === fact.to);
    if (!edit) return undefined;
    so = { attempt: edit.edited(), edits: [...so.edits, edit] };
  }
  return so;
}

function bindingOf({ search }: Tidying): Binding {
  return search.notebook.binding;
}
