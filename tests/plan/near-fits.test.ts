/** Each change that is told where nothing fits, made by hand: it does fit, and a smaller one of its kind does not. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { NearFit } from "../../src/issue/facts/near-fit.ts";
import type { Binding, Notebook } from "../../src/notebook/notebook.ts";
import type { Change } from "../../src/plan/plan.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import type { Attempt, Recipe, TrackSizing } from "../../src/recipe/recipe.ts";
import { arbitraryNotebook } from "../oracle/arbitrary-notebook.ts";
import { arbitraryRecipe, SMALL_RECIPES } from "../oracle/arbitrary-recipe.ts";
import { editedByTheText, startOf } from "../oracle/edited-by-the-text.ts";
import { fits } from "../oracle/fits.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { area, columns, onePage, recipeOf, rows, same, track } from "../oracle/recipe-of.ts";
import { equalTracks, fixedTrack, shareTrack } from "../oracle/track.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const SEED = 1846;

/** A recipe's changes; none where it fits. */
function changesOf(recipe: Recipe, notebook: Notebook): readonly Change[] {
  const plan = planPattern(recipe, notebook);
  return plan.fits ? [] : plan.near;
}

/** The attempt with all edits of a change, each found to start from what the recipe says. */
function changed(recipe: Recipe, change: Change, { binding }: Notebook): Attempt {
  const attempt = recipe.attempts[change.attempt];
  if (!attempt) throw new Error("a change is of one of the recipe's attempts");
  return change.edits.reduce((so, edit) => {
    expect(edit.from).toBe(startOf(so, edit, binding));
    if (edit.kind === "larger-name-max") expect(edit.to).toBeGreaterThan(edit.from);
    else if (edit.kind !== "leave-out-margin") expect(edit.to).toBeLessThan(edit.from);
    return editedByTheText(so, edit, binding);
  }, attempt);
}

/** The attempts with one of a change's edits left out, or made one step smaller, as far as the others can be made. */
function almost(recipe: Recipe, change: Change, { binding }: Notebook): readonly Attempt[] {
  const attempt = recipe.attempts[change.attempt];
  if (!attempt) throw new Error("a change is of one of the recipe's attempts");
  return change.edits.flatMap((edit, index) => {
    const less = oneLess(edit);
    return [[], ...(less ? [[less]] : [])].flatMap((instead) =>
      edited(attempt, change.edits.toSpliced(index, 1, ...instead), binding),
    );
  });
}

function edited(attempt: Attempt, edits: readonly NearFit[], binding: Binding): readonly Attempt[] {
  try {
    return [edits.reduce((so, edit) => editedByTheText(so, edit, binding), attempt)];
  } catch (error) {
    if (error instanceof RangeError) return [];
    throw error;
  }
}

/** The edit one step smaller, where that is still an edit. */
function oneLess(edit: NearFit): NearFit | undefined {
  if (edit.kind === "leave-out-margin") return undefined;
  if (edit.kind === "larger-name-max")
    return edit.to - 1 > edit.from ? { ...edit, to: edit.to - 1 } : undefined;
  return edit.to + 1 < edit.from ? { ...edit, to: edit.to + 1 } : undefined;
}

describe("every change that is told", () => {
  it.each([
    ["without names", { ...SMALL_RECIPES, names: [], depth: 2 }, 1_000],
    ["with names", { ...SMALL_RECIPES, depth: 2 }, 300],
  ] as const)(
    "fits, and not without any of its edits or with one step less of any, for random recipes %s",
    (_, limits, all) => {
      const numRuns = checkRuns(all);
      let told = 0;
      const misfits = fc
        .tuple(arbitraryRecipe(limits), arbitraryNotebook({ dots: [6, 40] }))
        .filter(([recipe, notebook]) => !fits(recipe, notebook));
      fc.assert(
        fc.property(misfits, ([recipe, notebook]) => {
          for (const change of changesOf(recipe, notebook)) {
            told++;
            const after = { ...recipe, attempts: [changed(recipe, change, notebook)] };
            expect(fits(after, notebook), JSON.stringify(change)).toBe(true);
            for (const less of almost(recipe, change, notebook)) {
              const short = { ...recipe, attempts: [less] };
              expect(fits(short, notebook), JSON.stringify(change)).toBe(false);
            }
          }
        }),
        { seed: SEED, numRuns },
      );
      expect(told).toBeGreaterThan(numRuns);
    },
    60_000,
  );
});

