import { describe, expect, it } from "vitest";
import { PAPER_NAMES } from "../../src/notebook/paper.ts";
import { nearest } from "../../src/source/nearest-word.ts";

const SPLIT = ["count", "tracks", "each", "labels", "gap", "leftover"];
const AREA = ["label", "margin", "columns", "rows", "fill", "every"];

describe("nearest", () => {
  it.each([
    ["colum", SPLIT, "count"],
    ["colum", AREA, "columns"],
    ["cols", AREA, "columns"],
    ["row", AREA, "rows"],
    ["margn", AREA, "margin"],
    ["amrgin", AREA, "margin"],
    ["MARGIN", AREA, "margin"],
    ["lable", AREA, "label"],
    ["gaps", SPLIT, "gap"],
    ["leftovers", SPLIT, "leftover"],
    ["rest", SPLIT, undefined],
    ["x", SPLIT, undefined],
    ["", SPLIT, undefined],
    ["quite another thing", AREA, undefined],
  ])("takes %j among %j for %j", (written, allowed, meant) => {
    expect(nearest(written, allowed)).toBe(meant);
  });

  it.each([
    ["A9", undefined],
    ["a5", "A5"],
    ["DIN A5", "A5"],
    ["B5 JIS", "JIS-B5"],
    ["JISB5", "JIS-B5"],
    ["jis b6", "JIS-B6"],
    ["A55", undefined],
    ["lettr", "letter"],
  ])("takes the paper %j for %j", (written, meant) => {
    expect(nearest(written, PAPER_NAMES)).toBe(meant);
  });

  it("takes the first of equally near words", () => {
    expect(nearest("pan", ["pin", "pun"])).toBe("pin");
    expect(nearest("pan", ["pun", "pin"])).toBe("pun");
  });

  it("has nothing to offer where nothing is allowed", () => {
    expect(nearest("gap", [])).toBeUndefined();
  });

  it("ends on words of any length", () => {
    const long = "seed".repeat(50_000);
    expect(nearest(long, [long, "seed"])).toBe(long);
  });
});
