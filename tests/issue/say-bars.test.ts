/** What is said of a photo of the test sheet whose bars were measured, or were not. */
import { describe, expect, it } from "vitest";
import { sayBarMarks, sayBarsDoubt, sayMeasuredBars } from "../../src/issue/words/say-bars.ts";
import type { BarsDoubt } from "../../src/photo/bars-found.ts";

describe("a doubtful length is refused with its numbers, and with what to do better", () => {
  it.each<[BarsDoubt, RegExp, RegExp]>([
    [{ kind: "blurred" }, /not sharp enough/, /more light/],
    [{ kind: "no-sheet", dots: 1 }, /not seen, only 1 dot in rows/, /Print the test sheet/],
    [{ kind: "small", perMm: 2.345 }, /a millimetre has 2\.3 pixels/, /Zoom in/],
    [{ kind: "cut-off" }, /cuts off a part/, /all of the square/],
    [{ kind: "no-bars", bars: ["y"] }, /The bar along the long side is not seen/, /card neither/],
    [{ kind: "no-bars", bars: ["x", "y"] }, /The bars are not seen/, /card neither/],
    [{ kind: "not-flat" }, /curled/, /press it flat/],
    [{ kind: "no-card" }, /No card is seen/, /four corner marks/],
    [{ kind: "hidden", sides: ["top", "left"] }, /Only 2 of the card’s four sides are/, /finger/],
    [{ kind: "hidden", sides: ["top", "left", "right"] }, /Only 1 .* is seen/, /corner marks/],
    [{ kind: "no-such-card" }, /not the shape of a bank card/, /85\.60 by 53\.98/],
    [{ kind: "two-edges" }, /A shadow lies beside the card/, /more than one side/],
    [{ kind: "unlikely", length: { x: 88.04, y: 99 } }, /measure 88\.0 and 99\.0 mm/, /100 %/],
    [{ kind: "unsure", off: 0.31, by: "tilt" }, /off by 0\.4 mm/, /straight above/],
    [{ kind: "unsure", off: 0.43, by: "nearness" }, /only told to 0\.3 mm/, /farther away/],
    [{ kind: "unsure", off: 0.43, by: "shadow" }, /only told to 0\.3 mm/, /no shadow/],
    [{ kind: "unsure", off: 0.43, by: "faint" }, /only told to 0\.3 mm/, /darker card/],
    [{ kind: "unsure", off: 0.43, by: "size" }, /only told to 0\.3 mm/, /Zoom in/],
  ])("%j", (doubt, sentence, hint) => {
    const said = sayBarsDoubt(doubt);
    expect(said.sentence).toMatch(sentence);
    expect(said.hint).toMatch(hint);
  });
});

it("lengths are told with how sure they are, and the marks to those who do not see them", () => {
  const told = sayMeasuredBars({
    length: { x: 99.604, y: 100.5 },
    off: { x: 0.171, y: 0.2 },
    camera: { height: 412, tilt: 2 },
    marks: { dots: [], sides: [], bars: { x: [NOWHERE, NOWHERE], y: [NOWHERE, NOWHERE] } },
  });
  expect(told).toContain("along the short side measures 99.60 mm (±\u00a00.17)");
  expect(told).toContain("along the long side 100.50 mm (±\u00a00.20)");
  expect(told).toContain("about 40 cm above");
  expect(sayBarMarks({ dots: 520, sides: 4, hasBars: true })).toBe(
    "The photo, with 520 dots, 4 sides of the card and the ends of both bars marked on it",
  );
  expect(sayBarMarks({ dots: 1, sides: 0, hasBars: false })).toBe(
    "The photo, with 1 dot and 0 sides of the card marked on it",
  );
});

const NOWHERE = { x: 0, y: 0 };