/** A page across of so many columns, each at least so wide. */
function columnsOf(count: number, min: number, gap: number) {
  const each = track(shareTrack(1, { min }), area());
  return columns(
    Array.from({ length: count }, () => each),
    { gap: { min: gap, max: gap } },
  );
}

/** In words: what, where, from, to. */
function told(recipe: Recipe, notebook: Notebook): readonly string[] {
  return changesOf(recipe, notebook).map(({ attempt, edits }) =>
    edits
      .map((edit) => `${attempt} ${edit.kind} ${placeOf(edit)} ${edit.from}→${edit.to}`)
      .join(", "),
  );
}

function placeOf(edit: NearFit): string {
  if ("name" in edit) return edit.name;
  const place = edit.path || "page";
  return edit.kind === "leave-out-margin" ? `${place} ${edit.key}` : place;
}

const WORKED: readonly (readonly [string, Recipe, number, readonly string[]])[] = [
  [
    "4 columns of at least 6 with gaps of 1 on 26 steps lack 1",
    recipeOf(onePage(area({ split: columnsOf(4, 6, 1) }))),
    26,
    ["0 narrower-gap columns 1→0", "0 smaller-min columns 6→5", "0 fewer-tracks columns 4→3"],
  ],
  [
    "a margin of 2 and 1 beside 5 columns of at least 5 on 26 steps: 2 steps lack",
    recipeOf(
      onePage(area({ margin: { steps: { left: 2, right: 1 } }, split: columnsOf(5, 5, 0) })),
    ),
    26,
    ["0 smaller-margin page 3→1", "0 smaller-min columns 5→4", "0 fewer-tracks columns 5→4"],
  ],
  [
    "a heading of 10 beside a part of at least 20 on 26 steps: 4 steps lack",
    recipeOf(onePage(area({ split: columns([fixedTrack(10), shareTrack(1, { min: 20 })]) }))),
    26,
    ["0 smaller-min columns 20→16", "0 smaller-steps columns 10→6", "0 fewer-tracks columns 2→1"],
  ],
  [
    "a margin of 20 on every side of 26 × 38 steps: nothing is left either way",
    recipeOf(onePage(area({ margin: { steps: { top: 20, right: 20, bottom: 20, left: 20 } } }))),
    26,
    ["0 smaller-margin page 40→25, 0 smaller-margin page 40→37"],
  ],
  [
    "a page to be tried otherwise that lacks less is told first",
    recipeOf(
      onePage(area({ split: columnsOf(30, 1, 0) })),
      onePage(area({ split: columnsOf(27, 1, 0) })),
    ),
    26,
    ["1 fewer-tracks columns 27→26", "0 fewer-tracks columns 30→26"],
  ],
];

