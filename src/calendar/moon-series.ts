/** The moments of the moon's phases in terrestrial time, by Jean Meeus, Astronomical Algorithms (2nd edition), chapter 49. */
import { type Angles, MOON_TERMS, PLANET_TERMS } from "./moon-terms.ts";

/** The quarters of a lunation, in their order. */
export const MOON_QUARTERS = ["new", "first", "full", "last"] as const;
export type MoonQuarter = (typeof MOON_QUARTERS)[number];

/** A mean new moon, in days since 1970-01-01T00:00 (Julian day 2440587.5), and the mean time between two quarters. */
export const EVEN_START = 10_962.59766;
export const EVEN_PACE = 29.530588861 / 4;

/**
 * A phase by its number, in days since 1970-01-01T00:00 terrestrial time: 0 is the new moon of 2000-01-06, 1 the quarter
 * after it.
 */
export function phaseMoment(number: number): number {
  const quarter = quarterOfPhase(number);
  const lunation = number / 4;
  const centuries = lunation / 1236.85;
  const angles = anglesAt(lunation, centuries);
  const eccentricity = polynomial(centuries, [1, -0.002516, -0.0000074]);
  const terms = MOON_TERMS[quarter].map(
    ([days, suns, moons, latitudes]) =>
      days *
      // The rounder the earth's orbit, the smaller what comes of the sun's anomaly.
      eccentricity ** Math.abs(suns) *
      sine(suns * angles.sun + moons * angles.moon + latitudes * angles.latitude),
  );
  const planets = PLANET_TERMS.map(
    ([days, start, pace, bend]) => days * sine(start + pace * lunation + bend * centuries ** 2),
  );
  return (
    EVEN_START +
    EVEN_PACE * number +
    polynomial(centuries, [0, 0, 0.00015437, -0.00000015, 0.00000000073]) +
    sum(terms) +
    sum(planets) -
    0.00017 * sine(angles.node) +
    HALF_LIT[quarter] * lagOfHalfMoon(angles, eccentricity)
  );
}

/** The quarter that a phase is, by its number. */
export function quarterOfPhase(number: number): MoonQuarter {
  return MOON_QUARTERS[number - Math.floor(number / 4) * 4] ?? "new";
}

/** Half moons are a little later, or earlier, than the middle between new and full would have them. */
const HALF_LIT: Readonly<Record<MoonQuarter, number>> = { new: 0, first: 1, full: 0, last: -1 };

function lagOfHalfMoon({ sun, moon, latitude }: Angles, eccentricity: number): number {
  return (
    0.00306 -
    0.00038 * eccentricity * cosine(sun) +
    0.00026 * cosine(moon) -
    0.00002 * cosine(moon - sun) +
    0.00002 * cosine(moon + sun) +
    0.00002 * cosine(2 * latitude)
  );
}

function anglesAt(lunation: number, centuries: number): Angles {
  const angle = (start: number, pace: number, bends: readonly number[]): number =>
    start + pace * lunation + polynomial(centuries, [0, 0, ...bends]);
  return {
    sun: angle(2.5534, 29.1053567, [-0.0000014, -0.00000011]),
    moon: angle(201.5643, 385.81693528, [0.0107582, 0.00001238, -0.000000058]),
    latitude: angle(160.7108, 390.67050284, [-0.0016118, -0.00000227, 0.000000011]),
    node: angle(124.7746, -1.56375588, [0.0020672, 0.00000215]),
  };
}

function polynomial(at: number, coefficients: readonly number[]): number {
  return coefficients.reduceRight((so, coefficient) => so * at + coefficient, 0);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((so, each) => so + each, 0);
}

function sine(degrees: number): number {
  return Math.sin((degrees * Math.PI) / 180);
}

function cosine(degrees: number): number {
  return sine(degrees + 90);
}
