/** The first half of a keeper's journey: asks how a notebook divides, finds a pattern, draws along, and fits it to their own notebook. */
import { expect } from "vitest";
import { KEYS } from "../drivers/engine.ts";
import type { Step } from "./step.ts";

export const READING: readonly Step[] = [
  [
    "reads thirds with a gap off the front page as numbers are typed",
    async (hand, book) => {
      await hand.open(book.served("index.html"));
      await hand.fill("#dots-across", "24");
      await hand.fill("#dots-down", "35");
      await hand.reads('[data-part="answer"]', "Thirds with a gap of 1: 7 · 7 · 7");
      await hand.press('[data-part="division-table"] button, table button', "6");
      await hand.reads('[data-part="answer"]', "6");
      await hand.reads('[data-part="mine"]', "A5, 24 × 35");
      await hand.reads("[data-today] a", "Month on one page, ");
    },
  ],
  [
    "finds a pattern in the gallery by words, by filters, and drawn for that notebook",
    async (hand, book) => {
      await hand.open(book.served("patterns/index.html"));
      await hand.until(() => document.querySelector<HTMLSelectElement>("#on")?.value === "_mine");
      await hand.fill("#find", "month one page");
      await hand.until(() => location.hash.includes("month"));
      await hand.press(".filters label, label", "Nothing left over");
      await hand.until(() => location.hash.includes("fit=even"));
      await hand.press("label", "All");
      await hand.until(
        () =>
          document.querySelectorAll('.card img[src^="data:image/svg+xml,%3Csvg%20"]').length > 0,
      );
      await hand.press(".card a", "Month on one page");
      await hand.reads(".lede", "A5, 24 × 35");
    },
  ],
  [
    "picks a month on the pattern's page and sees its days",
    async (hand) => {
      await hand.fill("#dates", "2027-05");
      await hand.reads('[data-part="dates-words"]', "May 2027: 31 days, in 6 weeks");
      await hand.reads(".plate svg", "May 2027");
      await hand.press('[data-do="dates-after"]');
      await hand.reads('[data-part="dates-words"]', "June 2027: 30 days");
      await hand.until(() => location.hash.includes("dates=2027-06"));
    },
  ],
  [
    "draws along by buttons and by keys, and comes back to the whole page",
    async (hand) => {
      await hand.press('[data-do="start"]');
      await hand.until(() => location.hash.includes("marks"));
      await hand.press('[data-do="next"]');
      await hand.engine.type(KEYS.right);
      await hand.until(() => location.hash.includes("stroke=1"));
      await hand.until(() => document.querySelector(".along-lines .along-now"));
      await hand.reads('[data-part="count"]', "1 of ");
      await hand.press('[data-do="stop"]');
      await hand.until(() => !document.querySelector(".along-lines > *"));
    },
  ],
  [
    "fits another notebook: numbers, drawing and address follow each key, and a PDF is saved",
    async (hand, book) => {
      await hand.open(book.served("fit/index.html"));
      await hand.fill("#dots-across", "25");
      await hand.engine.type(KEYS.tab);
      await hand.reads('[data-part="tally"]', "25 across");
      await hand.select("#pattern", "seed-list");
      await hand.reads(".plate svg > title", "Seed list");
      await hand.until(() => location.hash.includes("dots=25,35"));
      await hand.press('[data-do="save-page-pdf"]');
      const pdf = await hand.saved("seed-list-a5-25-35.pdf");
      expect(Buffer.from(pdf).toString("latin1", 0, 8)).toBe("%PDF-1.7");
    },
  ],
];
