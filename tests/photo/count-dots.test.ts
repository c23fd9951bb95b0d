/** Photos of one small notebook, each with one thing that makes counting hard, and those that are refused. */
import { describe, expect, it } from "vitest";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { countDots } from "../../src/photo/count-dots.ts";
import type { Grey } from "../../src/photo/grey.ts";
import type { Pose } from "./stage/camera.ts";
import { DAYLIGHT, FLAT, gridOn, type Staging, stagePhoto } from "./stage/staged-photo.ts";
import type { Light } from "./stage/take-photo.ts";
import { countedIn, outcomeOf } from "./stage/tally.ts";

/** A pocket book whose next row beyond the last would lie on the paper's edge. */
const POCKET = gridOn("A6", 5, [20, 28], { first: [5, 5] });

interface Given {
  readonly notebook?: Notebook;
  readonly pose?: Partial<Pose>;
  readonly light?: Partial<Light>;
  readonly strokes?: number;
}

function stagingOf({ notebook = POCKET, pose, light, strokes = 0 }: Given): Staging {
  return {
    notebook,
    size: { width: 600, height: 800 },
    pose: { ...FLAT, ...pose },
    light: { ...DAYLIGHT, ...light },
    strokes,
    seed: 4,
  };
}

describe("the dots of a photo", () => {
  it.each<[string, Given]>([
    ["taken from straight above", {}],
    ["tilted by 35 degrees", { pose: { pitch: 28, yaw: 21 } }],
    ["turned by 20 degrees", { pose: { turn: 20 } }],
    ["through a lens with a barrel of 4 %", { pose: { lens: 0.04 } }],
    ["through a lens with a pincushion of 4 %", { pose: { lens: -0.04 } }],
    ["a little blurred, with noise", { light: { blur: 1, noise: 4 } }],
    ["in half a shadow", { light: { shadow: 0.5, falloff: 0.4 } }],
    ["of faint dots", { light: { ink: 0.6 } }],
    ["on a table as bright as the paper", { light: { desk: 220 } }],
    ["with strokes of ink", { strokes: 6 }],
    ["with stitches beside the first column", { notebook: bound() }],
    ["of squared paper", { notebook: gridOn("A6", 5, [19, 27], { ruling: "squares" }) }],
  ])("%s are counted, and measured by the corners", async (_, given) => {
    const { count, off } = outcomeOf(await stagePhoto(stagingOf(given)));
    expect(count).toBe("right");
    expect(off?.pitch).toBeLessThan(0.005);
    expect(off?.first).toBeLessThan(0.4);
  });

  it("of a curled page are counted, but not measured", async () => {
    const curled = { notebook: POCKET, pose: { curl: 5, pitch: 20, turn: 3 } };
    expect(outcomeOf(await stagePhoto(stagingOf(curled)))).toEqual({ count: "right" });
  });
});

function bound(): Notebook {
  return gridOn("A6", 5, [20, 28], { first: [5, 5], binding: "left" });
}

describe("a photo is refused", () => {
  it.each<[string, Given, string]>([
    ["that cuts the page off", { pose: { margin: -0.12 } }, "cut-off"],
    ["that is not sharp", { light: { blur: 6 } }, "blurred"],
    ["of lined paper", { notebook: gridOn("A6", 7, [14, 19], { ruling: "lines" }) }, "lined"],
    ["of a few dots only", { notebook: gridOn("A6", 15, [5, 7]) }, "too-few"],
  ])("%s", async (_, given, kind) => {
    const counted = countedIn((await stagePhoto(stagingOf(given))).photo);
    expect(counted.ok ? "counted" : counted.doubt.kind).toBe(kind);
  });

  it.each<[string, (index: number) => number, string]>([
    ["that is white all over", () => 255, "blurred"],
    ["that is black all over", () => 0, "blurred"],
    [
      "of a chessboard of pixels",
      (index) => (((index % 300) + Math.floor(index / 300)) % 2 === 0 ? 0 : 255),
      "too-few",
    ],
  ])("%s", (_, brightness, kind) => {
    const at = Uint8Array.from({ length: 300 * 400 }, (__, index) => brightness(index));
    const photo: Grey = { width: 300, height: 400, at };
    expect(countedIn(photo)).toMatchObject({ ok: false, doubt: { kind } });
  });

  it.each([
    [1, 1],
    [1, 5_000],
    [5_000, 1],
    [12, 12],
  ])("of %i by %i pixels", (width, height) => {
    const photo: Grey = { width, height, at: new Uint8Array(width * height).fill(200) };
    expect(countedIn(photo).ok).toBe(false);
  });
});

it("says how far it is, from nought to one", () => {
  const parts = [...countDots({ width: 40, height: 40, at: new Uint8Array(1_600) })];
  expect(parts.length).toBeGreaterThan(3);
  expect(parts).toEqual(parts.toSorted((a, b) => a - b));
  expect(Math.max(...parts)).toBeLessThan(1);
});
