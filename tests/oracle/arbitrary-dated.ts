/** Any dated pattern, as its author would write it, with units inside units, parts of them, and all placeholders. */
import fc from "fast-check";
import { SPAN_NAMES, type SpanName } from "./rata-die.ts";
import type {
  UnitWord,
  WrittenArea,
  WrittenAttempt,
  WrittenPattern,
  WrittenSelection,
  WrittenSplit,
  WrittenTrack,
} from "./written-pattern.ts";
import { KIND_OF_UNIT, leavesOf, mostTracks } from "./written-size.ts";

/** What each span is cut into. */
const CUTS: Readonly<Record<SpanName, readonly UnitWord[]>> = {
  day: [],
  week: ["days"],
  month: ["weeks", "days"],
  quarter: ["months", "weeks", "days"],
  year: ["quarters", "months", "weeks", "days"],
};
/** Where an area lies: what it stands for, whether in a track of `weekdays`, and how many splits may still be in it. */
interface Inside {
  readonly kind: SpanName;
  readonly isInWeekdays: boolean;
  readonly depth: number;
}

export function arbitraryDated(depth = 3): fc.Arbitrary<WrittenPattern> {
  return anyPattern(depth).filter((pattern) => leavesOf(pattern) <= MOST_LEAVES);
}

/** More would not be told apart on any page that people draw. */
const MOST_LEAVES = 600;

/** The text's even choice is found among all choices. */
const MOST_EVEN = 10;

function anyPattern(depth: number): fc.Arbitrary<WrittenPattern> {
  return fc.constantFrom(...SPAN_NAMES).chain((kind) => {
    const attempt = arbitraryAttempt({ kind, isInWeekdays: false, depth });
    return fc
      .record({
        attempt,
        outside: fc.constantFrom(undefined, undefined, "pale", "blank"),
        otherwise: fc.array(attempt, { maxLength: 1 }),
      })
      .map(({ attempt, outside, otherwise }) => ({
        dates: kind,
        ...attempt,
        ...(outside && { outside }),
        ...(otherwise.length > 0 && { otherwise }),
      }));
  });
}

function arbitraryAttempt(inside: Inside): fc.Arbitrary<WrittenAttempt> {
  const area = arbitraryDivided(inside);
  return fc.oneof(
    { weight: 6, arbitrary: area.map((page) => ({ page })) },
    {
      weight: 1,
      arbitrary: fc.record({ left: area, right: area }).map((spread) => ({ spread })),
    },
  );
}

function arbitraryArea(inside: Inside): fc.Arbitrary<WrittenArea> {
  if (inside.depth <= 0) return arbitraryLeaf();
  return fc.oneof(
    { weight: 3, arbitrary: arbitraryDivided(inside) },
    { weight: 2, arbitrary: arbitraryLeaf() },
  );
}

function arbitraryLeaf(): fc.Arbitrary<WrittenArea> {
  return fc.record({
    ...HEAD,
    fill: fc.constantFrom("blank", "lines", "checks", "squares", "dots", "numbers"),
    every: fc.integer({ min: 1, max: 3 }),
  });
}

function arbitraryDivided(inside: Inside): fc.Arbitrary<WrittenArea> {
  return fc
    .record({ ...HEAD, isAcross: fc.boolean(), split: arbitrarySplit(inside) })
    .map(({ isAcross, split, ...head }) => ({
      ...head,
      ...(isAcross ? { columns: split } : { rows: split }),
    }));
}

const LABELS = [
  "",
  "Peas",
  "{day}",
  "{weekday} {day}",
  "{weekday}",
  "{day} {month}",
  "{month}",
  "{month} {year}",
  "{month number}/{year}",
  "Q{quarter}",
  "{week} of {week year}",
  "{week}",
  "{week}, {year}",
  "{day} {month} to {last day} {last month} {last year}",
  "{last month} {last year}",
  "{{{day}}",
  "{{day} }{{",
];

const MARGIN = fc.integer({ min: 0, max: 1 });
const HEAD = {
  label: fc.constantFrom(...LABELS),
  margin: fc.oneof(
    { weight: 4, arbitrary: fc.constant({}) },
    { weight: 1, arbitrary: fc.record({ top: MARGIN, left: MARGIN }) },
    { weight: 1, arbitrary: fc.record({ inner: MARGIN, outer: MARGIN }) },
  ),
};

