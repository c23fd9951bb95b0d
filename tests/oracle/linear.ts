/** Whole numbers that depend on one unknown whole number in a line: `fixed + times · unknown`. */

export interface Linear {
  readonly fixed: number;
  readonly times: number;
}

export const UNKNOWN: Linear = { fixed: 0, times: 1 };

export function steady(fixed: number): Linear {
  return { fixed, times: 0 };
}

export function added(...terms: readonly Linear[]): Linear {
  return {
    fixed: terms.reduce((so, term) => so + term.fixed, 0),
    times: terms.reduce((so, term) => so + term.times, 0),
  };
}

export function scaled(term: Linear, by: number): Linear {
  return { fixed: by * term.fixed, times: by * term.times };
}

export function taken(from: Linear, term: Linear): Linear {
  return added(from, scaled(term, -1));
}
