/** Imports point one way, from the doors down to the measures. */
import { describe, expect, it } from "vitest";
import { importIssues, importsOf } from "./import-rules.ts";
import { sourceFiles } from "./source-files.ts";

describe("the house", () => {
  // The scripts that make a committed table run by hand, beside it: they are no part of the program.
  const files = new Map(
    [...sourceFiles(["src", "site"], [".ts", ".mts", ".mjs"])].filter(
      ([path]) => !/^src\/calendar\/names\/.*\.mjs$/.test(path),
    ),
  );

  it("is looked at whole", () => {
    const imports = [...files.values()].flatMap((text) => importsOf(text));
    expect(files.size).toBeGreaterThan(60);
    expect(imports.length).toBeGreaterThan(150);
  });

  it("imports one way only", () => {
    expect(importIssues(files)).toEqual([]);
  });
});

describe("a planted wrong import is found", () => {
  const divide = ["src/divide/divide.ts", ""] as const;
  const plan = ["src/plan/plan.ts", ""] as const;
  it.each<[string, Record<string, string>, string | readonly string[]]>([
    [
      "a lower folder that imports a higher one",
      { "src/divide/a.ts": 'import { x } from "../plan/plan.ts";' },
      "src/divide/a.ts: src/divide may not import src/plan",
    ],
    [
      "a type, too",
      { "src/measure/a.ts": 'import type { X } from "../divide/divide.ts";' },
      "src/measure/a.ts: src/measure may not import src/divide",
    ],
    [
      "a re-export",
      { "src/issue/a.ts": 'export { x } from "../plan/plan.ts";' },
      "src/issue/a.ts: src/issue may not import src/plan",
    ],
    [
      "an import over several lines",
      { "src/recipe/a.ts": 'import {\n  x,\n  y,\n} from "../plan/plan.ts";' },
      "src/recipe/a.ts: src/recipe may not import src/plan",
    ],
    [
      "drawing that knows of paper",
      { "src/draw/a.ts": 'import "../print/b.ts";', "src/print/b.ts": "" },
      "src/draw/a.ts: src/draw may not import src/print",
    ],
    [
      "Eleventy outside the pages",
      { "src/draw/a.ts": 'import Eleventy from "@11ty/eleventy";' },
      "src/draw/a.ts: src/draw may not import @11ty/eleventy",
    ],
    [
      "the file system below the build",
      { "src/plan/a.ts": 'import { readFileSync } from "node:fs";' },
      "src/plan/a.ts: src/plan may not import node:fs",
    ],
    [
      "a file that is not there",
      { "src/plan/a.ts": 'import "./gone.ts";' },
      "src/plan/a.ts: imports src/plan/gone.ts, which does not exist",
    ],
    [
      "a folder that nobody gave a place",
      { "src/misc/a.ts": 'import "../plan/plan.ts";' },
      "src/misc/a.ts: src/misc has no place in the house",
    ],
    [
      "the build that knows the page's scripts",
      { "src/build/cli/a.ts": 'import "../../../site/script/b.ts";', "site/script/b.ts": "" },
      "src/build/cli/a.ts: src/build may not import site",
    ],
    [
      "a page's script that knows the build",
      {
        "site/script/fit/a.ts": 'import type { X } from "../../../src/build/b.ts";',
        "src/build/b.ts": "",
      },
      "site/script/fit/a.ts: site may not import src/build",
    ],
    [
      "a page that knows another page",
      { "site/script/fit/a.ts": 'import "../gallery/b.ts";', "site/script/gallery/b.ts": "" },
      "site/script/fit/a.ts: site/script/fit may not import site/script/gallery",
    ],
    [
      "a floor that knows the one above it",
      { "src/issue/facts/a.ts": 'import "../words/b.ts";', "src/issue/words/b.ts": "" },
      "src/issue/facts/a.ts: src/issue/facts may not import src/issue/words",
    ],
    [
      "a package in the wrong place",
      { "src/view/a.ts": 'import * as zod from "zod";' },
      "src/view/a.ts: src/view may not import zod",
    ],
    [
      "what is kept on the device, known elsewhere",
      { "site/script/fit/a.ts": "localStorage.clear();" },
      "site/script/fit/a.ts: may not use localStorage",
    ],
    [
      "the address, changed elsewhere",
      { "site/script/ui/a.ts": 'history.pushState(null, "", "#a");' },
      "site/script/ui/a.ts: may not use the address",
    ],
    [
      "a change of the address, heard elsewhere",
      { "site/script/ui/a.ts": 'window.addEventListener("hashchange", read);' },
      "site/script/ui/a.ts: may not use the address",
    ],
    [
      "a hash made elsewhere",
      { "src/build/web/a.ts": "const hash = createHash(name);" },
      "src/build/web/a.ts: may not use createHash",
    ],
    [
      "a clock in the engine",
      { "src/plan/a.ts": "const now = Date.now();" },
      "src/plan/a.ts: may not use the surroundings of a program",
    ],
    [
      "a page that brings the printing along",
      {
        "site/script/fit/a.ts": 'import { p } from "../ui/b.ts";',
        "site/script/ui/b.ts": 'import { p } from "../../../src/print/pdf/p.ts";',
        "src/print/pdf/p.ts": "",
      },
      [
        "site/script/fit/a.ts: brings along what is heavy, by way of site/script/ui/b.ts",
        "site/script/ui/b.ts: brings along what is heavy, by way of src/print/pdf/p.ts",
      ],
    ],
    [
      "a page that brings a reader of YAML along",
      {
        "site/script/gallery/a.ts": 'import { read, type R } from "../../../src/source/r.ts";',
        "src/source/r.ts": 'import { parse } from "yaml";',
      },
      ["site/script/gallery/a.ts: brings along what is heavy, by way of src/source/r.ts"],
    ],
    [
      "a sentence in a drawing",
      { "src/draw/page/a.ts": 'const said = "Two steps are left over.";' },
      ['src/draw/page/a.ts: holds a sentence: const said = "Two steps are left over.";'],
    ],
    [
      "a cycle",
      { "src/plan/a.ts": 'import "./b.ts";', "src/plan/b.ts": 'import "./a.ts";' },
      "src/plan/a.ts: imports itself by way of src/plan/b.ts",
    ],
  ])("%s", (_, planted, issue) => {
    expect(importIssues(new Map([divide, plan, ...Object.entries(planted)]))).toEqual(
      [issue].flat(),
    );
  });
});

describe("what is allowed beside it", () => {
  it.each<[string, Record<string, string>]>([
    [
      "types of what is heavy",
      {
        "site/script/fit/a.ts": 'import type { P } from "../../../src/print/pdf/p.ts";',
        "src/print/pdf/p.ts": "",
      },
    ],
    [
      "what is heavy in a part of its own",
      {
        "site/script/lazy/print/print.ts": 'import { p } from "../../../../src/print/pdf/p.ts";',
        "src/print/pdf/p.ts": "",
      },
    ],
    [
      "a meaning beside its key",
      { "src/recipe/a-keys.ts": 'const meaning = "Empty steps inside.";' },
    ],
    ["an error for developers", { "src/draw/a.ts": 'throw new RangeError("No such role here");' }],
  ])("%s", (_, files) => {
    expect(importIssues(new Map(Object.entries(files)))).toEqual([]);
  });
});
