/** Drawings on a phone and on a tablet: counts that can be read, and no page that runs off sideways. */
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { onDisk, openTestBrowser } from "./test-browser.ts";

const testBrowser = openTestBrowser();

/** CSS pixels: less is hard to read for many (common practice, no source). */
const READABLE = 9;

const PAGES = [
  ["a page", "patterns/two-row-week/a5"],
  ["a large page", "patterns/week-on-one-page/a4"],
  ["a pocket page", "patterns/seed-list/a6"],
  ["a spread", "patterns/ninths-spread/a5"],
  ["a large spread", "patterns/month-spread/a4"],
  ["what does not fit", "patterns/shed-wall/a6"],
  ["a notebook", "notebooks/a4"],
] as const;

const on = (path: string, width: number, look: (page: Page) => Promise<void>) =>
  testBrowser.onPage(onDisk(`${path}/index.html`), { viewport: { width, height: 844 } }, look);

/** Font size of the counts beside a page's drawing, as it is seen. */
const countSize = (page: Page) =>
  page.locator(":is(.spread, .drawn) > .plate svg").evaluate((svg) => {
    if (!(svg instanceof SVGSVGElement)) throw new Error("no drawing");
    const size = Number(svg.querySelector(".d-count")?.getAttribute("font-size"));
    return (size * svg.getBoundingClientRect().width) / svg.viewBox.baseVal.width;
  });

const overhang = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

describe.each(PAGES)("the drawing of %s", (_, path) => {
  it("has counts that can be read on a phone, and is pushed along by keys in a region with a name", async () => {
    await on(path, 390, async (page) => {
      expect(await countSize(page)).toBeGreaterThanOrEqual(READABLE);
      expect(await overhang(page)).toBe(0);
      await isPushedAlong(page);
    });
  });

  it("has counts that can be read at four times the size, on a screen that stays as wide", async () => {
    // 320 is a screen of 1280 at 400 % (WCAG 2.2, 1.4.10).
    await on(path, 320, async (page) => {
      expect(await countSize(page)).toBeGreaterThanOrEqual(READABLE);
      expect(await overhang(page)).toBe(0);
    });
  });
});

/** The drawing is a region of its own, which keys push along. */
async function isPushedAlong(page: Page): Promise<void> {
  const plate = page.getByRole("region", { name: "The drawing", exact: true });
  await plate.focus();
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => plate.evaluate(({ scrollLeft }) => scrollLeft)).toBeGreaterThan(0);
}

describe("a spread", () => {
  it("can be read on a tablet", async () => {
    await on("patterns/ninths-spread/a5", 820, async (page) => {
      expect(await countSize(page)).toBeGreaterThanOrEqual(READABLE);
      expect(await overhang(page)).toBe(0);
    });
  });

  it("fits a large screen as a whole, without a switch that would do nothing", async () => {
    await on("patterns/ninths-spread/a5", 1440, async (page) => {
      const shown = await page
        .locator(".plate.pan")
        .evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth);
      expect(shown).toBeLessThanOrEqual(0);
      expect(await page.getByLabel("Large").isVisible()).toBe(false);
    });
  });

  it.each([390, 820])(
    "is seen as a whole by a switch, on a screen of %d, and stays so",
    async (width) => {
      await on("patterns/ninths-spread/a5", width, async (page) => {
        const rest = () =>
          page
            .locator(".plate.pan")
            .evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth);
        expect(await rest()).toBeGreaterThan(100);
        await page.getByLabel("Large").uncheck();
        expect(await rest()).toBe(0);
        await page.reload();
        expect(await rest()).toBe(0);
      });
    },
  );
});

describe("a pattern on every notebook", () => {
  it.each([390, 820, 1440])("stands picture beside picture on a screen of %d", async (width) => {
    await on("patterns/ninths-spread/letter", width, async (page) => {
      const boxes = await page.locator(".lineup img").evaluateAll((pictures) =>
        pictures.map((picture) => {
          const { left, right, top, bottom } = picture.getBoundingClientRect();
          return { left, right, top, bottom };
        }),
      );
      expect(boxes.length).toBeGreaterThan(6);
      const overlaps = boxes.flatMap((a, index) =>
        boxes
          .slice(index + 1)
          .filter(
            (b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom,
          ),
      );
      expect(overlaps).toEqual([]);
    });
  });
});

describe("the page of a strip", () => {
  it("keeps its height when its copying card comes", async () => {
    await on("strips/everyday/a5", 390, async (page) => {
      const height = () => page.evaluate(() => document.documentElement.scrollHeight);
      const before = await height();
      const card = page.locator(".card-sheet img");
      await card.scrollIntoViewIfNeeded();
      await expect
        .poll(() =>
          card.evaluate(
            (img) => img instanceof HTMLImageElement && img.complete && img.naturalWidth > 0,
          ),
        )
        .toBe(true);
      expect(Math.abs((await height()) - before)).toBeLessThanOrEqual(1);
    });
  });
});

describe.each([
  ["the fit page", "fit"],
  ["the recipe page", "fit/recipe"],
])("the drawing on %s", (_, path) => {
  it("has counts that can be read, in a region with a name that is pushed along", async () => {
    await on(path, 390, async (page) => {
      await page.locator('[data-part="plate"] svg').waitFor();
      expect(await countSize(page)).toBeGreaterThanOrEqual(READABLE);
      expect(await overhang(page)).toBe(0);
      await isPushedAlong(page);
    });
  });
});

describe.each([390, 1440])("the guide's drawings, %d px wide", (width) => {
  it.each(["counting", "dividing", "recipe", "notebook", "alike", "leftovers"])(
    "in the chapter %s have counts of 8 px at least, and names",
    async (chapter) => {
      await on(`guide/${chapter}`, width, async (page) => {
        const drawings = page.locator(".chapter").getByRole("region", { name: /./ }).locator("svg");
        const sizes = await drawings.evaluateAll((all) =>
          all.flatMap((svg) => {
            if (!(svg instanceof SVGSVGElement)) return [];
            const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
            return [...svg.querySelectorAll(".pan .d-count")].map(
              (count) => Number(count.getAttribute("font-size")) * scale,
            );
          }),
        );
        expect(sizes.length).toBeGreaterThan(0);
        expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8);
        expect(await overhang(page)).toBe(0);
      });
    },
  );
});
