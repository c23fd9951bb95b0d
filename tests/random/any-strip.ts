/** Strips with whatever can be on them: patterns, uses, plain divisions of any kind, dates. */
import fc from "fast-check";
import type { Axis } from "../../src/measure/axis.ts";
import type { Area, Split, TrackSizing } from "../../src/recipe/recipe.ts";
import { STRIP_BOUNDS } from "../../src/recipe/strip-bounds.ts";
import {
  MAKES,
  patternEntry,
  type StripEntry,
  type StripRecipe,
} from "../../src/recipe/strip-recipe.ts";
import { plainSlug } from "../../src/source/slug.ts";
import { anyRange } from "./any-dates.ts";
import { anyLine } from "./any-notebook.ts";

/** A strip of patterns with these names, without a text below it. */
export function anyStrip(slug: fc.Arbitrary<string>): fc.Arbitrary<StripRecipe> {
  const list = (axis: Axis) => {
    const entry = fc.oneof(slug.map(patternEntry), anyPattern(slug), anyDivision(axis));
    return fc.uniqueArray(entry, {
      maxLength: STRIP_BOUNDS.patterns,
      selector: (one) => one.slug,
    });
  };
  const dates = fc.option(
    anyRange().map((range) => ({ dates: range })),
    { nil: {} },
  );
  const heads = fc.record({
    slug,
    title: anyLine(),
    across: list("across"),
    down: list("down"),
    lanes: fc.integer(STRIP_BOUNDS.lanes),
    make: fc.constantFrom(...MAKES),
    width: fc.integer({ min: 10_000_000, max: 100_000_000 }).map((nm) => nm / 1_000_000),
    body: fc.constant(""),
  });
  return fc.tuple(heads, dates).map(([head, days]) => ({ ...head, ...days }));
}

const uses = fc.option(
  fc.integer(STRIP_BOUNDS.uses).map((count) => ({ uses: count })),
  {
    nil: {},
  },
);

function anyPattern(slugs: fc.Arbitrary<string>): fc.Arbitrary<StripEntry> {
  return fc.tuple(slugs, uses).map(([slug, used]) => ({ ...patternEntry(slug), ...used }));
}

/** A division as it is read; its areas have nothing that comes from a place in a file. */
function anyDivision(axis: Axis): fc.Arbitrary<StripEntry> {
  const steps = fc.integer({ min: 0, max: 400 });
  const title = anyLine().filter((words) => plainSlug(words) !== "");
  return fc
    .tuple(title, arbitrarySplit(axis), fc.record({ start: steps, end: steps }), uses)
    .map(([words, split, margin, used]) => ({
      kind: "division" as const,
      title: words,
      slug: plainSlug(words),
      split,
      margin,
      ...used,
    }));
}

function arbitrarySplit(axis: Axis): fc.Arbitrary<Split> {
  const size: fc.Arbitrary<TrackSizing> = fc.oneof(
    fc.constant({ kind: "share", weight: 100, min: 1, max: Infinity } as const),
    fc.integer({ min: 1, max: 400 }).map((exact) => ({ kind: "steps", steps: exact }) as const),
    fc.record({
      kind: fc.constant("share" as const),
      weight: fc.integer({ min: 1, max: 1_000_000 }),
      min: fc.integer({ min: 1, max: 9 }),
      max: fc.integer({ min: 9, max: 400 }),
    }),
    fc.record({
      kind: fc.constant("same" as const),
      name: fc.constantFrom("day", "a, b", "null", "x: y"),
      weight: fc.constant(100),
      min: fc.constant(1),
      max: fc.constant(Infinity),
    }),
  );
  const track = fc.record({ size, area: fc.constantFrom(...AREAS) });
  const gap = fc.tuple(fc.nat(400), fc.nat(400)).map(([a, b]) => {
    return { min: Math.min(a, b), max: Math.max(a, b) };
  });
  const leftover = fc.constantFrom("end", "start", "centre", "gaps", "parts");
  return fc.record({
    axis: fc.constant(axis),
    tracks: fc.array(track, { minLength: 1, maxLength: 5 }),
    gap,
    leftover: fc.record({ kind: leftover }),
  });
}

const LEAF = { label: "", margin: { steps: {} }, fill: "blank", every: 1 } as const;
const AREAS: readonly [Area, ...Area[]] = [
  LEAF,
  { ...LEAF, label: "To do, today" },
  { ...LEAF, label: "null", fill: "lines", every: 3 },
  {
    ...LEAF,
    split: {
      axis: "down",
      tracks: [
        { size: { kind: "steps", steps: 2 }, area: LEAF },
        { size: { kind: "steps", steps: 3 }, area: { ...LEAF, label: "End" } },
      ],
      gap: { min: 1, max: 1 },
      leftover: { kind: "track", index: 1 },
    },
  },
];
