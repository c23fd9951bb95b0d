/** A function can be seen whole; the longest ones are switches that say a sentence for each kind of fact. */
import { describe, expect, it } from "vitest";
import { longFunctions } from "./long-functions.ts";
import { sourceFiles } from "./source-files.ts";

const MOST_LINES = 64;

describe("the house", () => {
  const files = sourceFiles(["src", "site"], [".ts", ".mjs", ".js"]);

  it("is looked at whole", () => {
    const paths = [...files.keys()];
    expect(paths.filter((path) => path.startsWith("site/script/")).length).toBeGreaterThan(60);
    expect(paths).toContain("src/build/bundle/bundle-assets.mjs");
  });

  it(`has no function of more than ${MOST_LINES} lines`, () => {
    expect(longFunctions(files, MOST_LINES)).toEqual([]);
  });
});

describe("a planted long function is found", () => {
  /** What stands between a function's first line and its last. */
  const body = (lines: number) => "  act();\n".repeat(lines - 2);
  const long = MOST_LINES + 1;

  it.each([
    ["a declared one", "a.ts", `export function draw(): void {\n${body(long)}}\n`],
    ["one that a name is given to", "a.ts", `const draw = () => {\n${body(long)}};\n`],
    ["a method", "a.ts", `class Pen {\n  draw(): void {\n${body(long)}}\n}\n`],
    ["one in an object", "a.ts", `const pen = {\n  draw: async () => {\n${body(long)}},\n};\n`],
    [
      "one in a script without types",
      "a.mjs",
      `export async function draw(to) {\n${body(long)}}\n`,
    ],
    ["an inner one", "a.ts", `function f() {\n  return function draw() {\n${body(long)}};\n}\n`],
  ])("%s", (_, path, text) => {
    expect(longFunctions(new Map([[path, text]]), MOST_LINES)).toContain(
      `${path}: draw has ${long} lines`,
    );
  });

  it("by its place where it has no name", () => {
    const text = `\nrun(() => {\n${body(long)}});\n`;
    expect(longFunctions(new Map([["a.ts", text]]), MOST_LINES)).toEqual([
      `a.ts: what begins in line 2 has ${long} lines`,
    ]);
  });

  it("but not one that is just short enough, whatever is said above it", () => {
    const text = `${"// So it is.\n".repeat(9)}function draw() {\n${body(MOST_LINES)}}\n`;
    expect(longFunctions(new Map([["a.ts", text]]), MOST_LINES)).toEqual([]);
  });
});
