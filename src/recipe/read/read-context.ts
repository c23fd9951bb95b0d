/** What all parts of one recipe share while it is read: where problems go, and what may not grow without end. */
import type { SpanKind } from "../../calendar/span.ts";
import type { Place } from "../../issue/facts/place.ts";
import type { Note } from "../../issue/facts/reading.ts";
import { LIMITS } from "../limits.ts";

export interface ReadContext {
  /** What the area that is being read stands for, in a dated pattern. */
  readonly span?: SpanKind | undefined;
  /** Does it lie in a track of `weekdays`? */
  readonly isInWeekdays: boolean;
  readonly note: Note;
  /** Counts an area; notes the first one too many and answers whether there is still room. */
  readonly takesArea: (at: Place) => boolean;
  /** Remembers a `same` name; notes the first one too many. */
  readonly takeName: (name: string, at: Place) => void;
}

/** The context of one recipe's page, with nothing read yet; `span` is what a dated pattern stands for. */
export function openReadContext(note: Note, span?: SpanKind): ReadContext {
  const names = new Set<string>();
  let areas = 0;
  return {
    note,
    span,
    isInWeekdays: false,
    takesArea(at) {
      areas++;
      const limit = LIMITS.areas;
      if (areas === limit + 1) note({ about: "rule", kind: "too-many-areas", limit, at });
      return areas <= limit;
    },
    takeName(name, at) {
      const isNew = !names.has(name);
      names.add(name);
      const limit = LIMITS.names;
      if (isNew && names.size === limit + 1) {
        note({ about: "rule", kind: "too-many-names", limit, at });
      }
    },
  };
}
