/** The book as an app on a phone: it can be put on the home screen, keeps clear of the camera, and keeps the screen on. */
import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { openTestBrowser } from "./test-browser.ts";
import { watchedPage } from "./watched-page.ts";

const testBrowser = openTestBrowser(inject("book"));

/** What a phone on its side keeps for its camera and round corners, in CSS pixels (a phone of today, from memory). */
const INSETS = { top: 24, left: 47, right: 47, bottom: 21 };
const SCREEN = { width: 844, height: 390 };

/** Words and fields of which a part lies outside; a button may reach out with what is bare around its words. */
function outside(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    ({ left, right, width }) => {
      const isPushed = (element: Element): boolean => {
        for (let around = element.parentElement; around; around = around.parentElement) {
          if (around.scrollWidth > around.clientWidth && around.tabIndex === 0) return true;
        }
        return false;
      };
      const found: string[] = [];
      const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let text = words.nextNode(); text; text = words.nextNode()) {
        const range = document.createRange();
        range.selectNodeContents(text);
        const box = range.getBoundingClientRect();
        const element = text.parentElement;
        if (!element?.checkVisibility() || element.closest(".unseen, .skip")) continue;
        if (box.width === 0 || isPushed(element)) continue;
        if (box.left < left - 0.5 || box.right > width - right + 0.5) {
          found.push(`${Math.round(box.left)} to ${Math.round(box.right)}: ${text.textContent}`);
        }
      }
      return found;
    },
    { ...INSETS, width: SCREEN.width },
  );
}

describe("on a phone with a camera in its screen", () => {
  it.each([
    ["the front page", "index.html"],
    ["the list of patterns", "patterns/index.html"],
    ["a pattern", "patterns/two-row-week/a5/index.html"],
    ["the fit page", "fit/index.html"],
    ["a set-up", "setups/march-on-the-lane/a5/index.html"],
  ])("%s has no word under it", async (_, path) => {
    const { page, close } = await watchedPage(testBrowser.browser, { viewport: SCREEN });
    await page.goto(testBrowser.address + path);
    expect((await outside(page)).length).toBeGreaterThan(0);
    // Emulated as the Chrome DevTools Protocol has it, Emulation.setSafeAreaInsetsOverride.
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setSafeAreaInsetsOverride", { insets: INSETS });
    await expect.poll(() => outside(page)).toEqual([]);
    const brand = await page.locator(".brand").boundingBox();
    expect(brand?.y).toBeGreaterThanOrEqual(INSETS.top);
    await close();
  });
});

/** What browsers ask of an app for the home screen (frontendchecklist.io, "Meet PWA installability criteria"). */
const ICONS = ["192x192 any", "512x512 any", "512x512 maskable"];
const DISPLAYS = ["standalone", "minimal-ui", "fullscreen"];

interface Manifest {
  readonly name: string;
  readonly start_url: string;
  readonly display: string;
  readonly icons: readonly { readonly sizes: string; readonly purpose?: string }[];
}

describe("a book on the web", () => {
  it("can be put on the home screen, and opens there without a connection on the keeper's notebook", async () => {
    const { page, close } = await watchedPage(testBrowser.browser, {
      serviceWorkers: "allow",
    });
    await page.goto(`${testBrowser.address}index.html`);
    await page.evaluate(() => navigator.serviceWorker.ready);
    // As the browser itself reads it.
    const session = await page.context().newCDPSession(page);
    const { url, errors, data = "" } = await session.send("Page.getAppManifest");
    const { name, start_url, display, icons }: Manifest = JSON.parse(data);
    expect(errors).toEqual([]);
    expect(name).toBe("The Marrow Lane Pattern Book");
    expect(DISPLAYS).toContain(display);
    const offered = icons.map(({ sizes, purpose = "any" }) => `${sizes} ${purpose}`);
    expect(offered).toEqual(expect.arrayContaining(ICONS));
    const mine = () => page.locator('[data-part="mine"]').textContent();
    await page.goto(`${testBrowser.address}fit/index.html#v=1&paper=B6&pitch=5&dots=24,35`);
    await page.getByLabel("Dots across").fill("23");
    await expect.poll(mine).toBe("B6, 23 × 35");
    await page.context().setOffline(true);
    await page.goto(new URL(start_url, url).href);
    await expect.poll(mine).toBe("B6, 23 × 35");
    await close();
  });
});

/** Notes when the screen is to stay on and when it need not; `isRefused` as on a low battery. */
function watchScreen(isRefused: boolean): void {
  const asked: string[] = [];
  const request = () => {
    asked.push("on");
    if (isRefused) return Promise.reject(new DOMException("low battery", "NotAllowedError"));
    return Promise.resolve({ release: async () => void asked.push("off") });
  };
  Object.defineProperty(navigator, "wakeLock", { value: { request } });
  Object.assign(window, { asked });
}

describe("while somebody draws along", () => {
  it.each([
    ["the screen stays on, again after a look elsewhere", false, ["on", "on", "off"]],
    ["drawing goes on where that is refused", true, ["on", "on"]],
  ])("%s", async (_, isRefused, expected) => {
    const { page, complaints, close } = await watchedPage(testBrowser.browser);
    await page.addInitScript(watchScreen, isRefused);
    await page.goto(`${testBrowser.address}patterns/two-row-week/a5/index.html`);
    const asked = () => page.evaluate(() => Reflect.get(window, "asked"));
    await page.getByRole("button", { name: "Start drawing" }).click();
    await expect.poll(asked).toEqual(["on"]);
    await page.getByRole("button", { name: "Next", exact: true }).click();
    // Screen Wake Lock API: the lock is gone when the page was hidden.
    await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
    await expect.poll(asked).toEqual(["on", "on"]);
    await page.getByRole("button", { name: "Show the whole page" }).click();
    await expect.poll(asked).toEqual(expected);
    await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
    expect(await asked()).toEqual(expected);
    expect(complaints).toEqual([]);
    await close();
  });
});
