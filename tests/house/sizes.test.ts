/** Files stay short, and each says at its head what it knows. */
import { expect, it } from "vitest";
import { sourceFiles } from "./source-files.ts";

const MOST_LINES = 200;
const HEAD = /^\/\*\* [A-Z][\s\S]{20,}?\*\//;

/** What is wrong with a file of this text, a line each. */
function faultsOf(path: string, text: string): readonly string[] {
  const lines = text.split("\n").length;
  return [
    ...(lines > MOST_LINES ? [`${path} has ${lines} lines, ${lines - MOST_LINES} too many`] : []),
    ...(HEAD.test(text) ? [] : [`${path} does not open with what it knows`]),
  ];
}

it("files are short and open with what they know", () => {
  const files = sourceFiles(["src", "site"], [".ts"]);
  expect(files.size).toBeGreaterThan(400);
  expect([...files].flatMap(([path, text]) => faultsOf(path, text))).toEqual([]);
});

it("a long file and one without a head are found", () => {
  const head = "/** What a file of this kind knows. */\n";
  expect(faultsOf("a.ts", head)).toEqual([]);
  expect(faultsOf("a.ts", head + "\n".repeat(MOST_LINES))).toEqual([
    "a.ts has 202 lines, 2 too many",
  ]);
  expect(faultsOf("a.ts", "export const a = 1;\n")).toEqual([
    "a.ts does not open with what it knows",
  ]);
});
