/** Mutants that no test can tell from the code as it stands, each with the reason why. */

export const EQUIVALENT = [];
