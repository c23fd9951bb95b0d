/** Drawing along in a browser, from disk: every stroke by keys and by buttons, its words and its line on paper. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectedSteps, type Told } from "./expected-steps.ts";
import { onDisk, openTestBrowser } from "./test-browser.ts";
import { type WatchedPage, watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser();

/** A single page counted from the edge, and a spread counted from the first dot. */
const PLACES = [
  ["two-row-week", "a5"],
  ["week-in-columns", "a5-dots"],
] as const;
const WIDTHS = [390, 1440] as const;

function addressOf(pattern: string, notebook: string): string {
  return onDisk(`patterns/${pattern}/${notebook}/index.html`);
}

/** What the page shows now; of marks only whether there are any. */
function shown(page: Page): Promise<Told> {
  return page.evaluate(() => {
    const text = (part: string) =>
      document.querySelector(`[data-part="${part}"]`)?.textContent ?? "";
    const d = document.querySelector(".along-lines .along-now")?.getAttribute("d") ?? "none";
    const isMarks = location.hash.startsWith("#marks");
    return {
      hash: location.hash,
      count: text("count"),
      words: text("words"),
      d: isMarks && d !== "none" ? "" : d,
    };
  });
}

/** What is said when all is drawn: nothing is left to draw now. */
function drawnWords(pattern: string, steps: readonly Told[]): Told {
  const strokes = steps.filter(({ hash }) => hash.startsWith("#stroke")).length;
  const words = pattern === "week-in-columns" ? "Both pages are drawn." : "The page is drawn.";
  return { hash: "#drawn", count: `${strokes} of ${strokes} lines`, words, d: "none" };
}

/** How many strokes stand on the drawing as done; marks have two short lines each. */
function drawnLines(page: Page): Promise<number> {
  return page.locator(".along-lines .along-done").evaluate((path) => {
    const lines = (path.getAttribute("d") ?? "").split("M").slice(1);
    const isLong = (line: string) => {
      const [, x = "", y = "", way = "", to = ""] = /^(\S+) (\S+)([HV])(\S+)$/.exec(line) ?? [];
      return Math.abs(Number(to) - Number(way === "H" ? x : y)) !== 3;
    };
    return lines.filter(isLong).length;
  });
}

type Way = readonly [string, (page: Page, key: string, button: string) => Promise<void>];

const WAYS: readonly [Way, Way] = [
  ["buttons", (page, _, button) => page.getByRole("button", { name: button, exact: true }).click()],
  ["keys", (page, key) => page.keyboard.press(key)],
];

/** The buttons are for a phone beside the notebook, the keys for a desk; steps and words know nothing of either. */
const JOURNEYS = PLACES.map(([pattern, notebook], index) => {
  const [way, act] = WAYS[index] ?? WAYS[0];
  return { pattern, notebook, width: WIDTHS[index] ?? 390, way, act };
});

describe.each(JOURNEYS)("$pattern on $notebook, $width px wide, by $way", (journey) => {
  const { pattern, notebook, width, act } = journey;
  let watched: WatchedPage;
  let page: Page;

  beforeAll(async () => {
    watched = await watchedPage(testBrowser.browser, { viewport: { width, height: 844 } });
    page = watched.page;
    await page.goto(addressOf(pattern, notebook));
  });
  afterAll(() => watched.close());

  it("goes through every step on and back again, each with its words and its line", async () => {
    const steps = expectedSteps({ pattern, notebook });
    await page.getByRole("button", { name: "Start drawing" }).click();
    const on: Told[] = [await shown(page)];
    for (let index = 1; index < steps.length; index += 1) {
      await act(page, "ArrowRight", "Next");
      on.push(await shown(page));
    }
    expect(on).toEqual(steps);
    const next = page.getByRole("button", { name: "Next", exact: true });
    expect(await next.getAttribute("aria-disabled")).toBe("false");
    await act(page, "ArrowRight", "Next");
    const drawn = await shown(page);
    expect(drawn).toEqual(drawnWords(pattern, steps));
    expect(await drawnLines(page)).toBe(steps.filter(({ hash }) => hash.startsWith("#s")).length);
    const after = page.locator(".along-told[aria-live=polite]").getByText("start over");
    expect(await after.isVisible()).toBe(true);
    expect(await next.getAttribute("aria-disabled")).toBe("true");
    await page.keyboard.press("ArrowRight");
    expect(await shown(page)).toEqual(drawn);
    for (const step of steps.toReversed()) {
      await act(page, "ArrowLeft", "Back");
      expect(await shown(page)).toEqual(step);
    }
  });

  it("comes back to the whole page, with nothing left on the drawing", async () => {
    await act(page, "Escape", "Show the whole page");
    expect(await page.evaluate(() => location.hash)).toBe("");
    expect(await page.locator(".along-lines > *").count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Start drawing");
  });

  it("makes the browser complain of nothing", () => {
    expect(watched.complaints).toEqual([]);
  });
});

describe.each(WIDTHS)("the line of now, %i px wide", (width) => {
  it("keeps other lines off but no word: its halo lies below all that is written", async () => {
    const { page, close } = await watchedPage(testBrowser.browser, {
      viewport: { width, height: 844 },
    });
    await page.goto(`${addressOf("two-row-week", "a6")}#stroke=5`);
    const order = await page.evaluate(() => {
      const halo = document.querySelector(".along-halo");
      const words = [...document.querySelectorAll(".plate :is(.d-heading, .d-label)")];
      return words.map((word) =>
        halo && halo.compareDocumentPosition(word) & Node.DOCUMENT_POSITION_FOLLOWING
          ? "over the halo"
          : `under the halo: ${word.textContent}`,
      );
    });
    expect(order.length).toBeGreaterThan(0);
    expect(new Set(order)).toEqual(new Set(["over the halo"]));
    await close();
  });
});
