/** Two books on one web space: each has its own notebook on the device. */
import { mkdtempSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, inject, it } from "vitest";
import { openTestBrowser } from "./test-browser.ts";

const space = mkdtempSync(join(tmpdir(), "spanbook-space-"));
for (const name of ["one", "two"]) symlinkSync(inject("book"), join(space, name));
const testBrowser = openTestBrowser(space);
afterAll(() => rmSync(space, { recursive: true, force: true }));

it("what is filled in in one is not in the other", async () => {
  const context = await testBrowser.browser.newContext();
  const page = await context.newPage();
  const dots = page.locator("#dots-across");
  await page.goto(`${testBrowser.address}one/fit/index.html`);
  await dots.fill("24");
  await page.waitForURL(({ hash }) => hash.includes("dots=24"));
  await page.goto(`${testBrowser.address}two/fit/index.html`);
  await page.locator(".plate svg").first().waitFor();
  expect(await dots.inputValue()).toBe("26");
  await page.goto(`${testBrowser.address}one/fit/index.html`);
  await expect.poll(() => dots.inputValue()).toBe("24");
  await context.close();
});
