/** Relative addresses, as they must stand in a page for it to work from disk, a sub-path and a root. */
import { describe, expect, it } from "vitest";
import { rel } from "../../src/build/pages/template-filters.ts";

describe("an address as seen from a page", () => {
  it.each([
    ["/", "/", "index.html"],
    ["/patterns/", "/", "patterns/index.html"],
    ["/", "/patterns/", "../index.html"],
    ["/assets/book.css", "/patterns/week/a5/", "../../../assets/book.css"],
    ["/patterns/#week", "/patterns/week/a5/", "../../../patterns/index.html#week"],
    ["/guide/", "/404.html", "guide/index.html"],
    ["/patterns/week/a6/thumb.svg", "/notebooks/a6/", "../../patterns/week/a6/thumb.svg"],
  ])("leads to %s from %s by %s", (to, from, address) => {
    expect(rel(to, from)).toBe(address);
  });

  it("leads back to where it was meant to, whatever the page", () => {
    for (const from of ["/", "/patterns/", "/patterns/week/a5/", "/404.html"]) {
      const base = new URL(from, "file:///book");
      expect(new URL(rel("/notebooks/a5/", from), base).pathname).toBe("/notebooks/a5/index.html");
    }
  });
});
