/** Which names a file can have, and which name a text gives. */
import { describe, expect, it } from "vitest";
import { isSlug, plainSlug, SLUG, slugFrom } from "../../src/source/slug.ts";

/** Microsoft, "Naming Files, Paths, and Namespaces": reserved names, which no file may have, with or without an ending. */
const DEVICES = [
  ...["con", "prn", "aux", "nul"],
  ...Array.from({ length: 9 }, (_, index) => [`com${index + 1}`, `lpt${index + 1}`]).flat(),
];

describe("a name", () => {
  it.each(DEVICES)("%s is no file's, for Windows keeps it", (name) => {
    expect([isSlug(name), SLUG.test(name)]).toEqual([false, false]);
    expect(plainSlug(name)).toBe(`${name}-1`);
    expect(slugFrom(`notes/${name.toUpperCase()}.md`)).toBe(`${name}-1`);
    expect(isSlug(plainSlug(name))).toBe(true);
  });

  it.each(["con-1", "com", "com0", "com10", "lpt", "console", "a-con", "nul-l", "x"])(
    "%s can be a file's",
    (name) => {
      expect([isSlug(name), plainSlug(name)]).toEqual([true, name]);
    },
  );

  it.each(["", "-a", "A", "a b", "a.b", "ä", "../a", "a".repeat(81)])("%j cannot", (name) => {
    expect(isSlug(name)).toBe(false);
  });
});
