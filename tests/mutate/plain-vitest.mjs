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
  toEqual: isEqual,
  toMatchObject: isPartOf,
  toHaveProperty: (found, key) => key in found,
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
  return { ...asked(found, true), not: asked(found, false) };
}

/** The matchers for what was found, and whether they are to hold. */
function asked(found, holds) {
  const said = Object.entries(MATCHERS).map(([name, matches]) => [
    name,
    (wanted) => {
      if (matches(found, wanted) !== holds) throw new Error(`${name} is not ${holds}`);
    },
  ]);
  return Object.fromEntries(said);
}

/** Stands inside what is wanted, for whatever matches it. */
class Any {
  constructor(matches) {
    this.matches = matches;
  }
}
expect.any = (type) => new Any((found) => Object(found) instanceof type);
expect.objectContaining = (wanted) => new Any((found) => isPartOf(found, wanted));
expect.stringContaining = (wanted) => new Any((found) => found.includes(wanted));
expect.stringMatching = (wanted) => new Any((found) => found.match(wanted) !== null);
expect.arrayContaining = (wanted) =>
  new Any((found) => wanted.every((each) => found.some((one) => isEqual(one, each))));

/** Every key that is wanted is there, at any depth; of lists every entry. */
function isPartOf(found, wanted) {
  if (wanted instanceof Any || typeof wanted !== "object" || wanted === null)
    return isEqual(found, wanted);
  if (Array.isArray(wanted) && found?.length !== wanted.length) return false;
  return Object.entries(wanted).every(([key, each]) => isPartOf(found?.[key], each));
}

/** At any depth. A key that holds nothing counts as left out. */
function isEqual(found, wanted) {
  if (wanted instanceof Any) return wanted.matches(found);
  const hasKeys =
    typeof wanted === "object" && wanted !== null && wanted[Symbol.iterator] === undefined;
  if (!hasKeys && !Array.isArray(wanted)) return isDeepStrictEqual(found, wanted);
  if (typeof found !== "object" || found === null) return false;
  if (Array.isArray(found) !== Array.isArray(wanted) || found.length !== wanted.length)
    return false;
  const keys = new Set([...Object.keys(found), ...Object.keys(wanted)]);
  return [...keys].every((key) => isEqual(found[key], wanted[key]));
}
