/** No kind of page shuts anybody out, as far as a program can tell: WCAG 2.2 A and AA by axe-core, by day and by night. */
import { describe, expect, it } from "vitest";
import { IS_SWEEP } from "../sweep/sweep-size.ts";
import { axeFindings, axeFindingsOfLooks } from "./axe-findings.ts";
import { PAGE_KINDS } from "./page-kinds.ts";
import { fewWith, onDisk, openTestBrowser } from "./test-browser.ts";

const testBrowser = openTestBrowser();

/**
 * Colours change with the light and not with the width; what is shown changes with the width and not with the light. So a
 * page is looked at on a phone by day and on a large screen by night, there in the gate by the rules for which that matters.
 */
const PHONE = { colorScheme: "light", viewport: { width: 390, height: 900 } } as const;
const SCREEN = { width: 1440, height: 900 };

describe("on a phone by day, and on a large screen by night", () => {
  it.each(Object.entries(PAGE_KINDS))("%s has nothing that axe objects to", async (_, path) => {
    await testBrowser.onPage(onDisk(path, fewWith(path)), PHONE, async (page) => {
      expect(await axeFindings(page)).toEqual([]);
      await page.setViewportSize(SCREEN);
      await page.emulateMedia({ colorScheme: "dark" });
      expect(await (IS_SWEEP ? axeFindings : axeFindingsOfLooks)(page)).toEqual([]);
      await page.setViewportSize(PHONE.viewport);
      await page.emulateMedia({ colorScheme: PHONE.colorScheme });
    });
  });
});

describe("a planted fault", () => {
  it("is found: a picture without words, and letters that are too pale", async () => {
    await testBrowser.onPage(onDisk("index.html"), {}, async (page) => {
      await page.evaluate(() => {
        const picture = document.createElement("img");
        picture.src = "data:image/gif;base64,R0lGODlhAQABAAAAACw=";
        const words = document.createElement("p");
        words.textContent = "too pale";
        words.style.color = "#ddd8cc";
        document.querySelector("main")?.append(picture, words);
      });
      const rules = (await axeFindings(page)).map(({ rule }) => rule);
      expect(rules).toContain("image-alt");
      expect(rules).toContain("color-contrast");
      const ofLooks = (await axeFindingsOfLooks(page)).map(({ rule }) => rule);
      expect(ofLooks).toEqual(["color-contrast"]);
    });
  });
});
