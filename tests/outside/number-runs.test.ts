/** Where a browser draws numbers that share an element: Chromium lays them out as it would one by one. */
import { createSVGWindow } from "svgdom";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Scene, TextMark } from "../../src/draw/scene.ts";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import { launchChromium } from "../browser/launch.ts";

const write = createSvgWriter(createSVGWindow());
const PLACES = [
  ["7", 10.5, 20],
  ["12", 20.25, 20],
  ["365", 42, 31.12],
] as const;

function sceneOf(marks: readonly TextMark[]): Scene {
  const frame = { x: 0, y: 0, width: 60, height: 60 };
  return { id: "tried", title: "Tried", description: "Numbers.", frame, marks };
}

let browser: Awaited<ReturnType<typeof launchChromium>>;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

/** The middles of the numbers in a drawing, in millimetres of its viewBox: of so many digits each. */
async function middlesIn(svg: string, lengths: readonly number[]) {
  const page = await browser.newPage();
  await page.setContent(`<!doctype html><body style="margin:0">${svg}`);
  const middles = await page.evaluate((each) => {
    const text = document.querySelector("text");
    const root = document.querySelector("svg");
    const toRoot = root
      ?.getScreenCTM()
      ?.inverse()
      .multiply(text?.getScreenCTM() ?? new DOMMatrix());
    let first = 0;
    return each.map((length) => {
      const start = text?.getStartPositionOfChar(first);
      const end = text?.getEndPositionOfChar(first + length - 1);
      first += length;
      if (!start || !end) return [];
      const { x, y } = new DOMPoint((start.x + end.x) / 2, (start.y + end.y) / 2).matrixTransform(
        toRoot,
      );
      return [x, y].map((value) => Math.round(value * 100) / 100);
    });
  }, lengths);
  await page.close();
  return middles;
}

describe("numbers in one element", () => {
  it.each([0, 90, 180, -90])("stand as they do one by one, turned by %i degrees", async (turn) => {
    const marks = PLACES.map(([text, x, y]): TextMark => {
      const anchor = "middle";
      return { kind: "text", role: "count", x, y, size: 2, anchor, text, turn };
    });
    const together = write(sceneOf(marks));
    expect(together.match(/<text/g)).toHaveLength(1);
    const alone = await Promise.all(
      marks.map((mark) => middlesIn(write(sceneOf([mark])), [mark.text.length])),
    );
    const lengths = marks.map(({ text }) => text.length);
    const middles = await middlesIn(together, lengths);
    expect(middles).toEqual(alone.flat());
    expect(middles).toEqual(PLACES.map(([, x, y]) => [x, y]));
  });
});
