/** One photo of the test sheet, measured, and what is refused where something is wrong with it. */
import { beforeAll, describe, expect, it } from "vitest";
import { BANK_CARD } from "../../src/measure/bank-card.ts";
import type { BarsFound } from "../../src/photo/bars-found.ts";
import { besideCard, seenOnSheet } from "../../src/photo/card-sides.ts";
import { type FoundSheet, findSheet } from "../../src/photo/find-sheet.ts";
import type { Grey, PhotoPoint } from "../../src/photo/grey.ts";
import { measureOn } from "../../src/photo/measure-bars.ts";
import { latticeAt } from "../../src/photo/plane-view.ts";
import { barEnd } from "../../src/photo/seen-bars.ts";
import { fromCardPlace, toCardPlace } from "../../src/photo/test-sheet.ts";
import { BARS_STAGING, placeOnPaper, stageBars } from "./stage/staged-bars.ts";
import { measuredIn, tallied } from "./stage/tally-bars.ts";

const STRETCH = { x: 0.96, y: 1.015 };
const SIZE = { width: 780, height: 800 };
const STAGING = {
  ...BARS_STAGING,
  stretch: STRETCH,
  size: SIZE,
  pose: {
    ...{ yaw: 4, pitch: -3, turn: 94, distance: 240, focal: 2.6, lens: 0.02 },
    aim: placeOnPaper(STRETCH, { x: 70, y: 70 }),
  },
  focal: { log: Math.log(2.6), off: 0.06 },
};

let photo: Grey;
let sheet: FoundSheet;

beforeAll(async () => {
  photo = await stageBars(STAGING);
  const work = findSheet(photo);
  let step = work.next();
  while (!step.done) step = work.next();
  if (!("view" in step.value)) throw new Error("the sheet is not found");
  sheet = step.value;
});

it("the bars are measured to 0.3 %, with the marks where they are seen", () => {
  const found = measuredIn(photo, STAGING.focal);
  expect(tallied(found, STRETCH)).toMatchObject({ came: "told" });
  expect(tallied(found, STRETCH).off).toBeLessThan(0.002);
  if (!found.ok) return;
  const { off, marks, camera } = found.bars;
  expect(Math.max(off.x, off.y)).toBeLessThan(0.3);
  expect(Math.abs(camera.height - 240)).toBeLessThan(30);
  expect(marks.sides).toHaveLength(4);
  expect(marks.bars.x[1]).toEqual(seenOnSheet(sheet.view, barEnd("x")));
  expect(marks.dots.length).toBe(504);
});

/** The photo with another brightness at some places. */
function painted(brightness: (at: PhotoPoint, before: number) => number): Grey {
  const at = photo.at.map((before, index) =>
    brightness({ x: index % photo.width, y: Math.floor(index / photo.width) }, before),
  );
  return { ...photo, at };
}

/** A blot of some millimetres around a place of the sheet. */
function blotted(middle: { x: number; y: number }, mm: number, shade: number): Grey {
  const { x, y } = seenOnSheet(sheet.view, middle);
  const far = 5 * mm;
  return painted((at, before) => (Math.hypot(at.x - x, at.y - y) < far ? shade : before));
}

function cropped(width: number, height: number): Grey {
  const at = new Uint8Array(width * height);
  for (let index = 0; index < at.length; index++)
    at[index] = photo.at[Math.floor(index / width) * photo.width + (index % width)] ?? 0;
  return { width, height, at };
}

function mirrored(): Grey {
  const { width } = photo;
  const at = photo.at.map((_, index) => {
    const column = index % width;
    return photo.at[index - column + width - 1 - column] ?? 0;
  });
  return { ...photo, at };
}

const halved = (): Grey => {
  const size = { width: photo.width / 2, height: photo.height / 2 };
  const at = Uint8Array.from(
    { length: size.width * size.height },
    (_, index) =>
      photo.at[Math.floor(index / size.width) * 2 * photo.width + (index % size.width) * 2] ?? 0,
  );
  return { ...size, at };
};

/** Five millimetres of the card's right side are as white as the paper. */
function shorter(): Grey {
  const { view } = sheet;
  return painted((at, before) => {
    const { across, down } = latticeAt(view, at);
    const { x } = toCardPlace({ x: across * 5, y: down * 5 });
    return Math.abs(x - BANK_CARD.long / 2) < 5 ? BLANK : before;
  });
}

const BLANK = 205;
const kindOf = (found: BarsFound) => (found.ok ? "told" : found.doubt.kind);

describe("is refused", () => {
  it.each<[string, () => Grey, string]>([
    ["one without a card", () => blotted(fromCardPlace({ x: 0, y: 0 }), 51, BLANK), "no-card"],
    ["a hand on one side of the card", () => blotted(besideCard("top", 0, 20), 32, 90), "hidden"],
    ["a hand on a bar", () => blotted({ x: 60, y: 134 }, 26, 90), "no-bars"],
    ["a sheet that is cut off", () => cropped(SIZE.width, 560), "cut-off"],
    ["a card that is too short", shorter, "no-such-card"],
  ])("%s", (_, wrong, kind) => {
    expect(kindOf(measureOn(wrong(), sheet))).toBe(kind);
  });

  it("a sheet that is curled", () => {
    expect(kindOf(measureOn(photo, { ...sheet, residual: 0.008 }))).toBe("not-flat");
  });

  it.each<[string, () => Grey, string]>([
    ["a photo of nothing", () => painted(() => BLANK), "blurred"],
    [
      "one of noise",
      () => painted(({ x, y }) => ((x * 7_919 + y * 104_729) % 97) + 100),
      "no-sheet",
    ],
    ["a small picture", halved, "small"],
    ["a sheet in a mirror", mirrored, "no-sheet"],
  ])("%s", (_, wrong, kind) => {
    expect(kindOf(measuredIn(wrong()))).toBe(kind);
  });

  it.each([
    [1, 1],
    [1, 5_000],
    [5_000, 1],
    [12, 12],
  ])("a photo of %i by %i pixels", (width, height) => {
    const found = measuredIn({ width, height, at: new Uint8Array(width * height).fill(200) });
    expect(found.ok).toBe(false);
  });
});
