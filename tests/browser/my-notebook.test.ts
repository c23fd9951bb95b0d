/** A notebook that was said once is the keeper's on every page: named in the head, and opened by every link. */
import { describe, expect, it } from "vitest";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();

const OWN = "#v=1&paper=B6&pitch=5&dots=24,35&first=5,5";

describe("a notebook that was said on its own page", () => {
  it("is named everywhere, and links do not bring another one", async () => {
    const { page, close, complaints } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("fit/index.html") + OWN);
    await page.getByLabel("Dots across").fill("23");
    const mine = page.locator('[data-part="mine"]');
    await expect.poll(() => mine.textContent()).toBe("B6, 23 × 35");
    await page.goto(onDisk("patterns/two-row-week/a5/index.html"));
    expect(await mine.textContent()).toBe("B6, 23 × 35");
    for (const name of ["fit it to a notebook of your own", "Edit this recipe", "edit it here"]) {
      await page.goto(onDisk("patterns/two-row-week/a5/index.html"));
      await page.getByRole("link", { name }).click();
      await expect
        .poll(() => page.locator("#plan-data").textContent())
        .toContain('"notebook": "b6-23-35"');
    }
    await page.goto(onDisk("strips/everyday/a5/index.html"));
    await page.getByRole("link", { name: "Change it" }).first().click();
    await expect
      .poll(() => page.locator("#strip-data").textContent())
      .toContain('"notebook": "b6-23-35"');
    expect(complaints).toEqual([]);
    await close();
  });

  it("is one of the book's again when its numbers are", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("fit/index.html") + OWN);
    await page.locator("#start").selectOption("a6");
    await page.goto(onDisk("index.html"));
    const shown = page.locator('[data-kept="a6"]');
    await expect.poll(() => shown.isVisible()).toBe(true);
    await close();
  });
});

describe("the fit page's questions", () => {
  it("offer another way of counting once, and let the habit be kept", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(onDisk("fit/index.html") + OWN);
    const keep = page.getByRole("button", { name: "Keep my way across" });
    await keep.press("Enter");
    expect(await keep.count()).toBe(0);
    await page.getByLabel("Dots across").fill("23");
    expect(await keep.count()).toBe(0);
    await page.reload();
    expect(await page.locator('[data-part="proposal"] button').count()).toBe(0);
    expect(await page.getByLabel("Counted across").inputValue()).toBe("edge-to-dot");
    await close();
  });

  it("ask whether the paper is right, and take the one that it may be", async () => {
    const { page, close } = await watchedPage(testBrowser.browser);
    await page.goto(`${onDisk("fit/index.html")}#v=1&paper=A5&pitch=5&dots=24,35&first=5,5`);
    await expect
      .poll(() => page.locator('[data-part="proposal"]').textContent())
      .toContain("Is the paper B6, 125 × 176 mm?");
    await page.getByRole("button", { name: "Take B6" }).click();
    expect(await page.getByLabel("Paper").inputValue()).toBe("B6");
    await close();
  });
});
