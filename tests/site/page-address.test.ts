/** What the address of a pattern's page says: a notebook, days and a step, each by itself. */
import { describe, expect, it } from "vitest";
import {
  isOwnSaid,
  type PageAddress,
  readPageAddress,
  writePageAddress,
} from "../../site/script/draw-along/page-address.ts";

const NOTEBOOK = "paper=A5&pitch=5&dots=24,35&name=X";
const said = (part: Partial<PageAddress>): PageAddress => ({
  notebook: "",
  dates: "",
  step: "",
  ...part,
});

const ADDRESSES: readonly (readonly [string, PageAddress])[] = [
  ["", said({})],
  ["#stroke=5", said({ step: "stroke=5" })],
  ["#drawn", said({ step: "drawn" })],
  ["#v=1&dates=2027-05", said({ dates: "dates=2027-05" })],
  ["#v=1&on=a5", said({ notebook: "on=a5" })],
  [`#v=1&${NOTEBOOK}`, said({ notebook: NOTEBOOK })],
  [
    `#v=1&${NOTEBOOK}&dates=2027-05&week=sunday&marks=2`,
    said({ notebook: NOTEBOOK, dates: "dates=2027-05&week=sunday", step: "marks=2" }),
  ],
  ["#v=1&setup=44", said({ setup: "setup=44" })],
  [
    "#v=1&on=a5&dates=2027-W09&setup=44&stroke=2",
    said({ notebook: "on=a5", dates: "dates=2027-W09", setup: "setup=44", step: "stroke=2" }),
  ],
  ["#v=1&on=a5&dates=2027&drawn", said({ notebook: "on=a5", dates: "dates=2027", step: "drawn" })],
];

describe("the address of a pattern's page", () => {
  it.each(ADDRESSES)("%s is read, and written as it was", (hash, parts) => {
    expect(readPageAddress(hash)).toEqual(parts);
    expect(writePageAddress(parts)).toBe(hash);
  });

  it("may name a place on the page, and says nothing then", () => {
    expect(readPageAddress("#marks")).toEqual(said({}));
  });

  it.each([
    ["", false],
    ["on=a5", false],
    [NOTEBOOK, true],
  ])("%s brings its own numbers: %s", (notebook, isOwn) => {
    expect(isOwnSaid(notebook)).toBe(isOwn);
  });
});
