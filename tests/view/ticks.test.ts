/** Which pages are drawn, kept as lines: one set-up does not touch another. */
import { describe, expect, it } from "vitest";
import { dayOf } from "../../src/calendar/day.ts";
import { ownTicksName, ticksOf, withTicks } from "../../src/view/setup/ticks.ts";

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

  it("of one's own go by days and first page, whatever it is called", () => {
    const [from, to] = [1, 31].map((day) => dayOf({ year: 2027, month: 3, day }));
    if (from === undefined || to === undefined) throw new Error("March has days");
    const name = ownTicksName({ dates: { from, to }, first: 43 });
    expect(name).toBe("own/2027-03/43");
    expect([...ticksOf(withTicks("march/a5 42", name, [43]), name)]).toEqual([43]);
  });

  it("leave out what is no number", () => {
    expect([...ticksOf("march/a5 42 x 1e999", "march/a5")]).toEqual([42]);
  });
});
