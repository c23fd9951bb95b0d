/** A strip: the runs of chosen patterns and plain divisions, worked out for one notebook and laid into lanes. */
import type { LeftOut } from "../issue/facts/strip-note.ts";
import type { Axis } from "../measure/axis.ts";
import type { StepInterval } from "../measure/box.ts";
import type { GridAxis } from "../measure/grid-axis.ts";
import type { PageSide } from "../measure/paper-side.ts";
import type { Make } from "../recipe/strip-recipe.ts";

export interface Strip {
  readonly slug: string;
  readonly title: string;
  readonly notebook: { readonly slug: string; readonly title: string };
  readonly make: Make;
  /** In millimetres, of the strip as it is held. */
  readonly width: number;
  /** In the order of the entries; a pattern keeps its place on every notebook. */
  readonly patterns: readonly StripPattern[];
  /** The days for which its dated patterns are drawn, as text. */
  readonly dates?: string;
  /** Across and down. */
  readonly sides: readonly StripSide[];
}

/** What tells a pattern or a plain division apart on a strip: the colour number stands for a colour and a dash. */
export interface StripPattern {
  readonly slug: string;
  readonly title: string;
  /** Is it a plain division, with no pattern behind it? */
  readonly isPlain?: true;
  /** Has it dates, and is drawn for none of them, but for the largest case? */
  readonly isLargest?: true;
  /** 1 to 8, then from 1 again; the letter still tells them apart. */
  readonly colour: number;
  readonly letter: string;
}

export interface StripSide {
  readonly axis: Axis;
  readonly grid: GridAxis;
  /** The last position. */
  readonly steps: number;
  /** The counted middle, or both of an odd count. */
  readonly middles: readonly number[];
  /** Nearest the edge first. */
  readonly lanes: readonly Lane[];
  readonly leftOut: readonly LeftOut[];
  /** From what the lanes were chosen. */
  readonly asked: AskedRuns;
}

/** All that a side could carry, and by which rule it is chosen. */
export interface AskedRuns {
  /** Each set of marks once, in the order of the entries, then of the recipe. */
  readonly runs: readonly Run[];
  /** At most so many lanes. */
  readonly limit: number;
  readonly rule: LaneRule;
}

/** Keep what comes first, or what adds up to most uses. */
export type LaneRule = "first-come" | "most-used";

/** One row of marks. Its runs do not overlap; one may start where another ends. */
export interface Lane {
  /** From position 0 on. */
  readonly runs: readonly Run[];
}

/** The marks of one split, or of several with the same marks. Positions and sizes are in steps. */
export interface Run {
  /** Where the marks come from, each pattern once, most used first. */
  readonly sources: readonly [Source, ...Source[]];
  /** The split's area along the axis: what the run takes up in its lane. */
  readonly from: number;
  readonly to: number;
  /** Every position at which a track begins or ends, each once, in ascending order. */
  readonly marks: readonly number[];
  /** The tracks between the marks, as drawn. */
  readonly tracks: readonly StepInterval[];
  /** The distinct sizes of the tracks, in order of appearance. */
  readonly sizes: readonly number[];
  /** How often it is drawn: of all entries that have these marks together, 1 for one that does not say. */
  readonly uses: number;
}

/** The split that a run was first met in, of one pattern or plain division. */
export interface Source {
  readonly pattern: string;
  readonly side: PageSide;
  readonly path: string;
}
