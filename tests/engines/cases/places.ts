/** Where else a book is read: from disk, without a connection, where nothing may be kept. */
import { expect } from "vitest";
import { stagedPage } from "../staged-page.ts";
import { TO_THE_TITLE, titleDrawn } from "./recipe-title.ts";
import type { Step } from "./step.ts";

export const PLACES: readonly Step[] = [
  [
    "without a connection: what was looked at is there, can be worked with, and the rest is said not to be",
    async (hand, book) => {
      await hand.open(book.served("strip/index.html#v=1&across=seed-list"));
      await hand.until(workerKeeps, ["index.html", "../assets/print.js"]);
      book.connect(false);
      try {
        await hand.open(book.served("guide/counting/index.html"));
        await hand.reads("h1", "Counting dots");
        await hand.until(() => getComputedStyle(document.body).fontFamily.includes("Fira Sans"));
        await hand.open(book.served("patterns/two-row-week/a6/index.html"));
        await hand.reads("h1", "This page is not on this device yet");
        await hand.open(book.served("strip/index.html#v=1&across=seed-list"));
        await hand.press('[data-do="save-strip-pdf"]');
        expect((await hand.saved(".pdf")).length).toBeGreaterThan(1_000);
      } finally {
        book.connect(true);
      }
    },
  ],
  [
    "from disk: a notebook is fitted and kept, the gallery is drawn for it, files are saved",
    async (hand, book) => {
      await hand.open(book.onDisk("fit/index.html"));
      await hand.fill("#dots-across", "24");
      await hand.reads('[data-part="tally"]', "24 across");
      await hand.reads('[data-part="mine"]', "A5, 24 × 38");
      await hand.press('[data-do="save-page-pdf"]');
      expect((await hand.saved(".pdf")).length).toBeGreaterThan(1_000);
      await hand.open(book.onDisk("patterns/index.html"));
      await hand.until(
        () => document.querySelectorAll('.card img[src^="data:image/svg+xml,%3Csvg%20"]').length,
      );
      await hand.fill("#find", "halves");
      await hand.until(() => location.hash.includes("halves"));
      await hand.press(".card a", "Halves");
      await hand.reads(".lede", "A5, 24 × 38");
    },
  ],
  [
    "from disk: the editor reads a recipe, and a photo is counted without a worker",
    async (hand, book) => {
      await hand.open(book.onDisk("fit/recipe/index.html"));
      const before = await titleDrawn(hand);
      await hand.press(".editor-host");
      await hand.engine.type(`${TO_THE_TITLE} again`);
      await hand.reads(".plate svg > title", before.replace(",", " again,"));
      await hand.open(book.onDisk("fit/index.html"));
      await hand.press("summary", "Count the dots from a photo");
      await hand.until(() => document.querySelector("#photo-file"));
      await hand.choose("#photo-file", "page.png", await stagedPage());
      await hand.reads(".photo-result", "20 across and 28 down");
    },
  ],
  [
    "where nothing may be kept: the page says so and works",
    async (hand, book) => {
      await hand.open(book.refused("fit/index.html"));
      await hand.fill("#dots-across", "24");
      await hand.reads('[data-part="tally"]', "24 across");
      await hand.until(() => document.querySelector('[data-part="not-kept"]')?.checkVisibility());
      await hand.until(() => location.hash.includes("dots=24,38"));
    },
  ],
];

/**
 * Has the worker kept what the page asks it to keep? It is asked itself: once WebKitGTK has had a page from disk, a page
 * and its worker no longer see the same caches.
 */
async function workerKeeps(paths: readonly string[]): Promise<boolean> {
  const { active } = await navigator.serviceWorker.ready;
  const keep = paths.map((path) => new URL(path, location.href).href);
  return new Promise((resolve) => {
    navigator.serviceWorker.addEventListener("message", ({ data }) => {
      if (data.of === keep.length && "failures" in data) resolve(data.failures === 0);
    });
    navigator.serviceWorker.startMessages();
    active?.postMessage({ keep });
  });
}
