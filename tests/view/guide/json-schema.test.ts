/** The JSON Schemas of all kinds of files: whatever a reader takes, they take, and slips of keys and numbers they refuse. */

import { readdirSync, readFileSync } from "node:fs";
import { Ajv, type ValidateFunction } from "ajv";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { Reading, TextFile } from "../../../src/issue/facts/reading.ts";
import { readNotebook } from "../../../src/notebook/read-notebook.ts";
import { writeNotebook } from "../../../src/notebook/write-notebook.ts";
import { readBook } from "../../../src/recipe/read/read-book.ts";
import { readRecipe } from "../../../src/recipe/read/read-recipe.ts";
import { readSetup } from "../../../src/recipe/read/read-setup.ts";
import { readStripRecipe } from "../../../src/recipe/read/read-strip-recipe.ts";
import { writeSetupRecipe } from "../../../src/recipe/write-setup-recipe.ts";
import { writeStripRecipe } from "../../../src/recipe/write-strip-recipe.ts";
import { frontMatterOf } from "../../../src/source/front-matter/read-front-matter.ts";
import { schemaFiles } from "../../../src/view/guide/json-schema.ts";
import { anyNotebook } from "../../random/any-notebook.ts";
import { anySetup } from "../../random/any-setup.ts";
import { anyStrip } from "../../random/any-strip.ts";
import { wildFile } from "../../random/wild-file.ts";
import { demoNames, demoText } from "../../setup/demo-files.ts";
import { PROJECT } from "../../setup/run-command.ts";
import { checkRuns } from "../../sweep/sweep-size.ts";
import { withoutExpectations } from "../../wrong/expected-problems.ts";

/** A group that needs one of several keys says so by alternatives that only name keys. */
const ajv = new Ajv({
  strict: true,
  strictRequired: false,
  allErrors: true,
  allowUnionTypes: true,
});
const SCHEMAS: ReadonlyMap<string, ValidateFunction> = new Map(
  schemaFiles().map(({ path, text }) => [path, ajv.compile(JSON.parse(text))]),
);

type Kind = "pattern" | "notebook" | "strip" | "setup" | "book";

const READ: Readonly<Record<Kind, (file: TextFile) => Reading<unknown>>> = {
  pattern: readRecipe,
  notebook: readNotebook,
  strip: readStripRecipe,
  setup: readSetup,
  book: readBook,
};

/** What a schema says against a file's text, as an editor would hear it; "" where it takes it. */
function refusal(kind: Kind, text: string): string {
  const validate = SCHEMAS.get(`schema/${kind}.schema.json`);
  if (!validate) throw new RangeError(`there is no schema of a ${kind}`);
  const value: unknown = parse(kind === "book" ? text : frontMatterOf(text), {
    logLevel: "silent",
  });
  return validate(value) ? "" : ajv.errorsText(validate.errors);
}

/** Of each kind of file. */
const RUNS = checkRuns(200);

const isTaken = (kind: Kind, text: string) => READ[kind]({ path: "a/b.md", text }).ok;

const DEMO = (["notebook", "pattern", "strip", "setup"] as const).flatMap((kind) =>
  demoNames(`${kind}s`).map((name) => [kind, name, demoText(`${kind}s/${name}`)] as const),
);

