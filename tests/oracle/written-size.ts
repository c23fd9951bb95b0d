/** How large a written pattern can come out, whatever the days. */
import type { SpanName } from "./rata-die.ts";
import type {
  UnitWord,
  WrittenArea,
  WrittenPattern,
  WrittenSplit,
  WrittenTrack,
} from "./written-pattern.ts";

/** What one of some units is; `weekdays` are none of their own. */
export const KIND_OF_UNIT: Readonly<Partial<Record<UnitWord, SpanName>>> = {
  days: "day",
  weeks: "week",
  months: "month",
  quarters: "quarter",
};

const MOST: Readonly<Record<UnitWord, Readonly<Partial<Record<SpanName, number>>>>> = {
  days: { month: 31, quarter: 92 },
  weeks: { month: 6, quarter: 14, year: 54 },
  months: { quarter: 3, year: 12 },
  quarters: { year: 4 },
  weekdays: {},
};

/** The most leaves of all its pages together. */
export function leavesOf({ dates, otherwise = [], ...first }: WrittenPattern): number {
  const pages = [first, ...otherwise].flatMap(({ page, spread }) => [
    page,
    spread?.left,
    spread?.right,
  ]);
  return pages.reduce((sum, area) => sum + (area ? leavesIn(area, dates) : 0), 0);
}

/** The most tracks of a split in a span of a kind. */
export function mostTracks(split: WrittenSplit, kind: SpanName): number {
  return writtenTracks(split).reduce((sum, track) => sum + copiesOf(track, kind), 0);
}

function leavesIn({ columns, rows }: WrittenArea, kind: SpanName): number {
  const split = columns ?? rows;
  if (!split) return 1;
  return writtenTracks(split).reduce((sum, track) => {
    const inner = typeof track.repeat === "string" ? KIND_OF_UNIT[track.repeat] : undefined;
    return sum + copiesOf(track, kind) * leavesIn(track, inner ?? kind);
  }, 0);
}

function writtenTracks({ count, each, tracks, least }: WrittenSplit): readonly WrittenTrack[] {
  return tracks ?? [{ ...each, ...(least && { least }), repeat: count ?? 1 }];
}

function copiesOf({ repeat = 1, least = 0 }: WrittenTrack, kind: SpanName): number {
  return typeof repeat === "number" ? repeat : Math.max(MOST[repeat][kind] ?? 7, least);
}
