/** How a run finds its look: it wears that of the most used pattern it serves. */
import type { Run, StripPattern } from "./strip.ts";

/** The pattern whose colour and dash a run has. Throws where a strip does not list it. */
export function patternOf(run: Run, patterns: readonly StripPattern[]): StripPattern {
  return patternsOfRun(run, patterns)[0];
}

/** All patterns that a run serves, most used first. */
export function patternsOfRun(
  run: Run,
  patterns: readonly StripPattern[],
): readonly [StripPattern, ...StripPattern[]] {
  const [first, ...others] = run.sources;
  return [listed(first.pattern, patterns), ...others.map((one) => listed(one.pattern, patterns))];
}

function listed(slug: string, patterns: readonly StripPattern[]): StripPattern {
  const pattern = patterns.find((one) => one.slug === slug);
  if (pattern === undefined) throw new RangeError(`a strip does not list its pattern "${slug}"`);
  return pattern;
}
