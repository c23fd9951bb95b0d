/** A strip's address is read as it was written, whatever lies on it, and so are those of before. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayAddressIssue } from "../../src/issue/words/say-address-issue.ts";
import { sayMissingLayouts } from "../../src/issue/words/strip-words.ts";
import type { Axis } from "../../src/measure/axis.ts";
import { entrySource } from "../../src/recipe/strip-entry-source.ts";
import { patternEntry } from "../../src/recipe/strip-recipe.ts";
import { plainSlug } from "../../src/source/slug.ts";
import { addToStrip, namesOnStrip } from "../../src/view/address/add-to-strip.ts";
import { layoutsInAddress } from "../../src/view/address/carried-layouts.ts";
import { packText, unpackText } from "../../src/view/address/recipe-address.ts";
import { readStripAddress, writeStripAddress } from "../../src/view/address/strip-address.ts";
import { NO_STRIP, type StripChoice } from "../../src/view/fields/strip-fields.ts";
import { plainDivision } from "../../src/view/strip/plain-division.ts";
import { anyStrip } from "../random/any-strip.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { catalogue } = await demoCatalogue();
const PATTERNS = ["seed-list", "two-row-week", "year-in-twelve", "0-0", "12", "true"] as const;
const known: ReadonlySet<string> = new Set(PATTERNS);

/** As somebody asks for it: a title without blanks around it, or none. */
const asked = fc
  .tuple(anyStrip(fc.constantFrom(...PATTERNS)), fc.boolean())
  .map(([strip, isNamed]): StripChoice => {
    return isNamed ? { ...strip, title: strip.title.trim() } : { ...strip, title: "", slug: "" };
  })
  .filter(({ across, down }) =>
    [...across, ...down].every((entry) => entry.kind === "pattern" || !known.has(entry.slug)),
  );

const read = (hash: string) => {
  const reading = readStripAddress(hash, known);
  if (!reading.ok) throw new Error(sayAddressIssue(reading.issue));
  return reading.value;
};

