/** What the page of all that is kept says of the layouts that were used. */
import { describe, expect, it } from "vitest";
import { dayOf } from "../../../src/calendar/day.ts";
import {
  sayCountingUses,
  sayLookedAt,
  sayMonths,
  sayUncounted,
  sayUnused,
} from "../../../src/issue/words/uses-words.ts";
import type { LayoutUses, UsesByMonth } from "../../../src/setup/uses-by-month.ts";
import { layoutsInAddress } from "../../../src/view/address/carried-layouts.ts";
import { readStripAddress } from "../../../src/view/address/strip-address.ts";
import { usesView } from "../../../src/view/kept/uses-view.ts";

const layout = (pattern: string, planned: number, last: number): LayoutUses => ({
  ...{ pattern, title: `The ${pattern}`, planned, drawn: 1 },
  byMonth: [
    { planned: planned - 1, drawn: 1 },
    { planned: 0, drawn: 0 },
    { planned: 1, drawn: 0 },
  ],
  last: dayOf({ year: 2027, month: last, day: 28 }),
});

const uses: UsesByMonth = {
  months: [
    { year: 2026, month: 12 },
    { year: 2027, month: 1 },
    { year: 2027, month: 2 },
  ],
  layouts: [layout("week", 20_000, 2), layout("my-month", 3, 2)],
  pages: { planned: 30, drawn: 2 },
  end: dayOf({ year: 2027, month: 2, day: 28 }),
};

describe("the view of uses", () => {
  const own = [{ slug: "my-month", packed: "abc" }];
  const view = usesView(uses, 3, own);

  it("has the numbers of the chart in its table", () => {
    expect(view?.months).toEqual(["Dec 2026", "Jan 2027", "Feb 2027"]);
    expect(view?.rows.at(1)).toMatchObject({
      title: "The my-month",
      cells: ["2 (1 drawn)", "", "1"],
      planned: 3,
    });
    expect(view?.chart.layouts.map(({ byMonth }) => byMonth)).toEqual(
      uses.layouts.map(({ byMonth }) => byMonth),
    );
  });

  it("puts all of them on a strip with their uses, as many as a strip counts, and carries one's own", () => {
    const hash = view?.stripHash ?? "";
    const reading = readStripAddress(hash, new Set(["week", "my-month"]));
    expect(reading.ok && reading.value.strip?.across.map((one) => [one.slug, one.uses])).toEqual([
      ["week", 10_000],
      ["my-month", 3],
    ]);
    expect(reading.ok && reading.value.strip?.down).toHaveLength(2);
    expect(layoutsInAddress(hash)).toEqual(own);
  });

  it("draws the last two years and the ten layouts used most in them, and says so", () => {
    const count = (planned: number) => ({ planned, drawn: 0 });
    const months = Array.from({ length: 30 }, (_, index) => ({
      year: 2025 + Math.floor(index / 12),
      month: (index % 12) + 1,
    }));
    const layouts = Array.from({ length: 12 }, (_, index) => ({
      ...layout(`one-${index}`, 30 - index, 2),
      // The first was used long ago only.
      byMonth: months.map((_month, at) => count(index === 0 ? Number(at < 6) * 5 : 1)),
    }));
    const long = usesView({ ...uses, months, layouts }, 30, []);
    expect(long?.chart.months).toHaveLength(24);
    expect(long?.chart.layouts.map(({ title }) => title)).toHaveLength(10);
    expect(long?.chart.layouts.map(({ title }) => title)).not.toContain("The one-0");
    expect(long?.chart.layouts[0]).toMatchObject({ planned: 24, title: "The one-1" });
    expect(long?.chartWords).toBe(
      "The chart has the last 24 months and the 10 layouts used most; the table has all.",
    );
    expect(long?.rows).toHaveLength(12);
    expect(view?.chartWords).toBe("");
  });

  it("is none where nothing is used", () => {
    expect(usesView({ ...uses, months: [], layouts: [] }, 1, [])).toBeUndefined();
  });
});

describe("the words", () => {
  it.each([
    [
      sayLookedAt(3, { planned: 45, drawn: 12 }, "March to June 2027"),
      "3 set-ups, March to June 2027: 45 pages planned, 12 of them drawn.",
    ],
    [
      sayLookedAt(1, { planned: 1, drawn: 0 }, "March 2027"),
      "1 set-up, March 2027: 1 page planned, none of them ticked as drawn.",
    ],
    [sayMonths({ name: "March", year: 2027 }, { name: "March", year: 2027 }), "March 2027"],
    [sayMonths({ name: "March", year: 2027 }, { name: "June", year: 2027 }), "March to June 2027"],
    [
      sayMonths({ name: "March", year: 2026 }, { name: "March", year: 2027 }),
      "March 2026 to March 2027",
    ],
    [
      sayUnused([], "31 March 2027"),
      "Every layout was used in the three months up to 31 March 2027.",
    ],
    [
      sayUnused([{ title: "Seeds", last: "30 November 2026" }], "31 March 2027"),
      "Not used in the three months up to 31 March 2027: Seeds (last until 30 November 2026).",
    ],
    [sayUncounted([]), ""],
    [
      sayUncounted(["A", "B"]),
      "Not counted, since something in it is wrong or missing: “A” and “B”.",
    ],
    [sayCountingUses(2, 24), "Set-up 3 of 24 is being counted."],
  ])("%s", (said, expected) => {
    expect(said).toBe(expected);
  });
});
