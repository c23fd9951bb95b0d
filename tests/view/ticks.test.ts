/** Which pages are drawn, kept as lines: one set-up does not touch another. */
import { describe, expect, it } from "vitest";
import { ticksOf, withTicks } from "../../src/view/setup/ticks.ts";

describe("ticks of several set-ups", () => {
  it.each([
    ["", "march/a5", [44, 42], "march/a5 42 44"],
    ["march/a5 42", "march/a6", [7], "march/a5 42\nmarch/a6 7"],
    ["march/a5 42\nyear/a5 1 2", "march/a5", [], "year/a5 1 2"],
    ["march/a5 42\nyear/a5 1 2", "march/a5", [43], "year/a5 1 2\nmarch/a5 43"],
  ])("%j with %s %j are %j", (kept, setup, drawn, text) => {
    expect(withTicks(kept, setup, drawn)).toBe(text);
    expect([...ticksOf(text, setup)]).toEqual(drawn.toSorted((a, b) => a - b));
  });

  it("leave out what is no number", () => {
    expect([...ticksOf("march/a5 42 x 1e999", "march/a5")]).toEqual([42]);
  });
});
