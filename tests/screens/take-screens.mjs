/** `npm run screens`: takes the pictures that people look at, of the built book's pages by width and by light. */
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { chromiumThere } from "../setup/chromium-there.mjs";

const BOOK = new URL("../../_site/", import.meta.url);
const HERE = fileURLToPath(new URL("./", import.meta.url));
const PAGES = {
  home: "index.html",
  patterns: "patterns/index.html",
  pattern: "patterns/two-row-week/a5/index.html",
  spread: "patterns/ninths-spread/a5/index.html",
  strip: "strips/everyday/a5/index.html",
  notebook: "notebooks/a5/index.html",
  guide: "guide/index.html",
  fit: "fit/index.html",
  measure: "measure/index.html",
};
const WIDTHS = [390, 820, 1440];
const LIGHTS = ["light", "dark"];

/** Words after the command choose by name, width or light: `npm run screens -- pattern 390`. */
const words = process.argv.slice(2);
const isChosen = (name, width, light) =>
  words.every((word) => [name, `${width}`, light].includes(word));

const browser = await chromium.launch({
  executablePath: chromiumThere(),
  args: ["--no-sandbox", "--disable-gpu", "--hide-scrollbars", "--disable-sync"],
});
for (const [name, path] of Object.entries(PAGES)) {
  for (const width of WIDTHS) {
    for (const light of LIGHTS) {
      if (!isChosen(name, width, light)) continue;
      const page = await browser.newPage({
        viewport: { width, height: Math.round(width * (width < 500 ? 2.1 : 0.9)) },
        colorScheme: light,
      });
      await page.goto(new URL(path, BOOK).href);
      await page.evaluate(() => document.fonts.ready);
      await page.screenshot({ path: `${HERE}${name}-${width}-${light}.png` });
      await page.close();
    }
  }
}
await browser.close();
