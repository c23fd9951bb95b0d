/** Chromium, in the browser that all tests share. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { inject } from "vitest";
import { type Engine, KEYS } from "./engine.ts";

/** What playwright calls the keys that have no character. */
const NAMES: Readonly<Record<string, string>> = {
  [KEYS.backspace]: "Backspace",
  [KEYS.tab]: "Tab",
  [KEYS.enter]: "Enter",
  [KEYS.end]: "End",
  [KEYS.up]: "ArrowUp",
  [KEYS.down]: "ArrowDown",
  [KEYS.right]: "ArrowRight",
};

export async function startChromium(): Promise<Engine> {
  const downloads = mkdtempSync(join(tmpdir(), "spanbook-chromium-"));
  const browser = await chromium.connect(inject("browser"));
  const page = await browser.newPage();
  page.on("download", (download) => {
    void download.saveAs(join(downloads, download.suggestedFilename()));
  });
  return {
    downloads,
    open: async (address) => {
      await page.goto(address);
    },
    run: (script, ...given) => page.evaluate(`(${script})(...${JSON.stringify(given)})`),
    press: (x, y) => page.mouse.click(x, y),
    type: async (keys) => {
      for (const key of keys) await page.keyboard.press(NAMES[key] ?? key);
    },
    choose: (selector, path) => page.setInputFiles(selector, path),
    resize: (width, height) => page.setViewportSize({ width, height }),
    print: () => page.pdf({ preferCSSPageSize: true, format: "A4" }),
    close: async () => {
      await browser.close();
      rmSync(downloads, { recursive: true });
    },
  };
}
