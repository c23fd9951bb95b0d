/** Counting from a photo in the page: a staged one is opened on a phone's screen, and its numbers are taken over. */

import type { Page } from "playwright-core";
import { PNG } from "pngjs";
import { describe, expect, inject, it } from "vitest";
import type { Grey, PhotoPoint } from "../../src/photo/grey.ts";
import {
  DAYLIGHT,
  FLAT,
  gridOn,
  type StagedPhoto,
  stagePhoto,
} from "../photo/stage/staged-photo.ts";
import { axeFindings } from "./axe-findings.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";

const testBrowser = openTestBrowser(() => inject("tiny"));
const PHONE = { viewport: { width: 390, height: 844 } };

/** A6 with 20 by 28 dots, 5 mm apart and from the edges. */
function staged(margin = 0.05): Promise<StagedPhoto> {
  return stagePhoto({
    notebook: gridOn("A6", 5, [20, 28], { first: [5, 5] }),
    size: { width: 690, height: 920 },
    pose: { ...FLAT, pitch: 15, turn: 4, margin },
    light: DAYLIGHT,
    strokes: 0,
    seed: 11,
  });
}

function pngOf({ width, height, at }: Grey): Buffer {
  const data = Buffer.from(
    Uint8Array.from({ length: 4 * at.length }, (_, index) =>
      index % 4 === 3 ? 255 : (at[index >> 2] ?? 0),
    ),
  );
  return Buffer.from(PNG.sync.write({ width, height, data }));
}

/** 1,300 pixels long, with 16 by 60 dots so many pixels apart. */
function dotted(step: number): Grey {
  const [width, height] = [400, 1_300];
  const at = new Uint8Array(width * height).fill(225);
  for (let index = 0; index < 16 * 60; index++) {
    const [x, y] = [(index % 16) * step + 40, Math.floor(index / 16) * step + 60];
    for (const [dx, dy] of [-1, 0, 1].flatMap((down) => [-1, 0, 1].map((right) => [right, down])))
      at[(y + (dy ?? 0)) * width + x + (dx ?? 0)] = 110;
  }
  return { width, height, at };
}

const result = (page: Page) => page.locator(".photo-result");

async function openPart(page: Page): Promise<void> {
  await page.getByText("Count the dots from a photo").click();
  await page.getByLabel("Or open one").waitFor();
}

const choose = (page: Page, buffer: Buffer) =>
  page.getByLabel("Or open one").setInputFiles({ name: "page.png", mimeType: "image/png", buffer });

const values = async (page: Page) =>
  Promise.all(
    ["dots-across", "dots-down", "pitch", "first-left", "first-top"].map((id) =>
      page.locator(`#${id}`).inputValue(),
    ),
  );

/** Puts a mark onto a place of the photo. */
async function dragTo(page: Page, name: string, { x, y }: PhotoPoint): Promise<void> {
  const handle = page.getByRole("button", { name });
  await handle.scrollIntoViewIfNeeded();
  const [from, canvas] = [await handle.boundingBox(), page.locator(".photo-shown canvas")];
  const shown = await canvas.boundingBox();
  const width = Number(await canvas.evaluate((element) => element.getAttribute("width")));
  if (!from || !shown) throw new Error("the photo is not shown");
  const scale = shown.width / width;
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(shown.x + (x + 0.5) * scale, shown.y + (y + 0.5) * scale, { steps: 3 });
  await page.mouse.up();
}

