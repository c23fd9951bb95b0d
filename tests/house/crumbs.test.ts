/** A file that is too small to be an idea lives in the one file that needs it. */
import { describe, expect, it } from "vitest";
import { crumbs } from "./crumbs.ts";
import { sourceFiles } from "./source-files.ts";

const A_FILL = "one of six fills that stand side by side with one signature";

const ON_PURPOSE: Readonly<Record<string, string>> = {
  "site/script/draw-along/step-address.ts": "a rule, tested with the steps",
  "src/build/pages/search-index.ts": "gathers what the search part opens, tested with it",
  "src/calendar/names/regions.ts": "a table that a script makes",
  "src/draw/fill/blank-fill.ts": A_FILL,
  "src/draw/fill/dots-fill.ts": A_FILL,
  "src/draw/fill/lines-fill.ts": A_FILL,
  "src/draw/fill/squares-fill.ts": A_FILL,
};

describe("the house", () => {
  const files = sourceFiles(["src", "site/script"], [".ts", ".mjs"]);
  const tests = sourceFiles(["tests"], [".test.ts"]).keys();

  it("has no crumbs but those that are small on purpose", () => {
    expect(crumbs({ files, tests, onPurpose: ON_PURPOSE })).toEqual([]);
  });
});

describe("a planted file", () => {
  const SMALL = "/** What it knows. */\nexport const x = 1;\n";
  const LARGE = `${SMALL}${"// So it is.\n".repeat(23)}`;
  const using = 'import { x } from "../plan/small.ts";\n';
  const BY_ONE = { "src/plan/small.ts": SMALL, "src/draw/a.ts": using };

  it.each<[string, Record<string, string>, readonly string[], readonly string[]]>([
    ["small and with one importer", BY_ONE, [], ["src/plan/small.ts: belongs into src/draw/a.ts"]],
    [
      "that is passed on by one",
      { ...BY_ONE, "src/draw/a.ts": 'export { x } from "../plan/small.ts";\n' },
      [],
      ["src/plan/small.ts: belongs into src/draw/a.ts"],
    ],
    ["of 25 lines", { ...BY_ONE, "src/plan/small.ts": LARGE }, [], []],
    ["with two importers", { ...BY_ONE, "src/draw/b.ts": using }, [], []],
    ["that nobody imports", { "src/plan/small.ts": SMALL }, [], []],
    ["with a test of its own", BY_ONE, ["tests/plan/small.test.ts"], []],
    [
      "with a test of another",
      BY_ONE,
      ["tests/plan/smaller.test.ts"],
      ["src/plan/small.ts: belongs into src/draw/a.ts"],
    ],
  ])("%s", (_, planted, tests, found) => {
    expect(crumbs({ files: new Map(Object.entries(planted)), tests, onPurpose: {} })).toEqual(
      found,
    );
  });

  it("may be small on purpose, and an exception for one that is not small is found", () => {
    const onPurpose = { "src/plan/small.ts": "so it is", "src/draw/a.ts": "so it was" };
    const files = new Map(Object.entries(BY_ONE));
    expect(crumbs({ files, tests: [], onPurpose })).toEqual([
      "src/draw/a.ts: is no crumb, and needs no exception",
    ]);
  });
});
