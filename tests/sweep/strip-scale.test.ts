/** Every strip on every notebook in true size, as a browser measures it. */
import { expect, inject, it } from "vitest";
import { drawnLines } from "../browser/drawn-lines.ts";
import { expectTicks } from "../browser/expect-ticks.ts";
import { onDisk, openTestBrowser } from "../browser/test-browser.ts";
import { bookContent } from "../setup/demo-content.ts";
import { sweepSample } from "./sweep-size.ts";

const book = inject("book");
const content = await bookContent(inject("content"));
const { strips, notebooks } = content;
const PAIRS = strips.flatMap((strip) =>
  notebooks.map((notebook) => [strip.slug, notebook.slug] as const),
);

const testBrowser = openTestBrowser();

it("each tick of a strip lies within 0.05 mm of its place, for every notebook", async () => {
  const page = await testBrowser.browser.newPage({ viewport: { width: 1200, height: 800 } });
  const sample = sweepSample(PAIRS);
  expect(sample.length).toBeGreaterThan(0);
  for (const [strip, notebook] of sample) {
    await page.goto(onDisk(`strips/${strip}/${notebook}/strip.svg`));
    expectTicks(await drawnLines(page, "svg"), { book, strip, notebook });
  }
}, 1_800_000);
