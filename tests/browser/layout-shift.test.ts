/** Nothing that is seen moves while a page comes to be: not by fonts that come late, not by its script, on no kind of page. */
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { checkSample } from "../sweep/sweep-size.ts";
import { PAGE_KINDS } from "./page-kinds.ts";
import { openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser(inject("book"));

/**
 * A fifth of what still counts as good: 0.1 (Web Vitals, cumulative layout shift, web.dev/articles/cls). One short line
 * that the device's own face breaks elsewhere is as much.
 */
const MOST_SHIFT = 0.02;

/** What a page may look for in its address or on the device, as kept there by name. */
interface Visit {
  readonly path: string;
  readonly kept?: Readonly<Record<string, string>>;
}

const KEPT = { "spanbook.notebook": "a6" };

const VISITS: Readonly<Record<string, Visit>> = {
  ...Object.fromEntries(Object.entries(PAGE_KINDS).map(([kind, path]) => [kind, { path }])),
  "the list of patterns, on a kept notebook": {
    path: PAGE_KINDS["the list of patterns"] ?? "",
    kept: KEPT,
  },
  "the front page, on a kept notebook": { path: "index.html", kept: KEPT },
  "the list of patterns, narrowed down": { path: "patterns/index.html#on=a6&for=week" },
  "the list of patterns, by title": { path: "patterns/index.html#sort=title", kept: KEPT },
  "the list of patterns, searched": { path: "patterns/index.html#find=greenhouse" },
  "the fit page with another's link": {
    path: "fit/index.html#v=1&paper=A6&pitch=4&dots=24,35",
    kept: { "spanbook.fit": "#v=1&paper=A5&pitch=5&dots=26,38" },
  },
  "the fit page with a broken link": { path: "fit/index.html#v=9" },
  "the recipe page with a recipe": { path: "fit/recipe/index.html#v=1&from=two-row-week" },
};

/** From before the first paint, the browser notes all shifts, and what moved (Layout Instability API). */
function watchShifts(): void {
  const shifts: [size: number, moved: string][] = [];
  Object.assign(window, { shifts });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      const sources: readonly object[] = Reflect.get(entry, "sources");
      const words = sources.map((source) => {
        const [node, from, to] = ["node", "previousRect", "currentRect"].map((key) =>
          Reflect.get(source, key),
        );
        return `${node?.textContent?.trim().slice(0, 40)} from ${JSON.stringify(from)} to ${JSON.stringify(to)}`;
      });
      shifts.push([Number(Reflect.get(entry, "value")), words.join("; ")]);
    }
  }).observe({ type: "layout-shift", buffered: true });
}

interface Shift {
  readonly sum: number;
  /** What moved, from where to where. */
  readonly moved: string;
}

/** All of it so far. A shift is told of after the frame in which it came. */
async function shiftOf(page: Page): Promise<Shift> {
  return await page.evaluate(async () => {
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    for (let frames = 0; frames < 4; frames += 1) await frame();
    await new Promise((resolve) => setTimeout(resolve, 50));
    const shifts: readonly [number, string][] = Reflect.get(window, "shifts");
    const sum = shifts.reduce((sum, [size]) => sum + size, 0);
    return { sum, moved: shifts.map(([size, moved]) => `${size}: ${moved}`).join("\n") };
  });
}

/** Opens a page whose fonts come only after it was first seen; what moves later on is moved by its reader. */
async function settled(page: Page, { path, kept = {} }: Visit): Promise<void> {
  await page.addInitScript((texts) => {
    for (const [name, text] of Object.entries(texts)) localStorage.setItem(name, text);
  }, kept);
  await page.addInitScript(watchShifts);
  let release = () => {};
  const isSeen = new Promise<void>((resolve) => {
    release = resolve;
  });
  await page.route("**/*.woff2", async (route) => {
    await isSeen;
    await route.continue();
  });
  await page.goto(`${testBrowser.address}${path}`, { waitUntil: "commit" });
  await page.waitForFunction(
    () => performance.getEntriesByName("first-contentful-paint").length > 0,
  );
  release();
  await page.waitForLoadState("networkidle");
  await page.evaluate(() => document.fonts.ready);
}

/** A wide page has room for what comes late; only what scripts fill in is looked at there once more, in the gate a part of it. */
const WIDE = checkSample(
  Object.entries(VISITS).filter(
    ([, { path }]) => !/^(guide|measure|404|notebooks\/index)/.test(path),
  ),
);

describe.concurrent.each([
  [360, Object.entries(VISITS)],
  [1440, WIDE],
] as const)("%i px wide", (width, visits) => {
  it.each(visits)("%s stands still", async (_, visit) => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser, {
      viewport: { width, height: 900 },
    });
    await settled(page, visit);
    expect(await page.evaluate(() => document.fonts.check("16px 'Fira Sans'"))).toBe(true);
    const { sum, moved } = await shiftOf(page);
    expect(sum, moved).toBeLessThan(MOST_SHIFT);
    expect(complaints).toEqual([]);
    await close();
  });

  it("a planted push is found", async () => {
    const { page, close } = await watchedPage(testBrowser.browser, {
      viewport: { width, height: 900 },
    });
    await settled(page, { path: "index.html" });
    await page.evaluate(() => {
      const push = document.createElement("p");
      push.style.height = "300px";
      document.querySelector("main")?.prepend(push);
    });
    const { sum, moved } = await shiftOf(page);
    expect(sum).toBeGreaterThan(MOST_SHIFT);
    expect(moved).toContain("from {");
    await close();
  });
});
