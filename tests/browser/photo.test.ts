/** Counting from a photo in the page: a staged one is opened on a phone's screen, and its numbers are taken over. */

import type { Page } from "playwright-core";
import { PNG } from "pngjs";
import { describe, expect, inject, it } from "vitest";
import type { Grey } from "../../src/photo/grey.ts";
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
      expect(saved).toMatchObject({ form: 1, counted: true, across: 20, down: 28 });
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
  it.each<[string, Buffer, string]>([
    ["a text", Buffer.from("no picture at all"), "cannot read the file as a picture"],
    ["a picture that is cut off", tall.subarray(0, 20), "cannot read the file as a picture"],
    ["a line of 100,000 pixels", tall, "1 by 100000 pixels, too small"],
    ["a claim of 3,600 million pixels", huge, "3600 million pixels"],
    ["nothing", Buffer.alloc(0), "cannot read the file as a picture"],
  ])("is told plainly: %s", async (_, file, words) => {
    await testBrowser.onPage(`${testBrowser.address}fit/index.html`, PHONE, async (page) => {
      await openPart(page);
      await choose(page, file);
      await result(page).getByText(words).waitFor();
    });
  });
});
