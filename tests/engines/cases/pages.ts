/** One page of each kind, in the gate of every fourth, on a phone: it is there, nothing goes wrong on it, and it does not run off sideways. */
import { expect } from "vitest";
import { PAGE_KINDS } from "../../browser/page-kinds.ts";
import { checkSample } from "../../sweep/sweep-size.ts";
import type { Step } from "./step.ts";

export const PAGES: readonly Step[] = [
  [
    "opens one page of each kind, 390 px wide: set in its letters, and nowhere wider than the screen",
    async (hand, book) => {
      await hand.engine.resize(390, 844);
      const faults = [];
      for (const path of checkSample(Object.values(PAGE_KINDS))) {
        await hand.open(book.whole(path));
        // What the scripts of a page do at once is done with its second frame.
        const found = await hand.engine.run(async () => {
          await document.fonts.ready;
          await new Promise(requestAnimationFrame).then(() => new Promise(requestAnimationFrame));
          const { scrollWidth, clientWidth } = document.documentElement;
          const isSet = document.fonts.check("1em 'Fira Sans'") && document.querySelector("h1");
          return [isSet ? "set" : "not set", scrollWidth - clientWidth];
        });
        if (String(found) !== "set,0") faults.push(`${path}: ${found}`);
      }
      expect(faults).toEqual([]);
    },
  ],
];
