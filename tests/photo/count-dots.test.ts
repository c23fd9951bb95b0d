/** Photos of one small notebook, each with one thing that makes counting hard, and those that are refused. */
import { describe, expect, it } from "vitest";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { countDots } from "../../src/photo/count-dots.ts";
import type { Grey } from "../../src/photo/grey.ts";
import { isSure, type PhotoDoubt } from "../../src/photo/photo-count.ts";
import type { Pose } from "./stage/camera.ts";
import { DAYLIGHT, FLAT, gridOn, type Staging, stagePhoto } from "./stage/staged-photo.ts";
import type { Light } from "./stage/take-photo.ts";
import { countedIn, outcomeOf } from "./stage/tally.ts";

/** A pocket book whose next row beyond the last would lie on the paper's edge. */
const POCKET = gridOn("A6", 5, [20, 28], { first: [5, 5] });

const LINES = gridOn("A6", 6, [17, 21], { first: [5, 15], ruling: "lines" });

interface Given {
  readonly notebook?: Notebook;
  readonly pose?: Partial<Pose>;
  readonly light?: Partial<Light>;
  readonly strokes?: number;
}

function stagingOf({ notebook = POCKET, pose, light, strokes = 0 }: Given): Staging {
  return {
    notebook,
    size: { width: 432, height: 576 },
    pose: { ...FLAT, ...pose },
    light: { ...DAYLIGHT, ...light },
    strokes,
    seed: 4,
  };
}

describe("the dots of a photo", () => {
  it.each<[string, Given]>([
    ["taken from straight above", {}],
    ["tilted by 35 degrees, and turned by 20", { pose: { pitch: 28, yaw: 21, turn: 20 } }],
    ["blurred through a lens with a barrel of 4 %", { pose: { lens: 0.04 }, light: { blur: 1 } }],
    ["in noise, with a pincushion of 4 %", { pose: { lens: -0.04 }, light: { noise: 4 } }],
    ["that are faint, in half a shadow", { light: { ink: 0.7, shadow: 0.5, falloff: 0.4 } }],
    ["on a table as bright as the paper", { light: { desk: 220 } }],
    ["with ink, and stitches beside the first column", { notebook: bound(), strokes: 6 }],
    ["of lined paper", { notebook: LINES, pose: { pitch: 25, turn: 5, lens: 0.03 } }],
    ["of squared paper", { notebook: gridOn("A6", 5, [19, 27], { ruling: "squares" }) }],
  ])("%s are counted, and measured by the corners", async (_, given) => {
    const { count, off } = outcomeOf(await stagePhoto(stagingOf(given)));
    expect(count).toBe("right");
    expect(off?.pitch).toBeLessThan(0.005);
    expect(off?.first).toBeLessThan(0.4);
  });

  it.each([
    ["of dots", POCKET],
    ["of lines", LINES],
  ])("of a curled page %s are counted, but not measured", async (_, notebook) => {
    const curled = { notebook, pose: { curl: 5, pitch: 20, turn: 3 } };
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
    ["of lined paper on its side", { notebook: LINES, pose: { turn: 90 } }, "upright"],
    ["of lined paper that is cut off", { notebook: LINES, pose: { margin: -0.2 } }, "cut-off"],
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

it.each([40, 2_000])("says how far it is, from nought to one: %i pixels", (side) => {
  const at = new Uint8Array(side * 40);
  const parts = [...countDots({ width: 40, height: side, at })];
  expect(parts.length).toBeGreaterThan(3);
  expect(parts).toEqual(parts.toSorted((a, b) => a - b));
  expect(Math.max(...parts)).toBeLessThan(1);
});

it.each<[PhotoDoubt, boolean]>([
  [{ kind: "blurred" }, true],
  [{ kind: "cut-off", sides: ["top"] }, true],
  [{ kind: "upright" }, true],
  [{ kind: "too-few", dots: 3 }, false],
  [{ kind: "no-grid", residual: 0.2 }, false],
])("where a finer copy would show %o as well, none is asked for: %s", (doubt, sure) => {
  expect(isSure({ ok: false, doubt, found: [] })).toBe(sure);
});

it("finds dots where they lie", () => {
  const photo = drawnDots(36, { width: 900, height: 1_200 });
  const counted = countedIn(photo);
  if (!counted.ok || counted.of !== "grid") throw new Error("the dots were not counted");
  expect([counted.grid.across, counted.grid.down]).toEqual([20, 28]);
  expect(isSure(counted)).toBe(true);
  const [first] = counted.grid.corners;
  expect(first?.x).toBeCloseTo(108, 0);
  expect(first?.y).toBeCloseTo(108, 0);
  for (const { x, y } of counted.grid.dots) {
    expect(Math.abs(x / 36 - Math.round(x / 36))).toBeLessThan(0.01);
    expect(Math.abs(y / 36 - Math.round(y / 36))).toBeLessThan(0.01);
  }
});

/** 20 by 28 round dots, three steps from the corner. */
function drawnDots(step: number, { width, height }: Omit<Grey, "at">): Grey {
  const at = new Uint8Array(width * height).fill(225);
  for (let index = 0; index < 20 * 28; index++) {
    const [x, y] = [(3 + (index % 20)) * step, (3 + Math.floor(index / 20)) * step];
    for (let dy = -3; dy <= 3; dy++)
      for (let dx = -3; dx <= 3; dx++)
        if (dx * dx + dy * dy <= 10) at[(y + dy) * width + x + dx] = 110;
  }
  return { width, height, at };
}
