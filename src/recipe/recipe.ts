/** What a pattern's recipe says, checked and with all short forms written out. */
import type { Day } from "../calendar/day.ts";
import type { TrackSize } from "../divide/question.ts";
import type { Place } from "../issue/facts/place.ts";
import type { Axis } from "../measure/axis.ts";
import type { FacingSide } from "../measure/paper-side.ts";
import type { AreaDates, PatternDates, TrackUnits } from "./dates.ts";
import type { LabelPart } from "./label-template.ts";

export const PURPOSES = [
  "year",
  "quarter",
  "month",
  "week",
  "day",
  "tracker",
  "list",
  "notes",
  "reference",
  "page",
] as const;
export type Purpose = (typeof PURPOSES)[number];

export const FILLS = ["blank", "lines", "checks", "squares", "dots", "numbers"] as const;
export type Fill = (typeof FILLS)[number];

/** A checked recipe. */
export interface Recipe {
  readonly slug: string;
  readonly title: string;
  readonly purpose: Purpose;
  readonly tags: readonly string[];
  /** What span of days the pattern stands for; left out: none. */
  readonly dates?: PatternDates;
  /** When it was written or last changed; left out: nobody said. */
  readonly date?: Day;
  /** The page as written first, then the `otherwise` list, to be tried in order. */
  readonly attempts: readonly Attempt[];
  /** The Markdown text below the front matter. */
  readonly body: string;
}

/** One way to lay the pattern out: a single page or a spread of two. */
export type Attempt =
  | {
      readonly kind: "page";
      readonly page: Area;
      /** Which of two facing pages it lies on; left out: a page by itself. */
      readonly side?: FacingSide;
    }
  | { readonly kind: "spread"; readonly left: Area; readonly right: Area };

export const MARGIN_KEYS = ["top", "bottom", "left", "right", "inner", "outer"] as const;
export type MarginKey = (typeof MARGIN_KEYS)[number];

/** Written margins in steps: `{}` where none; one written number stands for the four fixed sides. */
export interface Margin {
  readonly steps: Readonly<Partial<Record<MarginKey, number>>>;
  /** Where the margin is written, for the problem of two keys that land on one side. */
  readonly place?: Place;
}

/** A rectangle of whole steps. A leaf has no split. */
export interface Area {
  /** As it is written; "" where the recipe gives none. */
  readonly label: string;
  /** The label's text and placeholders, in a dated pattern. */
  readonly labelParts?: readonly LabelPart[];
  readonly margin: Margin;
  readonly split?: Split;
  /** The fill of a leaf; `blank` on an area that is split. */
  readonly fill: Fill;
  /** A line, check, square, dot or number every so many steps; 1 where left out. */
  readonly every: number;
  /** Once its dated pattern is set on a span: the days, and the number of the written area that it comes from. */
  readonly dates?: AreaDates;
  readonly place?: number;
  /** The label with longer and shorter names, where there are several; `label` is the first. */
  readonly labelForms?: readonly string[];
}

/** An area's division into columns (`across`) or rows (`down`). */
export interface Split {
  readonly axis: Axis;
  /** With `count`, `each` and `repeat` of a number written out. Repeated tracks share one `Area`. */
  readonly tracks: readonly Track[];
  readonly gap: GapRange;
  readonly leftover: Leftover;
  /** The written split, of one whose units are written out. */
  readonly origin?: Split;
}

export interface GapRange {
  readonly min: number;
  readonly max: number;
}

/** Where the steps go that tracks and gaps could not take. */
export type Leftover =
  | { readonly kind: "end" | "start" | "centre" | "gaps" | "parts" }
  | { readonly kind: "track"; readonly index: number };

/** One column or row. */
export interface Track {
  readonly size: TrackSizing;
  readonly area: Area;
  /** The units that it stands for, each with a track of its own. */
  readonly units?: TrackUnits;
  /** Is it one of those tracks, written out? */
  readonly isUnit?: true;
}

/** A written size: as the engine takes it, or a `same` name that is fixed before. */
export type TrackSizing = TrackSize | SameSize;

export interface SameSize {
  readonly kind: "same";
  readonly name: string;
  /** In hundredths, like a share's weight. */
  readonly weight: number;
  readonly min: number;
  /** Infinity where left out. */
  readonly max: number;
}
