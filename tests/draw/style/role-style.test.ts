import { describe, expect, it } from "vitest";
import { COLOURS, ROLE_STYLES, type Style } from "../../../src/draw/style/role-style.ts";

/** Contrast of two colours as WCAG 2.2 defines it (relative luminance, contrast ratio). */
function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

const BEHIND = [COLOURS.paper, COLOURS.ground, COLOURS.tint];
const roles: readonly (readonly [string, Style])[] = Object.entries(ROLE_STYLES);
/** The ground and the margins lie behind everything, and nothing is told by them alone. */
const drawnRoles = roles.filter(([role]) => role !== "ground" && role !== "margin");

describe("the contrast that the tests compute", () => {
  it.each([
    ["#000000", "#ffffff", 21],
    ["#777777", "#ffffff", 4.48],
    ["#767676", "#ffffff", 4.54],
    ["#949494", "#ffffff", 3.03],
  ])("%s on %s is %d, as is widely published for WCAG", (a, b, ratio) => {
    expect(contrast(a, b)).toBeCloseTo(ratio, 2);
  });
});

describe.each(roles)("the ink of %s", (_, style) => {
  it("has text of at least 4.5 to 1 on whatever lies behind it (WCAG 2.2, 1.4.3)", () => {
    for (const behind of BEHIND) expect(contrast(style.text, behind)).toBeGreaterThanOrEqual(4.5);
  });

  it("is a plain colour and a width that a printer can hold", () => {
    for (const colour of [style.stroke, style.fill, style.text]) {
      expect(colour).toMatch(/^(none|#[0-9a-f]{6})$/);
    }
    expect(style.width).toBeGreaterThanOrEqual(style.stroke === "none" ? 0 : 0.1);
  });
});

describe.each(drawnRoles)("the lines and areas of %s", (role, style) => {
  it("stand out by at least 3 to 1 (WCAG 2.2, 1.4.11)", () => {
    const fill = role === "paper" ? "none" : style.fill;
    const drawn = [style.stroke, fill].filter((colour) => colour !== "none");
    expect(drawn.length).toBeGreaterThan(0);
    for (const colour of drawn) {
      for (const behind of BEHIND) expect(contrast(colour, behind)).toBeGreaterThanOrEqual(3);
    }
  });
});