function arbitrarySplit(inside: Inside): fc.Arbitrary<WrittenSplit> {
  const tracks = fc.array(arbitraryTrack(inside), { minLength: 1, maxLength: 3 });
  const kinds: fc.WeightedArbitrary<WrittenSplit>[] = [
    { weight: 2, arbitrary: tracks.map((tracks) => ({ tracks })) },
    { weight: 1, arbitrary: arbitraryCounted(inside) },
  ];
  if (unitsIn(inside).length > 0) {
    kinds.push({ weight: 4, arbitrary: arbitraryUnits(inside).map(asCount) });
  }
  return fc
    .record({
      split: fc.oneof(...kinds),
      gap: fc.constantFrom({ min: 0, max: 0 }, { min: 0, max: 0 }, { min: 0, max: 1 }),
      placing: fc.constantFrom("end", "start", "centre", "gaps", "parts", "label"),
    })
    .map(({ split, gap, placing: wanted }) => {
      const most = mostTracks(split, inside.kind);
      const isEven = wanted === "gaps" || wanted === "parts";
      const placing = isEven && most > MOST_EVEN ? "centre" : wanted;
      const labels = [...(split.tracks ?? []), ...(split.each ? [split.each] : [])];
      const label = labels.find((track) => track.label)?.label ?? "start";
      return { ...split, gap, leftover: placing === "label" ? label : placing };
    });
}

function arbitraryCounted(inside: Inside): fc.Arbitrary<WrittenSplit> {
  const each = fc
    .record({ size: arbitrarySize(), area: arbitraryArea(deeper(inside)) })
    .map(({ size, area }) => ({ ...area, ...size }));
  return fc.oneof(
    fc.record({ count: fc.integer({ min: 1, max: 4 }), each }),
    fc.record({ count: fc.constant(2), labels: fc.constant(["{day}", "{last day}"]) }),
  );
}

function arbitraryTrack(inside: Inside): fc.Arbitrary<WrittenTrack> {
  const plain = fc
    .record({
      size: arbitrarySize(),
      area: arbitraryArea(deeper(inside)),
      repeat: fc.constantFrom(undefined, undefined, 1, 3),
    })
    .map(({ size, area, repeat }) => ({ ...area, ...size, ...(repeat && { repeat }) }));
  return unitsIn(inside).length > 0 ? fc.oneof(plain, arbitraryUnits(inside)) : plain;
}

/** A track for each of some units. */
function arbitraryUnits(inside: Inside): fc.Arbitrary<WrittenTrack> {
  return fc.constantFrom(...unitsIn(inside)).chain((unit) => {
    const within = {
      kind: KIND_OF_UNIT[unit] ?? inside.kind,
      isInWeekdays: inside.isInWeekdays || unit === "weekdays",
      depth: inside.depth - 1,
    };
    return fc
      .record({
        size: arbitrarySize(),
        area: arbitraryArea(within),
        selection: inside.kind === "year" && unit === "days" ? FEW_DAYS : arbitrarySelection(),
      })
      .map(({ size, area, selection }) => ({ ...area, ...size, ...selection, repeat: unit }));
  });
}

function asCount({ repeat, from, to, least, ...each }: WrittenTrack): WrittenSplit {
  return {
    ...(repeat && { count: repeat }),
    each,
    ...(from && { from }),
    ...(to && { to }),
    ...(least && { least }),
  };
}

function unitsIn({ kind, isInWeekdays }: Inside): readonly UnitWord[] {
  return isInWeekdays ? [] : [...CUTS[kind], "weekdays"];
}

function deeper(inside: Inside): Inside {
  return { ...inside, depth: inside.depth - 1 };
}

/** All days of a year are more than a split may have. */
const FEW_DAYS: fc.Arbitrary<WrittenSelection> = fc.constantFrom(
  { from: 360 },
  { from: -3 },
  { to: 5 },
  { from: 58, to: 62 },
  { from: 365, least: 3 },
);

const NUMBER = fc.oneof(fc.integer({ min: 1, max: 9 }), fc.integer({ min: -9, max: -1 }));

/** From the same end, the first is not past the last: that is a problem told to the author. */
function arbitrarySelection(): fc.Arbitrary<WrittenSelection> {
  const part = fc
    .record(
      { from: NUMBER, to: NUMBER, least: fc.integer({ min: 1, max: 9 }) },
      { requiredKeys: [] },
    )
    .map((selection) => {
      const { from, to } = selection;
      const isPast = from !== undefined && to !== undefined && from > to && from > 0 === to > 0;
      return isPast ? { ...selection, from: to, to: from } : selection;
    });
  return fc.oneof({ weight: 3, arbitrary: fc.constant({}) }, { weight: 2, arbitrary: part });
}

function arbitrarySize(): fc.Arbitrary<Pick<WrittenTrack, "steps" | "share" | "same" | "min">> {
  return fc.oneof(
    { weight: 8, arbitrary: fc.constant({}) },
    { weight: 2, arbitrary: fc.record({ steps: fc.integer({ min: 1, max: 2 }) }) },
    { weight: 2, arbitrary: fc.record({ share: fc.constantFrom(1, 2, 0.5) }) },
    { weight: 1, arbitrary: fc.record({ min: fc.integer({ min: 1, max: 2 }) }) },
    { weight: 1, arbitrary: fc.record({ same: fc.constantFrom("bed", "path") }) },
  );
}