describe("an address", () => {
  it("is read as it was written, with uses, divisions and dates", () => {
    let long = 0;
    fc.assert(
      fc.property(asked, (strip) => {
        const text = writeStripAddress({ strip });
        if (text.length > 16_000) {
          long += 1;
          return;
        }
        const isEmpty = strip.across.length + strip.down.length === 0;
        expect(read(text)).toEqual(isEmpty ? {} : { strip });
        expect(text).toMatch(/^#v=1(&[a-z]+=[A-Za-z0-9%+,:.!~*'()_-]+)*$/);
      }),
      { seed: 70_050, numRuns: 400 },
    );
    expect(long).toBeLessThan(150);
  });

  it.each(catalogue.strips.map((strip) => [strip.slug, strip] as const))(
    "brings back the book's %s, whole",
    (_, strip) => {
      const choice = { ...strip, title: "", slug: "", body: "" };
      const reading = readStripAddress(writeStripAddress({ strip: choice }), catalogue.carried);
      const sources = (one: StripChoice | undefined) =>
        (["across", "down"] as const).map((axis) =>
          one?.[axis].map((each) => entrySource(each, axis)),
        );
      if (!reading.ok) throw new Error(sayAddressIssue(reading.issue));
      expect(sources(reading.value.strip)).toEqual(sources(choice));
    },
  );

  it.each<[string, string, Partial<StripChoice>]>([
    [
      "of before",
      "#v=1&across=seed-list,two-row-week&down=seed-list&lanes=3&strip=Mine&sfile=mine",
      {
        across: [patternEntry("seed-list"), patternEntry("two-row-week")],
        lanes: 3,
        title: "Mine",
        slug: "mine",
      },
    ],
    ["with a readable key", "#v=1&down=seed-list&stripfile=mine", { across: [], slug: "mine" }],
    [
      "with uses",
      "#v=1&across=seed-list:9,two-row-week",
      { across: [{ ...patternEntry("seed-list"), uses: 9 }, patternEntry("two-row-week")] },
    ],
  ])("%s is read", (_, hash, part) => {
    expect(read(hash).strip).toMatchObject(part);
  });

  it("of the fit page of before has a strip without the pattern's days", () => {
    const hash =
      "#v=1&paper=A5&pitch=5&dots=24,35&pattern=seed-list&dates=2027-03&across=seed-list";
    const { notebook, strip } = read(hash);
    expect(notebook?.axes.across.dots).toBe(24);
    expect(strip).toEqual({ ...NO_STRIP, across: [patternEntry("seed-list")] });
  });

  it("gives a division that is called as a pattern is another name", () => {
    const hash = writeStripAddress({
      strip: {
        ...NO_STRIP,
        across: [plainDivision("across", { parts: 2, gap: 0, margin: [0, 0] })],
      },
    });
    const reading = readStripAddress(hash, new Set(["halves"]));
    expect(reading).toMatchObject({
      ok: true,
      value: { strip: { across: [{ title: "Plain Halves", slug: "plain-halves" }] } },
    });
  });
});

describe("layouts of one's own", () => {
  const text = "---\ntitle: My week\npurpose: week\npage: {rows: 7}\n---\n";
  const layout = (slug: string) => ({ slug, packed: packText(text) });
  const strip = {
    ...NO_STRIP,
    across: [patternEntry("seed-list"), patternEntry("my-week")],
    down: [{ ...patternEntry("my-week"), uses: 4 }],
  };
  const hash = writeStripAddress({ strip, own: [layout("my-week"), layout("not-on-it")] });

  it("go along with the strip that names them, and with no other", () => {
    expect(layoutsInAddress(hash)).toEqual([layout("my-week")]);
    expect(unpackText(layoutsInAddress(hash)[0]?.packed ?? "")).toBe(text);
    const without = { strip: { ...strip, across: [], down: [patternEntry("seed-list")] } };
    expect(writeStripAddress({ ...without, own: [layout("my-week")] })).toBe(
      writeStripAddress(without),
    );
  });

  it("make the strip whole where they are known, and are named where they are not", () => {
    const whole = readStripAddress(hash, new Set([...known, "my-week"]));
    expect(whole).toEqual({ ok: true, value: { strip } });
    const lacking = readStripAddress(hash, known);
    const rest = { ...strip, across: [patternEntry("seed-list")], down: [] };
    expect(lacking).toEqual({ ok: true, value: { strip: rest, missing: ["my-week"] } });
  });

  it("stay at home where the address would be too long for a link", () => {
    const long = { slug: "my-week", packed: "a".repeat(16_000) };
    expect(writeStripAddress({ strip, own: [long] })).toBe(writeStripAddress({ strip }));
  });

  it("stay on a kept strip to which another page adds", () => {
    const { text: more } = addToStrip(hash, { across: "year-in-twelve" });
    expect(layoutsInAddress(more)).toEqual([layout("my-week")]);
  });

  it.each([
    ["#v=1&across=my-week&own=my-week", []],
    ["#v=1&across=my-week&own=../up:abc,My Week:abc,my-week:ab$", []],
    ["#v=1&across=my-week&own=,,my-week:abc,", [{ slug: "my-week", packed: "abc" }]],
    ["#v=9&own=my-week:abc", []],
    ["#content", []],
  ])("that are no layouts are none: %s", (spoilt, layouts) => {
    expect(layoutsInAddress(spoilt)).toEqual(layouts);
  });

  it.each([
    [
      ["my-week"],
      "“my-week” is neither in this book nor kept on this device: it is left out of the strip.",
    ],
    [
      ["a", "b"],
      "“a” and “b” are neither in this book nor kept on this device: they are left out of the strip.",
    ],
  ])("that are missing are named: %s", (slugs, words) => {
    expect(sayMissingLayouts(slugs)).toBe(words);
  });
});

describe("a broken address", () => {
  it.each([
    ["#v=1&lanes=4", "It does not say “across”."],
    [
      "#v=1&across=seed-list,seed-list",
      "The value of “across” names “seed-list”, which is not in this book, or is named twice.",
    ],
    [
      "#v=1&across=seed-list,Not%20a%20name",
      "The value of “across” names “Not a name”, which is not in this book, or is named twice.",
    ],
    [
      "#v=1&across=seed-list&dates=2027-13",
      "The value of “dates” is not valid. Months go from 01 to 12.",
    ],
    [
      "#v=1&across=seed-list&dates=2001/2027",
      "The value of “dates” is not valid. These dates are longer than 10 years.",
    ],
    ["#v=1&across=[1", "The value of “across” was changed or cut off on its way."],
    ["#v=1&across=seed-list:0", "The value of “across” was changed or cut off on its way."],
    [
      `#v=1&across=${"[".repeat(9_000)}`,
      "The value of “across” was changed or cut off on its way.",
    ],
    [
      `#v=1&across=${"[".repeat(3_000)}${"]".repeat(3_000)}`,
      "The value of “across” was changed or cut off on its way.",
    ],
    [
      '#v=1&across=[{"title":"Thirds","split":{"count":3,"gap":-1}}]',
      "The value of “across” was changed or cut off on its way.",
    ],
    [
      `#v=1&across=${Array.from({ length: 41 }, () => "seed-list").join(",")}`,
      "The value of “across” names more than 40 patterns.",
    ],
  ])("gets words: %s", (hash, sentence) => {
    const reading = readStripAddress(hash, known);
    expect(reading.ok ? "" : sayAddressIssue(reading.issue)).toBe(sentence);
  });

  it("is never an exception, whatever it is", () => {
    const value = fc.oneof(fc.string(), fc.json(), fc.json({ maxDepth: 9 }));
    fc.assert(
      fc.property(value, fc.constantFrom("across", "down", "dates", "lanes"), (text, key) => {
        const reading = readStripAddress(`#v=1&down=&${key}=${encodeURIComponent(text)}`, known);
        if (!reading.ok) expect(sayAddressIssue(reading.issue)).toMatch(/^[A-Z“].*\.$/s);
      }),
      { seed: 70_051, numRuns: 3_000 },
    );
  });
});

describe("something put on a kept strip", () => {
  const thirds = plainDivision("across", { parts: 3, gap: 1, margin: [0, 0] });
  const source = entrySource(thirds, "across");
  const lists = (text: string) =>
    (["across", "down"] as const satisfies readonly Axis[]).map(
      (axis) => read(text).strip?.[axis].map(({ slug }) => slug) ?? [],
    );

  it.each<[string, string, Parameters<typeof addToStrip>[1], string, number, readonly string[][]]>([
    ["where nothing is kept", "", { across: "12", down: "12" }, "added", 1, [["12"], ["12"]]],
    [
      "behind what is there",
      "#v=1&across=seed-list:3&lanes=2",
      { across: source },
      "added",
      2,
      [["seed-list", "thirds-gap-1"], []],
    ],
    [
      "on the side that lacks it",
      "#v=1&across=12",
      { across: "12", down: "12" },
      "added",
      1,
      [["12"], ["12"]],
    ],
    ["that has it", "#v=1&across=12&down=12", { across: "12" }, "there", 1, [["12"], ["12"]]],
    ["that is spoilt", "#v=1&across", { down: "12" }, "added", 1, [[], ["12"]]],
    [
      "of the time when the fit page had it",
      "#v=1&paper=A5&pitch=5&dots=26,38&pattern=12&dates=2027&across=12&sfile=x",
      { down: "true" },
      "added",
      2,
      [["12"], ["true"]],
    ],
  ])("%s", (_, kept, added, outcome, count, expected) => {
    const result = addToStrip(kept, added);
    expect([result.outcome, result.count]).toEqual([outcome, count]);
    expect(lists(result.text)).toEqual(expected);
    expect(read(result.text)).not.toHaveProperty("notebook");
  });

  it("finds no room on a side of forty, and keeps the rest", () => {
    const across = Array.from({ length: 40 }, (_, index) => `p${index}`).join(",");
    const kept = `#v=1&across=${across}&lanes=2`;
    expect(addToStrip(kept, { across: "x" })).toEqual({ text: kept, outcome: "full", count: 40 });
    expect(namesOnStrip(addToStrip(kept, { across: "x", down: "x" }).text).size).toBe(41);
  });

  it("is called by what it is", () => {
    const titled = (parts: number, gap: number, margin: readonly [number, number]) =>
      plainDivision("down", { parts, gap, margin }).title;
    expect([
      thirds.title,
      titled(2, 0, [0, 0]),
      titled(4, 2, [1, 1]),
      titled(13, 0, [3, 0]),
      titled(3, 1, [1, 2]),
    ]).toEqual([
      "Thirds, gap 1",
      "Halves",
      "Quarters, gap 2, margin 1",
      "13 parts, 3 free before",
      "Thirds, gap 1, 1 free before, 2 free after",
    ]);
    expect(plainSlug(thirds.title)).toBe(thirds.slug);
  });
});
