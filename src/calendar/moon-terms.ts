/** The terms by which the moon leads or trails an even pace at its phases: the tables of Meeus, chapter 49, in days and degrees. */

/** Where sun and moon stand. */
export interface Angles {
  /** The sun's mean anomaly. */
  readonly sun: number;
  /** The moon's mean anomaly. */
  readonly moon: number;
  /** The moon's argument of latitude. */
  readonly latitude: number;
  /** The longitude of the moon's ascending node. */
  readonly node: number;
}

/** So many days times the sine of an angle: so often the sun's anomaly, the moon's, and the argument of latitude. */
type MoonTerm = readonly [days: number, suns: number, moons: number, latitudes: number];

/** So many days times the sine of an angle that grows with each lunation, and bends with the century. */
type PlanetTerm = readonly [days: number, start: number, pace: number, bend: number];

/** What new and full moons have in common. */
const NEW_AND_FULL: readonly MoonTerm[] = [
  [-0.00111, 0, 1, -2],
  [-0.00057, 0, 1, 2],
  [0.00056, 1, 2, 0],
  [-0.00042, 0, 3, 0],
  [0.00042, 1, 0, 2],
  [0.00038, 1, 0, -2],
  [-0.00024, -1, 2, 0],
  [-0.00007, 2, 1, 0],
  [0.00004, 0, 2, -2],
  [0.00004, 3, 0, 0],
  [0.00003, 1, 1, -2],
  [0.00003, 0, 2, 2],
  [-0.00003, 1, 1, 2],
  [0.00003, -1, 1, 2],
  [-0.00002, -1, 1, -2],
  [-0.00002, 1, 3, 0],
  [0.00002, 0, 4, 0],
];

const NEW: readonly MoonTerm[] = [
  [-0.4072, 0, 1, 0],
  [0.17241, 1, 0, 0],
  [0.01608, 0, 2, 0],
  [0.01039, 0, 0, 2],
  [0.00739, -1, 1, 0],
  [-0.00514, 1, 1, 0],
  [0.00208, 2, 0, 0],
  ...NEW_AND_FULL,
];

const FULL: readonly MoonTerm[] = [
  [-0.40614, 0, 1, 0],
  [0.17302, 1, 0, 0],
  [0.01614, 0, 2, 0],
  [0.01043, 0, 0, 2],
  [0.00734, -1, 1, 0],
  [-0.00515, 1, 1, 0],
  [0.00209, 2, 0, 0],
  ...NEW_AND_FULL,
];

const FIRST_AND_LAST: readonly MoonTerm[] = [
  [-0.62801, 0, 1, 0],
  [0.17172, 1, 0, 0],
  [-0.01183, 1, 1, 0],
  [0.00862, 0, 2, 0],
  [0.00804, 0, 0, 2],
  [0.00454, -1, 1, 0],
  [0.00204, 2, 0, 0],
  [-0.0018, 0, 1, -2],
  [-0.0007, 0, 1, 2],
  [-0.0004, 0, 3, 0],
  [-0.00034, -1, 2, 0],
  [0.00032, 1, 0, 2],
  [0.00032, 1, 0, -2],
  [-0.00028, 2, 1, 0],
  [0.00027, 1, 2, 0],
  [-0.00005, -1, 1, -2],
  [0.00004, 0, 2, 2],
  [-0.00004, 1, 1, 2],
  [0.00004, -2, 1, 0],
  [0.00003, 1, 1, -2],
  [0.00003, 3, 0, 0],
  [0.00002, 0, 2, -2],
  [0.00002, -1, 1, 2],
  [-0.00002, 1, 3, 0],
];

/** By the name of the phase. */
export const MOON_TERMS = { new: NEW, first: FIRST_AND_LAST, full: FULL, last: FIRST_AND_LAST };

/** What the planets do, alike at all phases. */
export const PLANET_TERMS: readonly PlanetTerm[] = [
  [0.000325, 299.77, 0.107408, -0.009173],
  [0.000165, 251.88, 0.016321, 0],
  [0.000164, 251.83, 26.651886, 0],
  [0.000126, 349.42, 36.412478, 0],
  [0.00011, 84.66, 18.206239, 0],
  [0.000062, 141.74, 53.303771, 0],
  [0.00006, 207.14, 2.453732, 0],
  [0.000056, 154.84, 7.30686, 0],
  [0.000047, 34.52, 27.261239, 0],
  [0.000042, 207.19, 0.121824, 0],
  [0.00004, 291.34, 1.844379, 0],
  [0.000037, 161.72, 24.198154, 0],
  [0.000035, 239.56, 25.513099, 0],
  [0.000023, 331.55, 3.592518, 0],
];
