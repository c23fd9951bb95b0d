/** The nearest changes with which a pattern fits a notebook, each one solved and not guessed. */
import type { Misfit } from "../../issue/facts/misfit.ts";
import type { SearchStop } from "../../issue/facts/near-fit.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { Attempt, Recipe } from "../../recipe/recipe.ts";
import type { AttemptResult } from "../layout/lay-out-attempt.ts";
import { sameNames } from "../layout/same-names.ts";
import type { Change } from "../plan.ts";
import type { Edited } from "./edit-series.ts";
import { editsAt } from "./find-edits.ts";
import {
  countTracks,
  isOver,
  MOST_NEAR_WORK,
  MOST_TIDY_WORK,
  openSearch,
  pays,
  type Search,
  tryOut,
} from "./search.ts";
import { tidyEdits } from "./tidy-edits.ts";

/** How many changes are told, and how many edits one may need. */
const MOST_CHANGES = 6;
const MOST_EDITS = 3;

/** The changes that were found, and where the search ended before everything was tried. */
export interface NearFits {
  readonly changes: readonly Change[];
  readonly stop?: SearchStop;
}

/** Changes of one attempt each, those that change the least first. */
export function nearFits({ attempts }: Pick<Recipe, "attempts">, notebook: Notebook): NearFits {
  const search = openSearch(notebook, MOST_NEAR_WORK);
  const tidying = openSearch(notebook, MOST_TIDY_WORK);
  const found = attempts.flatMap((attempt, index): readonly FoundChange[] => {
    const tracks = countTracks(attempt);
    const broken = { attempt, tracks, search, misfit: tryOut(search, attempt) };
    return repairs(broken, MOST_EDITS).map((found) => {
      const edits = tidyEdits(found, { attempt, tracks, search: tidying });
      return { attempt: index, edits, keys: edits.map(({ fact }) => JSON.stringify(fact)) };
    });
  });
  const changes = withoutTwins(found)
    .filter((change) => !found.some((other) => isWithin(other, change)))
    .sort((a, b) => byHowLittle(a.edits, b.edits) || a.attempt - b.attempt)
    .slice(0, MOST_CHANGES)
    .map(({ attempt, edits }) => ({ attempt, edits: edits.map(({ fact }) => fact) }));
  const { tries } = search;
  return isOver(search) ? { changes, stop: { kind: "search-stop", tries } } : { changes };
}

interface FoundChange {
  readonly attempt: number;
  readonly edits: readonly Edited[];
  /** The edits' facts as texts, to tell them apart by. */
  readonly keys: readonly string[];
}

/** Of changes that come to the same edits, one, where the first stood. */
function withoutTwins(found: readonly FoundChange[]): readonly FoundChange[] {
  const keyOf = ({ attempt, keys }: FoundChange) => `${attempt} ${keys.join()}`;
  return [...new Map(found.map((change) => [keyOf(change), change])).values()];
}

/** Does the first change by itself do what the second one does with more edits? */
function isWithin(first: FoundChange, second: FoundChange): boolean {
  return (
    first.attempt === second.attempt &&
    first.keys.length < second.keys.length &&
    first.keys.every((key) => second.keys.includes(key))
  );
}

interface Broken {
  readonly attempt: Attempt;
  readonly tracks: number;
  readonly search: Search;
  /** Why the attempt does not fit; nothing where that was not found out any more. */
  readonly misfit: AttemptResult | undefined;
}

/**
 * Lists of edits that make the attempt fit. Each kind of edit is tried from the smallest on until everything fits.
 * Where none of a kind is enough, the smallest that moves the trouble elsewhere is kept, and the next place is mended in
 * the same way.
 */
function repairs(broken: Broken, most: number): readonly (readonly Edited[])[] {
  const { attempt, tracks, search, misfit } = broken;
  if (!misfit || misfit.kind === "pages" || most === 0) return [];
  const names = sameNames(attempt).length;
  const all = editsAt(attempt, misfit, search.notebook.binding);
  if (!pays(search, tracks * (1 + names) + all.flat().length)) return [];
  return all.flatMap((series) => {
    let moved: readonly [Edited, Broken] | undefined;
    for (const edit of series) {
      if (names === 0 && cannotDo(edit, misfit)) continue;
      if (!pays(search, tracks)) return [];
      const edited = edit.edited();
      const result = tryOut(search, edited);
      if (!result) return [];
      if (result.kind === "pages") return [[edit]];
      if (!samePlace(result, misfit)) {
        moved ??= [edit, { attempt: edited, tracks, search, misfit: result }];
      }
    }
    if (!moved) return [];
    const [edit, after] = moved;
    const [more] = [...repairs(after, most - 1)].sort(byHowLittle);
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
