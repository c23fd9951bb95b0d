/** The fit page has what a built notebook's page has: every cell of its tables is a division by hand. */
import { expect, it } from "vitest";
import { gateWay } from "../sweep/sweep-size.ts";
import { axeFindings } from "./axe-findings.ts";
import { OWN, openOwnBook } from "./own-book.ts";
import { openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();
const book = openOwnBook();

/** `7` and `1` for parts of 7 and one step left over; "" where not even parts of one step fit. */
function cellOf(steps: number, count: number, gap: number): string {
  const room = steps - (count - 1) * gap;
  if (room < count) return "";
  const over = room % count;
  return `${Math.floor(room / count)}${over === 0 ? "" : over}`;
}

it.each(gateWay([390, 1440], 0))(
  "%i px wide, equal parts with gaps stand in it, and follow what is typed",
  async (width) => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser, {
      viewport: { width, height: 900 },
    });
    await page.goto(`${book.address("fit/index.html")}#v=1&${OWN}`);
    expect(await page.locator(".divisions").count()).toBe(0);
    await page.getByRole("heading", { name: "Equal parts" }).scrollIntoViewIfNeeded();
    const rowsOf = (table: number) =>
      page
        .locator(".divisions")
        .nth(table)
        .locator("tbody tr")
        .evaluateAll((rows) =>
          rows.map((row) => [...row.querySelectorAll("td")].map((cell) => cell.textContent)),
        );
    const expected = (steps: number) =>
      Array.from({ length: 16 }, (_, index) =>
        [0, 1, 2, 3].map((gap) => cellOf(steps, index + 1, gap)),
      );
    await expect.poll(() => rowsOf(0)).toEqual(expected(24));
    expect(await rowsOf(1)).toEqual(expected(35));
    expect(await page.locator(".way").count()).toBe(8);
    expect(await page.locator(".part-figures svg").count()).toBe(8);
    expect(await page.locator('[data-part="facts"]').textContent()).toContain(
      "between dots 12 and 13",
    );
    expect(await axeFindings(page)).toEqual([]);
    await page.getByLabel("Dots across").fill("23");
    await expect.poll(() => rowsOf(0)).toEqual(expected(23));
    expect(complaints).toEqual([]);
    await close();
  },
);
