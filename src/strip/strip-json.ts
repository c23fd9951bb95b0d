/** A strip as the book puts it out for other programs: `strip.json`. */
import { sayLeftOut } from "../issue/words/say-strip-note.ts";
import type { Axis } from "../measure/axis.ts";
import { positionLength } from "../measure/grid-axis.ts";
import { toMm } from "../measure/length.ts";
import { patternOf } from "./pattern-of.ts";
import type { Run, Strip, StripPattern, StripSide } from "./strip.ts";

/** Positions and sizes in steps, `mm` from the edge of the paper, `colour` the pattern's number. */
export interface StripJson {
  readonly strip: string;
  readonly notebook: string;
  readonly sides: readonly SideJson[];
}

interface SideJson {
  readonly axis: Axis;
  readonly steps: number;
  readonly mm: readonly number[];
  readonly middle: readonly number[];
  readonly lanes: readonly { readonly runs: readonly RunJson[] }[];
  readonly left_out: readonly { readonly pattern: string; readonly why: string }[];
}

interface RunJson {
  readonly patterns: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly marks: readonly number[];
  readonly sizes: readonly number[];
  readonly colour: number;
}

/** The strip's data with keys in a fixed order, so that the same strip gives the same bytes. */
export function stripJson(strip: Strip): StripJson {
  return {
    strip: strip.slug,
    notebook: strip.notebook.slug,
    sides: strip.sides.map((side) => sideJson(side, strip.patterns)),
  };
}

function sideJson(side: StripSide, patterns: readonly StripPattern[]): SideJson {
  return {
    axis: side.axis,
    steps: side.steps,
    mm: Array.from({ length: side.steps + 1 }, (_, position) =>
      toMm(positionLength(side.grid, position)),
    ),
    middle: side.middles,
    lanes: side.lanes.map(({ runs }) => ({ runs: runs.map((run) => runJson(run, patterns)) })),
    left_out: side.leftOut.map((fact) => ({ pattern: fact.pattern, why: sayLeftOut(fact) })),
  };
}

function runJson(run: Run, patterns: readonly StripPattern[]): RunJson {
  const { from, to, marks, sizes } = run;
  return {
    patterns: run.sources.map((source) => source.pattern),
    from,
    to,
    marks,
    sizes,
    colour: patternOf(run, patterns).colour,
  };
}

/** The same bytes in the build and in the page. */
export function stripJsonText(strip: Strip): string {
  return `${JSON.stringify(stripJson(strip), null, 1)}\n`;
}
