/** How so many extra steps are spread over so many places, as evenly as possible. */

/**
 * How many of `steps` each of `places` gets: places differ by at most 1, and the longer ones are spread evenly,
 * mirror-symmetric wherever such a choice exists (an odd number of places, or an even number of longer ones), else
 * as early as possible. Without a tie the longer places are a rotation of the Euclidean rhythm E(k, n) (Toussaint,
 * "The Euclidean Algorithm Generates Traditional Musical Rhythms", 2005), for both are the steps of a line with
 * slope k/n.
 */
export function spreadEvenly(steps: number, places: number): readonly number[] {
  if (places === 0) return [];
  const each = Math.floor(steps / places);
  const longer = steps % places;
  const reached = places % 2 === 1 || longer % 2 === 0 ? symmetricCount : earliestCount;
  return Array.from(
    { length: places },
    (_, i) => each + reached(longer, places, i + 1) - reached(longer, places, i),
  );
}

/** Longer places among the first i: i·k/n to the nearest whole, a half up in the first half and down in the second. */
function symmetricCount(longer: number, places: number, i: number): number {
  const twice = 2 * i * longer;
  return 2 * i < places
    ? Math.floor((twice + places) / (2 * places))
    : Math.ceil((twice - places) / (2 * places));
}

/** Longer places among the first i: i·k/n rounded up. */
function earliestCount(longer: number, places: number, i: number): number {
  return Math.ceil((i * longer) / places);
}
