/** Any checked recipe, for property tests: small trees of areas with everything that a recipe may hold. */
import fc from "fast-check";
import {
  type Area,
  type Attempt,
  FILLS,
  type GapRange,
  type Leftover,
  type Margin,
  PURPOSES,
  type Recipe,
  type Split,
  type Track,
  type TrackSizing,
} from "../../src/recipe/recipe.ts";

/** How large and how odd the recipes may be. */
export interface RecipeLimits {
  /** Splits within splits, at most. */
  readonly depth: number;
  /** Tracks a split, at most. */
  readonly tracks: number;
  /** The largest fixed size, min or max, in steps. */
  readonly steps: number;
  /** Names that tracks may share; none where empty. */
  readonly names: readonly string[];
  /** Pages tried one after another, at most. */
  readonly attempts: number;
}

export const SMALL_RECIPES: RecipeLimits = {
  depth: 3,
  tracks: 4,
  steps: 9,
  names: ["bed", "path"],
  attempts: 3,
};

export function arbitraryRecipe(limits: RecipeLimits = SMALL_RECIPES): fc.Arbitrary<Recipe> {
  return fc.record({
    slug: fc.constantFrom("bed-plan", "seed-list", "watering-rota", "frost-diary"),
    title: fc.constantFrom("Bed plan", "Seed list", "Watering rota", "Frost diary"),
    purpose: fc.constantFrom(...PURPOSES),
    tags: fc.constant([]),
    attempts: fc.array(arbitraryAttempt(limits), { minLength: 1, maxLength: limits.attempts }),
    body: fc.constant(""),
  });
}

export function arbitraryAttempt(limits: RecipeLimits = SMALL_RECIPES): fc.Arbitrary<Attempt> {
  const page = arbitraryArea(limits, limits.depth);
  return fc.oneof(
    { weight: 3, arbitrary: fc.record({ kind: fc.constant("page"), page }) },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant("spread"), left: page, right: page }) },
  );
}

/** An area with at most so many splits within splits. */
export function arbitraryArea(limits: RecipeLimits, depth: number): fc.Arbitrary<Area> {
  const own = { label: arbitraryLabel(), margin: arbitraryMargin() };
  const leaf = fc.record({
    ...own,
    fill: fc.constantFrom(...FILLS),
    every: fc.integer({ min: 1, max: 3 }),
  });
  if (depth === 0) return leaf;
  const divided = fc.record({
    ...own,
    split: arbitrarySplit(limits, depth),
    fill: fc.constant("blank"),
    every: fc.constant(1),
  });
  return fc.oneof({ weight: 2, arbitrary: divided }, { weight: 1, arbitrary: leaf });
}

/** Either the four sides of the paper, or the bound side and the one across from it: no two ever land on one side. */
function arbitraryMargin(): fc.Arbitrary<Margin> {
  const steps = fc.integer({ min: 0, max: 2 });
  const none = fc.constant({ steps: {} });
  const sides = { requiredKeys: [] };
  const fixed = fc.record({ top: steps, bottom: steps, left: steps, right: steps }, sides);
  const bound = fc.record({ inner: steps, outer: steps }, sides);
  const written = fc.oneof(fixed, bound).map((steps) => ({ steps }));
  return fc.oneof({ weight: 2, arbitrary: none }, { weight: 1, arbitrary: written });
}

function arbitraryLabel(): fc.Arbitrary<string> {
  return fc.constantFrom("", "", "Peas", "Leeks", "Tool shed", "Water <butt> & can");
}

function arbitrarySplit(limits: RecipeLimits, depth: number): fc.Arbitrary<Split> {
  return fc
    .record({
      axis: fc.constantFrom("across", "down"),
      tracks: arbitraryTracks(limits, depth),
      gap: arbitraryGap(),
      placing: fc.constantFrom("end", "start", "centre", "gaps", "parts", "track"),
      taker: fc.nat(),
    })
    .map(({ placing, taker, ...split }) => ({
      ...split,
      leftover: leftoverOf(placing, taker % split.tracks.length),
    }));
}

function leftoverOf(placing: Leftover["kind"], index: number): Leftover {
  return placing === "track" ? { kind: placing, index } : { kind: placing };
}

function arbitraryGap(): fc.Arbitrary<GapRange> {
  return fc
    .record({ min: fc.integer({ min: 0, max: 2 }), range: fc.constantFrom(0, 0, 1, 3) })
    .map(({ min, range }) => ({ min, max: min + range }));
}

/** Tracks one by one, or runs of one track that is repeated and so shares its area. */
function arbitraryTracks(limits: RecipeLimits, depth: number): fc.Arbitrary<readonly Track[]> {
  const track = fc.record({ size: arbitrarySize(limits), area: arbitraryArea(limits, depth - 1) });
  const repeated = fc
    .record({ track, repeat: fc.integer({ min: 1, max: limits.tracks }) })
    .map(({ track, repeat }) => Array.from({ length: repeat }, () => track));
  const single = fc.array(track, { minLength: 1, maxLength: limits.tracks });
  const mixed = fc
    .tuple(repeated, single)
    .map(([first, then]) => [...first, ...then].slice(0, limits.tracks));
  return fc.oneof(single, repeated, mixed);
}

function arbitrarySize({ steps, names }: RecipeLimits): fc.Arbitrary<TrackSizing> {
  const fixed = fc.record({
    kind: fc.constant("steps"),
    steps: fc.integer({ min: 1, max: steps }),
  });
  const share = arbitraryShare(steps).map((share) => ({ kind: "share" as const, ...share }));
  const sizes: fc.WeightedArbitrary<TrackSizing>[] = [
    { weight: 2, arbitrary: fixed },
    { weight: 5, arbitrary: share },
  ];
  if (names.length > 0) {
    const named = fc
      .tuple(fc.constantFrom(...names), arbitraryShare(steps))
      .map(([name, share]) => ({ kind: "same" as const, name, ...share }));
    sizes.push({ weight: 3, arbitrary: named });
  }
  return fc.oneof(...sizes);
}

function arbitraryShare(steps: number) {
  const weight = fc.oneof(fc.constantFrom(100, 100, 200, 300), fc.integer({ min: 1, max: 999 }));
  const min = fc.oneof(
    { weight: 2, arbitrary: fc.constant(1) },
    fc.integer({ min: 1, max: steps }),
  );
  const range = fc.oneof(
    { weight: 3, arbitrary: fc.constant(Number.POSITIVE_INFINITY) },
    fc.integer({ min: 0, max: steps }),
  );
  return fc
    .record({ weight, min, range })
    .map(({ weight, min, range }) => ({ weight, min, max: min + range }));
}
