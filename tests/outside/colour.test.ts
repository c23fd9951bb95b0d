/** The colours of strips, judged by culori, and culori by the published numbers of CIEDE2000. */
import {
  type Colour,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  type Lab65,
  wcagContrast,
} from "culori";
import { describe, expect, it } from "vitest";
import { LANE_STYLES } from "../../src/draw/style/lane-style.ts";
import { COLOURS } from "../../src/draw/style/role-style.ts";

const difference = differenceCiede2000();

type Row = readonly [first: string, second: string, difference: string];

/**
 * Sharma, Wu & Dalal, The CIEDE2000 Color-Difference Formula: Implementation Notes, Supplementary Test
 * Data, and Mathematical Observations, Color Research & Application 30(1), 2005, table 1.
 */
const SHARMA: readonly Row[] = [
  ["50 2.6772 -79.7751", "50 0 -82.7485", "2.0425"],
  ["50 3.1571 -77.2803", "50 0 -82.7485", "2.8615"],
  ["50 2.8361 -74.0200", "50 0 -82.7485", "3.4412"],
  ["50 -1.3802 -84.2814", "50 0 -82.7485", "1.0000"],
  ["50 0 0", "50 -1 2", "2.3669"],
  ["50 2.49 -0.001", "50 -2.49 0.0009", "7.1792"],
  ["50 2.49 -0.001", "50 -2.49 0.0011", "7.2195"],
  ["50 -0.001 2.49", "50 0.0009 -2.49", "4.8045"],
  ["50 -0.001 2.49", "50 0.0011 -2.49", "4.7461"],
  ["50 2.5 0", "50 0 -2.5", "4.3065"],
  ["50 2.5 0", "73 25 -18", "27.1492"],
  ["50 2.5 0", "61 -5 29", "22.8977"],
  ["50 2.5 0", "56 -27 -3", "31.9030"],
  ["50 2.5 0", "58 24 15", "19.4535"],
  ["50 2.5 0", "50 3.1736 0.5854", "1.0000"],
  ["50 2.5 0", "50 3.2972 0", "1.0000"],
  ["50 2.5 0", "50 1.8634 0.5757", "1.0000"],
  ["50 2.5 0", "50 3.2592 0.3350", "1.0000"],
  ["60.2574 -34.0099 36.2677", "60.4626 -34.1751 39.4387", "1.2644"],
  ["22.7233 20.0904 -46.6940", "23.0331 14.9730 -42.5619", "2.0373"],
  ["2.0776 0.0795 -1.1350", "0.9033 -0.0636 -0.5514", "0.9082"],
];

describe("the measure of difference", () => {
  it.each(SHARMA)("%s and %s differ by %s", (first, second, published) => {
    expect(difference(labOf(first), labOf(second)).toFixed(4)).toBe(published);
    expect(difference(labOf(second), labOf(first)).toFixed(4)).toBe(published);
  });
});

/** Full loss of one kind of cone; culori has the matrices of Machado, Oliveira & Fernandes (2009). */
const EYES: readonly (readonly [string, (colour: string) => Colour])[] = [
  ["as most people see them", (colour) => colour],
  ["with deuteranopia", filterDeficiencyDeuter(1)],
  ["with protanopia", filterDeficiencyProt(1)],
];

/** Any two patterns can be neighbours on a strip, so every pair is held to what neighbours need. */
const PAIRS = LANE_STYLES.flatMap((a, index) =>
  LANE_STYLES.slice(index + 1).map((b) => [a, b] as const),
);

describe.each(EYES)("lane colours %s", (_, see) => {
  it.each(PAIRS.map(([a, b]) => [a.name, b.name, a.colour, b.colour] as const))(
    "%s and %s differ by 20 or more",
    (_a, _b, a, b) => {
      expect(difference(see(a), see(b))).toBeGreaterThanOrEqual(20);
    },
  );
});

/** Tritanopia is rare, and brings blue near green: where a pair comes nearer than that, its dashes tell it apart. */
it.each(PAIRS.map(([a, b]) => [a.name, b.name, a, b] as const))(
  "%s and %s differ in colour with tritanopia, or in their dash, as they do in grey",
  (_a, _b, a, b) => {
    const see = filterDeficiencyTrit(1);
    const isFar = difference(see(a.colour), see(b.colour)) >= 20;
    expect(isFar || JSON.stringify(a.dash) !== JSON.stringify(b.dash)).toBe(true);
  },
);

describe("lane colours on paper", () => {
  const grounds = [COLOURS.paper, "#ffffff"];

  it.each(LANE_STYLES.map(({ name, colour }) => [name, colour] as const))(
    "%s stands 3 : 1 against it (WCAG 2.2, 1.4.11)",
    (_, colour) => {
      for (const ground of grounds) expect(wcagContrast(colour, ground)).toBeGreaterThanOrEqual(3);
    },
  );

  // Okabe & Ito, Color Universal Design, 2008: made for areas, and too light or too alike for thin lines on paper.
  it.each([
    ["orange", "#E69F00"],
    ["sky blue", "#56B4E9"],
    ["yellow", "#F0E442"],
  ])("the published %s would not", (_, colour) => {
    expect(wcagContrast(colour, COLOURS.paper)).toBeLessThan(3);
  });
});

describe("without colour", () => {
  it("no two lane looks share a dash, or the word for it", () => {
    expect(new Set(LANE_STYLES.map(({ dash }) => dash.join(" "))).size).toBe(8);
    expect(new Set(LANE_STYLES.map(({ stroke }) => stroke)).size).toBe(8);
  });

  it("no two lane looks share the word for their colour", () => {
    expect(new Set(LANE_STYLES.map(({ name }) => name)).size).toBe(8);
  });
});

function labOf(written: string): Lab65 {
  const [l = 0, a = 0, b = 0] = written.split(" ").map(Number);
  return { mode: "lab65", l, a, b };
}
