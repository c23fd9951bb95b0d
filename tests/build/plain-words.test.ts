/** Words that were given up for plainer ones stand on no page of the book: one word for one thing. */
import { describe, expect, inject, it } from "vitest";
import { pagesIn } from "./files-in.ts";

/** What was said before, and what is said instead. */
const GIVEN_UP = [
  [/>(comes? out even|leaves? nothing over)/i, "Nothing left over"],
  [/something left over/i, "2 steps left over, across"],
  [/what the paper says/i, "Uneven on your paper"],
  [/take it along/i, "Downloads"],
  [/make it yours/i, "Edit this recipe"],
  [/narrow down/i, "Filters"],
  [/\btrue size\b/i, "Actual size"],
  [/forget what/i, "Clear saved data"],
  [/must be there/i, "is required"],
  [/>left out: /i, "Default: "],
  [/will not do/i, "has an invalid value"],
  [/a stick\b/i, "a USB stick"],
  [/this is alternative/i, "Second layout"],
  [/bound at the \w+ nowhere/i, "Binding: none"],
  [/of two middles/i, "Where there are two middles"],
  [/this waits for/i, "Correct … first"],
  [/nobody can see/i, "what is hidden, and from whom"],
  [/put it on the strip/i, "Add to strip"],
  [/\b(sieve|verdict)\b/i, "a word of the keeper's"],
  [/<span>(before|after)</i, "Previous, Next"],
  [/at a glance/i, "on one page"],
] as const;

/** What a reader sees of a page: its texts, and the words of its attributes. A recipe's own story may tell what it likes. */
const pages = [...pagesIn(inject("book"))].filter(([path]) => !path.startsWith("setups/"));
const seen = pages.map(([path, html]) => [path, withoutStory(html)] as const);

function withoutStory(html: string): string {
  return html
    .replace(/<script[\s\S]*?<\/script>/g, "")
    .replace(/<div class="prose[\s\S]*?<\/div>/g, "");
}

describe("the book", () => {
  it.each(GIVEN_UP)("says for %s: %s", (words) => {
    const saying = seen.flatMap(([path, html]) => {
      const [found] = words.exec(html) ?? [];
      return found === undefined ? [] : [`${path}: ${found}`];
    });
    expect(saying.slice(0, 5)).toEqual([]);
  });

  it("is looked at where it says what it should", () => {
    const all = seen.map(([, html]) => html).join("\n");
    for (const words of ["Nothing left over", "Downloads", "Edit this recipe", "Add to strip"])
      expect(all).toContain(words);
  });
});
