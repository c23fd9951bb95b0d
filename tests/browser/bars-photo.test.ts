/** Measuring the printed bars from a photo: a staged one is opened on a phone's screen, its lengths are used, and the correction is kept. */

import type { Page } from "playwright-core";
import { PNG } from "pngjs";
import { describe, expect, inject, it } from "vitest";
import type { Grey } from "../../src/photo/grey.ts";
import { BARS_STAGING, placeOnPaper, stageBars } from "../photo/stage/staged-bars.ts";
import { axeFindings } from "./axe-findings.ts";
import { downloaded, onDisk, openTestBrowser } from "./test-browser.ts";

const testBrowser = openTestBrowser(() => inject("tiny"));
const PHONE = { viewport: { width: 390, height: 844 } };
const STRETCH = { x: 0.99, y: 1.01 };

function pngOf({ width, height, at }: Grey): Buffer {
  const data = Buffer.from(
    Uint8Array.from({ length: 4 * at.length }, (_, index) =>
      index % 4 === 3 ? 255 : (at[index >> 2] ?? 0),
    ),
  );
  return Buffer.from(PNG.sync.write({ width, height, data }));
}

async function staged(): Promise<Buffer> {
  const aim = placeOnPaper(STRETCH, { x: 70, y: 70 });
  return pngOf(
    await stageBars({
      ...BARS_STAGING,
      stretch: STRETCH,
      size: { width: 880, height: 900 },
      pose: { yaw: 3, pitch: 8, turn: 4, distance: 300, focal: 3, lens: 0, aim },
    }),
  );
}

const result = (page: Page) => page.locator(".photo-result");

async function openPart(page: Page): Promise<void> {
  await page.getByText("Measure the bars from a photo").click();
  await page.getByLabel("Or open one").waitFor();
}

const choose = (page: Page, buffer: Buffer) =>
  page
    .getByLabel("Or open one")
    .setInputFiles({ name: "sheet.png", mimeType: "image/png", buffer });

describe("a photo of the test sheet", () => {
  it("tells both bars, fills the fields, and the correction is kept", async () => {
    const photo = await staged();
    await testBrowser.onPage(`${testBrowser.address}measure/index.html`, PHONE, async (page) => {
      await openPart(page);
      await choose(page, photo);
      await result(page).getByText("The bar along the short side measures").waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
      expect(await axeFindings(page)).toEqual([]);
      await page.getByRole("button", { name: "Use these" }).click();
      const length = async (label: string) => Number(await page.getByLabel(label).inputValue());
      expect(Math.abs((await length("Bar along the short side (mm)")) - 99)).toBeLessThan(0.3);
      expect(Math.abs((await length("Bar along the long side (mm)")) - 101)).toBeLessThan(0.3);
      await page.getByRole("button", { name: "Keep it on this device" }).click();
      const kept = await page.locator('[data-part="kept-printer"]').textContent();
      expect(kept).toMatch(/x 1\.0[01]\d* and y 0\.9[89]\d* are kept/);

      const report = page.waitForEvent("download");
      await page.getByRole("button", { name: "Save what was found" }).click();
      const saved: unknown = JSON.parse((await downloaded(await report)).toString());
      expect(saved).toMatchObject({ form: 1, measured: true });
      const sheet = page.waitForEvent("download");
      await page.getByRole("button", { name: "Save the test sheet" }).click();
      expect((await downloaded(await sheet)).subarray(0, 5).toString()).toBe("%PDF-");
    });
  });

  it("that is none says so from disk as well, where no worker may run", async () => {
    const { width, height } = { width: 400, height: 300 };
    const blank = pngOf({ width, height, at: new Uint8Array(width * height).fill(210) });
    await testBrowser.onPage(onDisk("measure/index.html", inject("tiny")), PHONE, async (page) => {
      await openPart(page);
      await choose(page, blank);
      await result(page).getByText("not sharp enough").waitFor();
      await choose(page, Buffer.from("no picture at all"));
      await result(page).getByText("cannot read the file as a picture").waitFor();
      expect(await page.getByRole("button", { name: "Use these" }).count()).toBe(0);
    });
  });
});
