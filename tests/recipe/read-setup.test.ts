import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isoText } from "../../src/calendar/day.ts";
import { sayIssue } from "../../src/issue/words/say-issue.ts";
import { readSetup } from "../../src/recipe/read/read-setup.ts";

const read = (keys: string) =>
  readSetup({ path: "setups/march.md", text: `---\n${keys}\n---\n\nKeep it.\n` });

const WHOLE = `title: March
dates: 2027-03
first: 42
pages:
  - month-opener
  - 2027
  - {each: week, borders: first, pages: [two-row-week, {pattern: week-notes, borders: last}]}
  - {pattern: day-notes, times: 2}
fill: notes-page
lanes: 3
make: fold
width: 27.5`;

describe("a set-up", () => {
  it("is read as it is written", () => {
    const reading = read(WHOLE);
    expect(reading).toMatchObject({
      ok: true,
      value: {
        slug: "march",
        title: "March",
        first: 42,
        pages: [
          { kind: "pattern", pattern: "month-opener", times: 1, borders: "both" },
          { kind: "pattern", pattern: "2027", times: 1, borders: "both" },
          {
            kind: "each",
            each: "week",
            borders: "first",
            pages: [
              { kind: "pattern", pattern: "two-row-week", times: 1, borders: "both" },
              { kind: "pattern", pattern: "week-notes", times: 1, borders: "last" },
            ],
          },
          { kind: "pattern", pattern: "day-notes", times: 2, borders: "both" },
        ],
        fill: "notes-page",
        lanes: 3,
        make: "fold",
        width: 27.5,
        body: "Keep it.",
      },
    });
    expect(reading.named.map(({ slug, at }) => `${slug} ${at.line}:${at.column}`)).toEqual([
      "month-opener 6:5",
      "2027 7:5",
      "two-row-week 8:42",
      "week-notes 8:66",
      "day-notes 9:15",
      "notes-page 10:7",
    ]);
  });

  it("needs no more than a title, dates and pages", () => {
    expect(read("title: March\ndates: 2027-03\npages: [a]")).toMatchObject({
      ok: true,
      value: { first: 1, lanes: 4, make: "edges", width: 30 },
    });
  });

  it.each([
    ["2027", "2027-01-01", "2027-12-31"],
    ["0099", "0099-01-01", "0099-12-31"],
    ["2027-W09", "2027-03-01", "2027-03-07"],
    ["2026-W53", "2026-12-28", "2027-01-03"],
    ["2024-02-29", "2024-02-29", "2024-02-29"],
    ["2026-12/2027-W02", "2026-12-01", "2027-01-17"],
    ["'2027-03'", "2027-03-01", "2027-03-31"],
    ["2020/2029", "2020-01-01", "2029-12-31"],
    ["2024-02-29/2034-02-28", "2024-02-29", "2034-02-28"],
    ["2023-03-01/2033-02-28", "2023-03-01", "2033-02-28"],
  ])("is for the days of %s", (dates, from, to) => {
    const reading = read(`title: March\ndates: ${dates}\npages: [a]`);
    const value = reading.ok ? reading.value.dates : undefined;
    expect(value && [isoText(value.from), isoText(value.to)]).toEqual([from, to]);
  });

  it.each([
    ["2020-01-01/2030-01-01", "too-many-years"],
    ["2024-02-29/2034-03-01", "too-many-years"],
    ["2027-02-30", "bad-days"],
    ["2027-W53", "bad-days"],
    ["2027-03/2027-02", "bad-days"],
    ["P1M", "bad-days"],
    ["2027-03/", "bad-days"],
    ["2027-03/..", "bad-days"],
    ["0000", "bad-days"],
    ["27", "bad-days"],
    ["", "unsuitable"],
    ["[2027]", "unsuitable"],
  ])("cannot be for %j: %s", (dates, kind) => {
    expect(read(`title: March\ndates: ${dates}\npages: [a]`)).toMatchObject({
      ok: false,
      issues: [{ kind }],
    });
  });
});

describe("a hostile set-up", () => {
  const deep = (blocks: number) =>
    `${"[{each: day, pages: ".repeat(blocks)}[a]${"}]".repeat(blocks)}`;

  it.each<readonly [what: string, pages: string, kinds: readonly string[]]>([
    ["100 entries", `[${Array.from({ length: 100 }, () => "a")}]`, []],
    ["101 entries", `[${Array.from({ length: 101 }, () => "a")}]`, ["too-many-entries"]],
    ["9,000 entries", `[${Array.from({ length: 9_000 }, () => "a")}]`, ["too-many-entries"]],
    [
      "9,000 entries inside one",
      `[{each: day, pages: [${Array.from({ length: 9_000 }, () => "a")}]}]`,
      ["too-many-entries"],
    ],
    ["four blocks in one another", deep(4), []],
    ["five blocks in one another", deep(5), ["each-too-deep"]],
    ["400 times", "[{pattern: a, times: 400}]", []],
    ["401 times", "[{pattern: a, times: 401}]", ["unsuitable"]],
    ["no pages", "[]", ["unsuitable"]],
    ["a block without pages", "[{each: day}]", ["missing-key"]],
    ["a year for each", "[{each: year, pages: [a]}]", ["unsuitable"]],
    [
      "a pattern and a block in one",
      "[{pattern: a, each: day, pages: [a]}]",
      ["not-together", "not-together"],
    ],
    ["nothing in an entry", "[~]", ["unsuitable"]],
    ["a path", "['../a']", ["unsuitable"]],
  ])("of %s is told in few words", (_, pages, kinds) => {
    const reading = read(`title: March\ndates: 2027-03\npages: ${pages}`);
    const issues = reading.ok ? [] : reading.issues;
    expect(issues.map(({ kind }) => kind)).toEqual(kinds);
    for (const issue of issues) expect(sayIssue(issue).sentence.length).toBeLessThan(200);
  });

  it("never ends in anything but a value or problems, whatever stands behind its keys", () => {
    const value: fc.Arbitrary<unknown> = fc.jsonValue({ maxDepth: 6 });
    fc.assert(
      fc.property(value, value, value, value, (dates, pages, first, fill) => {
        const keys = { title: "March", dates, pages, first, fill };
        const lines = Object.entries(keys).map(([key, one]) => `${key}: ${JSON.stringify(one)}`);
        const reading = read(lines.join("\n"));
        if (!reading.ok)
          expect(reading.issues.map(sayIssue).every(({ sentence }) => sentence !== "")).toBe(true);
      }),
      { seed: 9, numRuns: 300 },
    );
  });
});