describe("a photo on a phone", () => {
  it("is counted, its corners are put right by keys, and the page takes the numbers over", async () => {
    const { photo } = await staged();
    await testBrowser.onPage(`${testBrowser.address}fit/index.html`, PHONE, async (page) => {
      await page.locator("#paper").selectOption("A6");
      await openPart(page);
      await choose(page, pngOf(photo));
      await result(page).getByText("20 across and 28 down").waitFor();
      await page.getByRole("button", { name: "Use these numbers" }).click();
      expect((await values(page)).slice(0, 2)).toEqual(["20", "28"]);
      await expect.poll(() => page.locator('[data-part="tally"]').textContent()).toContain("20");

      await page.getByLabel("The four marks lie").check();
      await result(page).getByText("From dot to dot").waitFor();
      const told = () => result(page).locator("[aria-live]").textContent();
      const before = await told();
      await page.getByRole("button", { name: "Top left corner" }).focus();
      await page.keyboard.press("Shift+ArrowLeft");
      expect(await told()).not.toBe(before);
      await page.keyboard.press("Shift+ArrowRight");
      expect(await told()).toBe(before);
      await page.getByRole("button", { name: "Use these numbers" }).click();
      const [across, down, pitch, left, top] = await values(page);
      // Centred across, where the field stays empty; the guess of the corners is good enough for what is left.
      expect([across, down, pitch, left]).toEqual(["20", "28", "5", ""]);
      expect(Math.abs(Number(top) - 5)).toBeLessThan(0.4);

      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
      expect(await axeFindings(page)).toEqual([]);
      await page.emulateMedia({ colorScheme: "dark" });
      expect(await axeFindings(page)).toEqual([]);

      const waiting = page.waitForEvent("download");
      await page.getByRole("button", { name: "Save what was found" }).click();
      const saved: unknown = JSON.parse((await downloaded(await waiting)).toString());
      expect(saved).toMatchObject({ form: 2, counted: true, across: 20, down: 28 });
    });
  });

  it("that is refused says why, shows what was seen, and fills nothing in", async () => {
    const { photo } = await staged(-0.1);
    await testBrowser.onPage(`${testBrowser.address}fit/index.html`, PHONE, async (page) => {
      const before = await values(page);
      await openPart(page);
      await choose(page, pngOf(photo));
      await result(page).getByText("The page goes on beyond the photo").waitFor();
      expect(await page.getByRole("button", { name: "Use these numbers" }).count()).toBe(0);
      expect(await result(page).locator("canvas").count()).toBe(1);
      expect(await values(page)).toEqual(before);
    });
  });

  it("of lined paper is counted by its lines, and what lies across is left alone", async () => {
    const { photo, corners } = await stagePhoto({
      notebook: gridOn("A6", 6, [17, 21], { first: [5, 15], ruling: "lines" }),
      size: { width: 690, height: 920 },
      pose: { ...FLAT, turn: 3, margin: 0.08 },
      light: DAYLIGHT,
      strokes: 0,
      seed: 12,
    });
    await testBrowser.onPage(`${testBrowser.address}fit/index.html`, PHONE, async (page) => {
      const [across] = await values(page);
      await page.locator("#paper").selectOption("A6");
      await openPart(page);
      await choose(page, pngOf(photo));
      await result(page).getByText("21 lines: lined paper").waitFor();
      await page.getByLabel("The four marks lie").check();
      for (const [index, name] of [
        "Top left",
        "Top right",
        "Bottom right",
        "Bottom left",
      ].entries())
        await dragTo(page, `${name} corner`, corners[index] ?? { x: 0, y: 0 });
      await result(page).getByText("From line to line 6").waitFor();
      await page.getByRole("button", { name: "Use these numbers" }).click();
      expect((await values(page)).slice(0, 2)).toEqual([across, "21"]);
      expect(await page.locator("#pitch-down").inputValue()).toBe("6");
      expect(await page.locator("#ruling").inputValue()).toBe("lines");
      expect(Math.abs(Number(await page.locator("#first-top").inputValue()) - 15)).toBeLessThan(1);
    });
  });

  it.each([
    ["fine", "a finer copy", 13, 1_300],
    ["wide", "a copy of 1,200 pixels", 20, 1_200],
  ])("of a %s grid is counted in %s", async (...[, , step, longer]) => {
    await testBrowser.onPage(`${testBrowser.address}fit/index.html`, PHONE, async (page) => {
      await openPart(page);
      await choose(page, pngOf(dotted(step)));
      await result(page).getByText("16 across and 60 down").waitFor();
      expect(await result(page).locator("canvas").getAttribute("height")).toBe(`${longer}`);
    });
  });

  it("is counted from disk as well, where no worker may run", async () => {
    const { photo } = await staged();
    await testBrowser.onPage(onDisk("fit/index.html", inject("tiny")), PHONE, async (page) => {
      await openPart(page);
      await choose(page, pngOf(photo));
      await result(page).getByText("20 across and 28 down").waitFor();
    });
  });
});

describe("a file that is no photo", () => {
  const tall = Buffer.from(
    PNG.sync.write({ width: 1, height: 100_000, data: Buffer.alloc(400_000, 200) }),
  );
  const huge = Buffer.from(tall);
  huge.writeUInt32BE(60_000, 16);
  huge.writeUInt32BE(60_000, 20);
  const headOfJpeg = Buffer.from([
    ...[0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2],
    ...[0xff, 0xc0, 0, 17, 8, 0x0b, 0xd0, 0x0f, 0xc0, 3],
  ]);
  it.each<[string, Buffer, string]>([
    ["a text", Buffer.from("no picture at all"), "cannot read the file as a picture"],
    ["a picture that is cut off", tall.subarray(0, 20), "cannot read the file as a picture"],
    ["a line of 100,000 pixels", tall, "1 by 100000 pixels, too small"],
    ["a claim of 3,600 million pixels", huge, "3600 million pixels"],
    ["a JPEG of which only the head is there", headOfJpeg, "cannot read the file as a picture"],
    ["nothing", Buffer.alloc(0), "cannot read the file as a picture"],
  ])("is told plainly: %s", async (_, file, words) => {
    await testBrowser.onPage(`${testBrowser.address}fit/index.html`, PHONE, async (page) => {
      await openPart(page);
      await choose(page, file);
      await result(page).getByText(words).waitFor();
    });
  });

  it("is told plainly: one of 120 megabytes", async () => {
    await testBrowser.onPage(`${testBrowser.address}fit/index.html`, PHONE, async (page) => {
      await openPart(page);
      await page.getByLabel("Or open one").evaluate((field) => {
        if (!(field instanceof HTMLInputElement)) return;
        const chosen = new DataTransfer();
        chosen.items.add(new File([new Uint8Array(120_000_000)], "film.mov"));
        field.files = chosen.files;
        field.dispatchEvent(new Event("change"));
      });
      await result(page).getByText("The file has 120 MB").waitFor();
    });
  });
});
