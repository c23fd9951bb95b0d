/** A keeper's journey in three engines: one table of steps, walked by each. */
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { IS_SWEEP } from "../sweep/sweep-size.ts";
import { MAKING } from "./cases/making.ts";
import { PAGES } from "./cases/pages.ts";
import { PLACES } from "./cases/places.ts";
import { PRINTING } from "./cases/printing.ts";
import { READING } from "./cases/reading.ts";
import type { Step } from "./cases/step.ts";
import { startChromium } from "./drivers/chromium.ts";
import type { Engine } from "./drivers/engine.ts";
import { startFirefox } from "./drivers/firefox.ts";
import { startWebkit } from "./drivers/webkit.ts";
import { type Hand, openHand } from "./hand.ts";
import { openWatchedBook, type WatchedBook } from "./watched-book.ts";

const ALL: readonly Step[] = [...READING, ...MAKING, ...PLACES, ...PAGES];

/** Most of what is tested in the gate is tested in Chromium. */
const CHROMIUM = ["Chromium", startChromium, [...ALL, ...PRINTING]] as const;

const ENGINES = [
  ...(IS_SWEEP ? [CHROMIUM] : []),
  ["Firefox", startFirefox, [...ALL, ...PRINTING]],
  // Its driver has no command for printing.
  ["WebKit", startWebkit, ALL],
] as const;

let book: WatchedBook;
beforeAll(async () => {
  book = await openWatchedBook({
    book: inject(IS_SWEEP ? "book" : "few"),
    whole: inject("book"),
    tiny: inject("tiny"),
  });
});
afterAll(() => book.close());

describe.each(ENGINES)("a keeper with %s", (_, start, steps) => {
  let engine: Engine;
  let hand: Hand;
  beforeAll(async () => {
    engine = await start();
    await engine.resize(1280, 900);
    hand = openHand(engine);
  });
  afterAll(() => engine?.close());

  it.each(steps)("%s", async (...[, walk]) => {
    const failure = await walk(hand, book).catch((error: unknown) => error);
    expect({ failure, complaints: await hand.complaints() }).toEqual({ complaints: [] });
  });
});
