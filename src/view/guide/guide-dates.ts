/** For which days the guide draws an example, and how its caption says so. */
import { weeksIn } from "../../calendar/calendar.ts";
import { ENGLISH } from "../../calendar/english.ts";
import { moonAt } from "../../calendar/names/moon-names.ts";
import { weekdayName } from "../../calendar/names.ts";
import { readSpan } from "../../calendar/read-span.ts";
import { isBeyondYears, type SpanKind, spanHolding } from "../../calendar/span.ts";
import { ISO_WEEKS } from "../../calendar/week.ts";
import { asSentence } from "../../issue/words/say-count.ts";
import { UNDATED, type When } from "../../plan/when.ts";
import { spanTitle } from "../pattern/span-words.ts";
import type { ExampleFence } from "./guide-fence.ts";

/** What an example is planned for, once for each of its spans; the moon is that of Greenwich. Throws where one is none. */
export function guideDates(
  { spans = [], region }: ExampleFence,
  kind: SpanKind | undefined,
): readonly When[] {
  const rule = region === undefined ? ISO_WEEKS : weeksIn(region);
  if (spans.length === 0) return [{ ...UNDATED, rule }];
  return spans.map((written) => {
    const reading = readSpan(written);
    const span = reading.ok && kind && spanHolding(kind, reading.value.from, rule);
    if (!span || isBeyondYears(span)) throw new RangeError(`the guide has no days ${written}`);
    return { ...UNDATED, rule, span, moonOn: moonAt(0) };
  });
}

/** `On A5, 26 × 38`, `May 2027 on A5, 26 × 38`; where weeks are not ISO 8601's, it says where they begin. */
export function guideDatesWords({ span, rule }: When, notebook: string): string {
  const first = weekdayName(ENGLISH, rule.firstWeekday, "wide");
  const weeks = rule.firstWeekday === ISO_WEEKS.firstWeekday ? "" : `, weeks from ${first}`;
  if (!span) return `On ${notebook}${weeks}`;
  return `${asSentence(spanTitle(span, rule))}${weeks}, on ${notebook}`;
}
