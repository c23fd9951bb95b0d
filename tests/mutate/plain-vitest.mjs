/**
 * The words of vitest that the engine's tests use, in the plainest form: each test runs at once, and the first that fails
 * ends the process. It starts ten times as fast as a test runner, which counts where tests run for every mutant.
 */
import { writeSync } from "node:fs";
import { isDeepStrictEqual } from "node:util";

export function describe(_title, body) {
  body();
}
describe.each = (rows) => (_title, body) => {
  for (const row of rows) body(...(Array.isArray(row) ? row : [row]));
};

/** Says its title first, so that who waits can tell which test takes too long. */
export function it(title, test) {
  writeSync(1, `${title}\n`);
  if (test() instanceof Promise) throw new Error(`${title}: a test that waits cannot run here`);
}
it.each = (rows) => (title, test) => {
  for (const row of rows) it(title, () => test(...(Array.isArray(row) ? row : [row])));
};

/** Each matcher: does what was found match what was wanted? */
const MATCHERS = {
  toBe: (found, wanted) => Object.is(found, wanted),
  toEqual: (found, wanted) => isDeepStrictEqual(written(found), written(wanted)),
  toMatchObject: (found, wanted) =>
    Object.entries(wanted).every(([key, each]) => isDeepStrictEqual(found?.[key], each)),
  toContain: (found, wanted) => found.includes(wanted),
  toHaveLength: (found, wanted) => found.length === wanted,
  toBeDefined: (found) => found !== undefined,
  toBeUndefined: (found) => found === undefined,
  toBeGreaterThan: (found, wanted) => found > wanted,
  toBeGreaterThanOrEqual: (found, wanted) => found >= wanted,
  toBeLessThan: (found, wanted) => found < wanted,
  toBeLessThanOrEqual: (found, wanted) => found <= wanted,
};

export function expect(found) {
  const said = Object.entries(MATCHERS).map(([name, matches]) => [
    name,
    (wanted) => {
      if (!matches(found, wanted)) throw new Error(`${name} does not hold`);
    },
  ]);
  return Object.fromEntries(said);
}

/** A key that holds nothing counts as left out. */
function written(thing) {
  if (Array.isArray(thing)) return thing.map(written);
  if (typeof thing !== "object" || thing === null) return Object.is(thing, -0) ? 0 : thing;
  if (thing instanceof Map || thing instanceof Set) return thing;
  const entries = Object.entries(thing).filter(([, each]) => each !== undefined);
  return Object.fromEntries(entries.map(([key, each]) => [key, written(each)]));
}
