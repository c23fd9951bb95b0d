/** When a dated pattern is planned for: the span of days, how weeks are counted, and what days are called. */
import { ENGLISH } from "../calendar/english.ts";
import type { MoonOn } from "../calendar/names/moon-names.ts";
import type { Names } from "../calendar/names.ts";
import type { Span } from "../calendar/span.ts";
import { ISO_WEEKS, type WeekRule } from "../calendar/week.ts";

export interface When {
  /** Left out: no days yet; the pattern is planned for its largest case at every level. */
  readonly span?: Span;
  readonly rule: WeekRule;
  readonly names: Names;
  /** Left out: nobody asks for the moon, or it is still on its way. */
  readonly moonOn?: MoonOn | undefined;
}

/** On no days yet, with weeks as ISO 8601 has them and English names. */
export const UNDATED: When = { rule: ISO_WEEKS, names: ENGLISH };
