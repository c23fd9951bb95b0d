/** A hand in a test: it clicks and types as a person does, and every click and key is counted. */
import type { Locator, Page } from "playwright-core";

/** Counts what a hand does: every key and every click. */
export function openHand(page: Page) {
  let count = 0;
  return {
    count: () => count,
    click: async (target: Locator) => {
      count += 1;
      await target.click();
    },
    type: async (text: string, ...keys: readonly string[]) => {
      for (const key of [...text, ...keys]) {
        count += 1;
        await page.keyboard.press(key === " " ? "Space" : key);
      }
    },
  };
}
