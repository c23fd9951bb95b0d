/** From a key press on the fit page to the new drawing, for every pattern of a built book: `node fit-once.mjs BOOK`. */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { chromiumThere } from "../setup/chromium-there.mjs";

const [book] = process.argv.slice(2);
const browser = await chromium.launch({
  executablePath: chromiumThere(),
  args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
});
const page = await browser.newPage();
await page.goto(`${pathToFileURL(join(book, "fit/index.html")).href}`);
await page.locator(".plate svg").first().waitFor();

/** The 95th of a hundred key presses, with layout, in milliseconds, by pattern. */
const times = await page.evaluate(() => {
  const [field, choice, plate] = ["#dots-across", "#pattern", '[data-part="plate"]'].map((one) =>
    document.querySelector(one),
  );
  return [...choice.options].map(({ value }) => {
    choice.value = value;
    choice.dispatchEvent(new Event("input", { bubbles: true }));
    const each = Array.from({ length: 100 }, (_, index) => {
      field.value = `${24 + (index % 5)}`;
      const start = performance.now();
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
      plate.getBoundingClientRect();
      return performance.now() - start;
    });
    return { pattern: value, p95: each.sort((a, b) => a - b)[94] };
  });
});
await browser.close();

times.sort((a, b) => a.p95 - b.p95);
const told = ({ pattern, p95 }) => `${p95.toFixed(1)} ms (${pattern})`;
console.log(`an ordinary pattern, p95: ${told(times[Math.floor(times.length / 2)])}`);
console.log(`the heaviest pattern, p95: ${told(times.at(-1))}`);
