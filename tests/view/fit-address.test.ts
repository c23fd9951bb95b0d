/** What an address says is read as it was written, and a broken one gets words. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayAddressIssue } from "../../src/issue/words/say-address-issue.ts";
import { patternEntry } from "../../src/recipe/strip-recipe.ts";
import { type Fit, readFitAddress, writeFitAddress } from "../../src/view/address/fit-address.ts";
import { USUAL_FIELDS } from "../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../src/view/fields/read-notebook-fields.ts";
import { anyDates } from "../random/any-dates.ts";
import { anyLine, anyNotebook } from "../random/any-notebook.ts";

const PATTERNS = ["seed-list", "two-row-week", "year-in-twelve", "0-0"] as const;
const known: ReadonlySet<string> = new Set(PATTERNS);

function anyFit(): fc.Arbitrary<Fit> {
  const title = fc.oneof(
    fc.constant(""),
    anyLine().map((line) => line.trim()),
  );
  return fc.record({
    notebook: fc.tuple(anyNotebook(), title, fc.boolean()).map(([notebook, own, isNamed]) => ({
      ...notebook,
      title: own,
      slug: isNamed ? notebook.slug : "",
      body: "",
    })),
    pattern: fc.constantFrom(...PATTERNS),
    dates: anyDates(),
  });
}

describe("an address", () => {
  it("is read as it was written, whatever it says", () => {
    fc.assert(
      fc.property(anyFit(), (fit) => {
        expect(readFitAddress(writeFitAddress(fit), known)).toEqual({ ok: true, value: fit });
      }),
      { seed: 70_003, numRuns: 1_000 },
    );
  });

  it("has none but plain characters", () => {
    fc.assert(
      fc.property(anyFit(), (fit) => {
        expect(writeFitAddress(fit)).toMatch(/^#v=1(&[a-z]+=[A-Za-z0-9%+,:.!~*'()_-]+)+$/);
      }),
      { seed: 70_004, numRuns: 300 },
    );
  });

  it("is short for what is usual", () => {
    const notebook = readFields(USUAL_FIELDS);
    if (!notebook.ok) throw new Error("the usual fields are not all right");
    expect(writeFitAddress({ notebook: notebook.value, pattern: "seed-list" })).toBe(
      "#v=1&paper=A5&pitch=5&dots=26,38&pattern=seed-list",
    );
  });

  it("of the time when the page had a strip brings that, too, and its days are the pattern's", () => {
    const hash = "#v=1&pattern=seed-list&dates=2027-03&across=seed-list&lanes=2&sfile=mine";
    const reading = readFitAddress(hash, known);
    expect(reading).toMatchObject({
      ok: true,
      value: {
        pattern: "seed-list",
        dates: { calendar: {} },
        strip: { across: [patternEntry("seed-list")], down: [], lanes: 2, slug: "mine" },
      },
    });
    expect(reading.ok && reading.value.strip).not.toHaveProperty("dates");
  });

  it.each(["", "#", "#content", "#week"])("says nothing where it is %j", (hash) => {
    expect(readFitAddress(hash, known)).toEqual({ ok: true, value: {} });
  });
});

describe("a broken address", () => {
  it.each<[string, string]>([
    ["#v=2&paper=A5", "It is written in version “2”, and this book reads version 1."],
    ["#paper=A5", "It does not say “v”."],
    ["#v=1&paper=A5", "It does not say “pitch”."],
    ["#v=1&colour=red", "It has a key “colour” that this page does not know."],
    ["#v=1&pattern=seed-list&pattern=seed-list", "It says “pattern” twice."],
    ["#v=1&pattern=%E0%A4%A", "“pattern=%E0%A4%A” must be a key and a value, such as v=1."],
    ["#v=1&&", "“” must be a key and a value, such as v=1."],
    [
      "#v=1&pattern=gone",
      "The value of “pattern” names “gone”, which is not in this book, or is named twice.",
    ],
    [
      "#v=1&across=seed-list,seed-list",
      "The value of “across” names “seed-list”, which is not in this book, or is named twice.",
    ],
    ["#v=1&lanes=4", "It does not say “across”."],
    [
      "#v=1&across=seed-list&lanes=99",
      "The value of “lanes” is not valid. This needs a whole number of lanes from 1 to 12.",
    ],
    [
      "#v=1&paper=A5&pitch=5&dots=26,38,40",
      "The value of “dots” is not valid. This needs a whole number of dots from 2 to 400.",
    ],
    [
      "#v=1&paper=A9&pitch=5&dots=26,38",
      "The value of “paper” is not valid. This needs A3, A4, A5, A6, A7, A8, B4, B5, B6, JIS-B4, JIS-B5, JIS-B6, letter, legal or ledger, or its width and height in mm from 20 to 2000, such as [148, 210].",
    ],
    [`#v=1&name=${"a".repeat(20_000)}`, "It is longer than 16000 characters."],
  ])("gets words: %s", (hash, sentence) => {
    const reading = readFitAddress(hash, known);
    expect(reading.ok ? "" : sayAddressIssue(reading.issue)).toBe(sentence);
  });

  it("is never an exception, whatever it is", () => {
    const part = fc.oneof(
      fc.string(),
      fc
        .tuple(fc.constantFrom("v", "paper", "dots", "pitch", "across", "name"), fc.string())
        .map((pair) => pair.join("=")),
      fc.constantFrom(
        "v=1",
        "paper=A5",
        "pitch=5",
        "dots=26,38",
        "first=,",
        "count=,",
        "across=,",
        "a%=%%",
      ),
    );
    const hash = fc.array(part, { maxLength: 9 }).map((parts) => `#${parts.join("&")}`);
    let broken = 0;
    fc.assert(
      fc.property(hash, (text) => {
        const reading = readFitAddress(text, known);
        if (reading.ok) return;
        broken += 1;
        expect(sayAddressIssue(reading.issue)).toMatch(/^[A-Z“].*\.$/s);
      }),
      { seed: 70_005, numRuns: 5_000 },
    );
    expect(broken).toBeGreaterThan(2_000);
  });
});