describe("the changes for a pattern that lacks steps", () => {
  it.each(WORKED)("%s", (_, recipe, steps, expected) => {
    expect(told(recipe, notebookOf(steps, 38))).toEqual(expected);
  });

  it("mends rows that differently labelled columns share with one edit, everywhere", () => {
    const inner = rows(equalTracks(3), { gap: { min: 3, max: 3 } });
    const each = (label: string) => track(shareTrack(1), area({ label, split: inner }));
    const recipe = recipeOf(onePage(area({ split: columns([each("Peas"), each("Beans")]) })));
    expect(told(recipe, notebookOf(26, 6))).toEqual([
      "0 narrower-gap columns.0.rows 3→1",
      "0 fewer-tracks columns.0.rows 3→2",
    ]);
  });

  it("tells one larger edit where it is enough, and two where none is", () => {
    const inner = area({ split: rows(equalTracks(4), { gap: { min: 1, max: 1 } }) });
    const outer = rows([fixedTrack(20), track(shareTrack(1), inner)], { gap: { min: 9, max: 9 } });
    const recipe = recipeOf(onePage(area({ split: outer })));
    expect(told(recipe, notebookOf(26, 26))).toEqual([
      "0 smaller-steps rows 20→10",
      "0 fewer-tracks rows 2→1",
      "0 narrower-gap rows 9→5, 0 fewer-tracks rows.1.rows 4→1",
    ]);
  });

  it("takes the smallest mend of the next place, and tells no change that holds another one whole", () => {
    const beds = (count: number) =>
      columns(Array.from({ length: count }, () => same("bed", shareTrack(1, { min: 5 }))));
    const page = () => area({ margin: { steps: { outer: 1 } }, split: beds(4) });
    const spread = { kind: "spread" as const, left: page(), right: page() };
    expect(told(recipeOf(spread), notebookOf(20, 28))[0]).toBe(
      "0 smaller-margin page 1→0, 0 smaller-margin page 1→0",
    );
    const edits = changesOf(recipeOf(spread), notebookOf(20, 28)).map((change) =>
      change.edits.map((edit) => JSON.stringify(edit)),
    );
    for (const one of edits)
      for (const other of edits)
        if (one !== other) expect(one.every((edit) => other.includes(edit))).toBe(false);
  });

  it("loosens the limits of a name that contradict each other, wherever its tracks stand", () => {
    const split = (of: TrackSizing) => columns([{ size: of, area: area() }, shareTrack(1)]);
    const bed = (limits: { min?: number; max?: number }) => same("bed", shareTrack(1, limits));
    const spread = (left: TrackSizing, right: TrackSizing) =>
      recipeOf({
        kind: "spread",
        left: area({ split: split(left) }),
        right: area({ split: split(right) }),
      });
    const a5 = notebookOf(26, 38);
    expect(told(spread(bed({ min: 5 }), bed({ max: 3 })), a5)).toEqual([
      "0 smaller-name-min bed 5→3",
      "0 larger-name-max bed 3→5",
    ]);
    // 30 steps are more than a page has: letting the other track grow is not enough by itself.
    expect(told(spread(bed({ min: 30 }), bed({ max: 3 })), a5)).toEqual([
      "0 smaller-name-min bed 30→3",
      "0 larger-name-max bed 3→25, 0 smaller-min columns 30→25",
    ]);
  });

  it("lets a name shrink that asks for more than one page has, on every page that asks for it", () => {
    const page = () =>
      area({
        split: columns(Array.from({ length: 3 }, () => same("bed", shareTrack(1, { min: 9 })))),
      });
    const spread = { kind: "spread" as const, left: page(), right: page() };
    const changes = told(recipeOf(spread), notebookOf(26, 38));
    expect(changes).toContain("0 smaller-name-min bed 9→8");
  });

  it("says what lacks steps where a name asks for more than the page has, not that its limits contradict each other", () => {
    const split = columns([same("bed", shareTrack(1, { min: 50 })), shareTrack(1)]);
    const recipe = recipeOf(onePage(area({ split })));
    expect(planPattern(recipe, notebookOf(26, 38))).toMatchObject({
      misfit: { kind: "split-too-short", needs: 51, has: 26 },
    });
    expect(told(recipe, notebookOf(26, 38))).toEqual(["0 smaller-min columns 50→25"]);
  });

  it("leaves out one of two margins that land on one side, on each side where two do", () => {
    const pad = { ...notebookOf(26, 38), binding: "top" as const };
    const margin = { steps: { top: 1, inner: 2 } };
    expect(told(recipeOf(onePage(area({ margin }))), pad)).toEqual([
      "0 leave-out-margin page top 1→0",
      "0 leave-out-margin page inner 2→0",
    ]);
    const both = { steps: { top: 1, bottom: 1, inner: 2, outer: 2 } };
    expect(told(recipeOf(onePage(area({ margin: both }))), pad)).toEqual([
      "0 leave-out-margin page top 1→0, 0 leave-out-margin page bottom 1→0",
      "0 leave-out-margin page inner 2→0, 0 leave-out-margin page bottom 1→0",
    ]);
  });

  it("leaves out a margin and frees what is lacking besides", () => {
    const pad = { ...notebookOf(26, 38), binding: "top" as const };
    const margin = { steps: { top: 1, inner: 1 } };
    const recipe = recipeOf(onePage(area({ margin, split: columnsOf(4, 6, 1) })));
    expect(told(recipe, pad)[0]).toBe(
      "0 leave-out-margin page top 1→0, 0 narrower-gap columns 1→0",
    );
  });
});
