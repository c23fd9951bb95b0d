/** Files stay short, and each says at its head what it knows. */
import { describe, expect, it } from "vitest";
import { sourceFiles } from "./source-files.ts";

const MOST_LINES = 200;

describe.each([...sourceFiles(["src", "site"], [".ts"])])("%s", (_, text) => {
  it(`has at most ${MOST_LINES} lines`, () => {
    expect(text.split("\n").length).toBeLessThanOrEqual(MOST_LINES);
  });

  it("opens with what it knows", () => {
    expect(text).toMatch(/^\/\*\* [A-Z][\s\S]{20,}?\*\//);
  });
});