describe("a schema takes what its reader takes", () => {
  it.each(DEMO)("of the demo: %s %s", (kind, _, text) => {
    expect(refusal(kind, text)).toBe("");
  });

  it.each(["content/book.yaml", "content/general/book.yaml", "starter/book.yaml"])("%s", (path) => {
    expect(refusal("book", readFileSync(PROJECT + path, "utf8"))).toBe("");
  });

  it("of recipes as they come about while somebody writes", () => {
    const texts = DEMO.flatMap(([kind, , text]) => (kind === "pattern" ? [text] : []));
    let taken = 0;
    const sources = { owner: "recipe", texts: fc.constantFrom(...texts), slugs: ["week"] } as const;
    const recipes = wildFile(sources).filter((text) => isTaken("pattern", text));
    fc.assert(
      fc.property(recipes, (text) => {
        taken += 1;
        expect(refusal("pattern", text)).toBe("");
      }),
      { seed: 70_001, numRuns: RUNS },
    );
    expect(taken).toBeGreaterThanOrEqual(RUNS);
  });

  const slug = fc.oneof(
    fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,12}$/),
    fc.constantFrom("null", "true", "1e3", "0x1f", "12", "0-1", "yes"),
  );

  it.each<[Kind, fc.Arbitrary<string>]>([
    ["notebook", anyNotebook().map(writeNotebook)],
    ["strip", anyStrip(slug).map(writeStripRecipe)],
    ["setup", anySetup(slug).map(writeSetupRecipe)],
  ])("of any %s", (kind, texts) => {
    fc.assert(
      fc.property(texts, (text) => {
        expect(isTaken(kind, text)).toBe(true);
        expect(refusal(kind, text)).toBe("");
      }),
      { seed: 70_002, numRuns: RUNS },
    );
  });

  it.each<[Kind, string]>([
    ["pattern", "---\ntitle: 2027\npurpose: page\ntags: [1, true]\npage: {}\n---\n"],
    [
      "pattern",
      "---\ntitle: A\npurpose: page\npage: {rows: {count: 2, leftover: 3, labels: [3, 4]}}\n---\n",
    ],
    [
      "book",
      "title: A\nwith: [spanbook/general, null, 12]\ncalendar: {region: 001}\nnotebooks: [a5]\n",
    ],
    ["strip", "---\ntitle: A\nacross: [null, true]\ndates: 2027\n---\n"],
  ])("of a %s whose words look like something else", (kind, text) => {
    expect(isTaken(kind, text)).toBe(true);
    expect(refusal(kind, text)).toBe("");
  });
});

describe("a schema refuses", () => {
  it.each<[Kind, string, string]>([
    ["pattern", "title: A\npurpose: page\npage: {row: 2}", "must NOT have additional properties"],
    ["pattern", "title: A\npurpose: pages\npage: {}", "data/purpose must be equal to one of"],
    ["pattern", "title: A\npurpose: page", "must have required property 'page'"],
    ["pattern", "purpose: page\npage: {}", "must have required property 'title'"],
    ["pattern", "title: A\npurpose: page\npage: {rows: {tracks: [{steps: 0}]}}", "must be >= 1"],
    ["pattern", "title: A\npurpose: page\npage: {rows: 201}", "must be <= 200"],
    ["notebook", "title: A\npaper: A5\npitch: 0\ndots: [26, 38]", "must be >= 0.5"],
    ["notebook", "title: A\npaper: A5\npitch: 5\ndots: [26]", "must NOT have fewer than 2 items"],
    ["strip", "title: A\nacross: [Seed list]", "must match pattern"],
    ["setup", "title: A\ndates: 2027\npages: [{each: hour, pages: []}]", "must be equal to one of"],
    ["book", "title: A\nnotebook: [a5]", "must NOT have additional properties"],
  ])("a %s: %j", (kind, text, why) => {
    const file = kind === "book" ? text : `---\n${text}\n---\n`;
    expect(isTaken(kind, file)).toBe(false);
    expect(refusal(kind, file)).toContain(why);
  });

  it("much of what is known to go wrong, though not all", () => {
    const folder = `${PROJECT}tests/wrong/patterns/`;
    const parsed = readdirSync(folder).flatMap((name) => {
      try {
        return [refusal("pattern", withoutExpectations(readFileSync(folder + name, "utf8")))];
      } catch {
        return [];
      }
    });
    expect(parsed.length).toBeGreaterThan(15);
    expect(parsed.filter((why) => why !== "").length).toBeGreaterThan(parsed.length / 2);
  });
});
