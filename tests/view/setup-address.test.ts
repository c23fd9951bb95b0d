/** A set-up's address is read as it was written, whatever is in it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayAddressIssue } from "../../src/issue/words/say-address-issue.ts";
import { layoutsInAddress } from "../../src/view/address/carried-layouts.ts";
import { readSetupAddress, writeSetupAddress } from "../../src/view/address/setup-address.ts";
import type { SetupChoice } from "../../src/view/fields/setup-fields.ts";
import { anyDates } from "../random/any-dates.ts";
import { anySetup } from "../random/any-setup.ts";

const read = (hash: string) => {
  const reading = readSetupAddress(hash);
  if (!reading.ok) throw new Error(sayAddressIssue(reading.issue));
  return reading.value;
};

/** As somebody asks for it: a title without blanks around it, or none. */
const asked = fc
  .tuple(anySetup(fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,12}$/)), fc.boolean())
  .map(([setup, isNamed]): SetupChoice => {
    return isNamed ? { ...setup, title: setup.title.trim() } : { ...setup, title: "", slug: "" };
  });

describe("an address", () => {
  it("is read as it was written, with blocks, borders, times and a calendar", () => {
    let long = 0;
    fc.assert(
      fc.property(asked, anyDates(), fc.boolean(), (setup, { calendar }, isBare) => {
        const choice = isBare ? { ...setup, pages: [] } : setup;
        const text = writeSetupAddress({ setup: choice, calendar });
        if (text.length > 16_000) {
          long += 1;
          return;
        }
        expect(read(text)).toEqual({ setup: choice, calendar });
        expect(text).toMatch(/^#v=1(&[a-z]+=[A-Za-z0-9%+,:.!~*'()_-]+)*$/);
      }),
      { seed: 70_051, numRuns: 200 },
    );
    expect(long).toBeLessThan(20);
  });

  it("says what is asked for in words that can be read", () => {
    const { setup } = read("#v=1&dates=2027-03&from=43&pages=month-opener,month-grid");
    if (!setup) throw new Error("there is no set-up");
    expect(writeSetupAddress({ setup })).toBe(
      "#v=1&dates=2027-03&from=43&pages=month-opener,month-grid",
    );
    expect(setup).toMatchObject({ first: 43, lanes: 4, make: "edges", width: 30, title: "" });
  });

  it("carries the layouts of one's own that it names, also in blocks and on free pages, and no others", () => {
    const { setup } = read(
      `#v=1&dates=2027-03&fill=spare&pages=${encodeURIComponent('["mine",{"each":"week","pages":["my-week"]}]')}`,
    );
    if (!setup) throw new Error("there is no set-up");
    const own = ["mine", "my-week", "spare", "other"].map((slug) => ({
      slug,
      packed: `p-${slug}`,
    }));
    const text = writeSetupAddress({ setup, own });
    expect(layoutsInAddress(text)).toEqual(own.slice(0, 3));
    expect(read(text).setup).toEqual(setup);
    const long = own.map((one) => ({ ...one, packed: "x".repeat(9_000) }));
    expect(writeSetupAddress({ setup, own: long })).toBe(writeSetupAddress({ setup }));
  });

  it("keeps a pattern that nobody has: the page says so", () => {
    expect(read("#v=1&dates=2027-03&pages=no-such").setup?.pages).toEqual([
      { kind: "pattern", pattern: "no-such", times: 1, borders: "both" },
    ]);
  });

  it.each([
    ["without anything of a set-up", "#v=1&paper=A5&pitch=5&dots=24,35", false],
    ["of no set-up at all", "", false],
    ["with days alone", "#v=1&dates=2027-03", true],
  ])("%s brings none, or one without pages", (_, hash, isThere) => {
    expect(read(hash).setup !== undefined).toBe(isThere);
  });

  it.each([
    ["#v=1&pages=month-grid", "It does not say “dates”."],
    ["#v=1&dates=2027-13&pages=month-grid", "Months go from 01 to 12."],
    ["#v=1&dates=2027-03&from=0", "The value of “from” is not valid."],
    ["#v=1&dates=2027-03&pages=[{", "The value of “pages” was changed or cut off"],
    ["#v=1&dates=2027-03&pages=A B", "The value of “pages” was changed or cut off"],
    ['#v=1&dates=2027-03&pages=[{"each":"week"}]', "The value of “pages” was changed"],
    ["#v=1&dates=2001/2027&pages=month-grid", "The value of “dates” is not valid."],
    ["#v=1&dates=2027-03&leaves=a", "It has a key “leaves” that this page does not know."],
  ])("that is spoilt is told: %s", (hash, words) => {
    const reading = readSetupAddress(hash);
    expect(reading.ok ? "" : sayAddressIssue(reading.issue)).toContain(words);
  });
});
