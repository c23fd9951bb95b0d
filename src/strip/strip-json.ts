/** A strip as the book puts it out for other programs: `strip.json`. */
import type { LeftOut } from "../issue/facts/strip-note.ts";
import { sayLeftOut } from "../issue/words/say-strip-note.ts";
import type { Axis } from "../measure/axis.ts";
import { positionLength } from "../measure/grid-axis.ts";
import { toMm } from "../measure/length.ts";
import { patternOf, patternsOfRun } from "./pattern-of.ts";
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
  readonly left_out: readonly LeftOutJson[];
}

/** A run that found no room has its place; a pattern as a whole has none. */
interface LeftOutJson {
  readonly pattern: string;
  readonly from?: number;
  readonly to?: number;
  readonly why: string;
}

interface RunJson {
  readonly patterns: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly marks: readonly number[];
  readonly sizes: readonly number[];
  readonly colour: number;
  readonly uses: number;
  /** Is a plain division among its patterns? */
  readonly plain?: true;
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
    left_out: side.leftOut.map(leftOutJson),
  };
}

function leftOutJson(fact: LeftOut): LeftOutJson {
  const place = fact.kind === "no-lane" ? { from: fact.from, to: fact.to } : {};
  return { pattern: fact.pattern, ...place, why: sayLeftOut(fact) };
}

function runJson(run: Run, patterns: readonly StripPattern[]): RunJson {
  const { from, to, marks, sizes, uses } = run;
  const isPlain = patternsOfRun(run, patterns).some((one) => one.isPlain);
  return {
    patterns: run.sources.map((source) => source.pattern),
    from,
    to,
    marks,
    sizes,
    colour: patternOf(run, patterns).colour,
    uses,
    ...(isPlain ? { plain: true } : {}),
  };
}

/** The same bytes in the build and in the page. */
export function stripJsonText(strip: Strip): string {
  return `${JSON.stringify(stripJson(strip), null, 1)}\n`;
}
