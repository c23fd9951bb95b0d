import { describe, expect, it } from "vitest";
import { readFrontMatter, readYamlFile } from "../../src/source/front-matter/read-front-matter.ts";
import type { SourceNode } from "../../src/source/tree.ts";
import { readYaml } from "../../src/source/yaml/read-yaml.ts";

/** The tree with places as `line:column+width`. */
function treeOf(text: string): unknown {
  const reading = readYaml({ path: "a.md", text, firstLine: 2 });
  return reading.ok ? shown(reading.value) : reading.issues.map((issue) => issue.kind);
}

function shown(node: SourceNode): unknown {
  const at = `${node.at.line}:${node.at.column}+${node.at.width}`;
  if (node.kind === "scalar") return `${node.source}@${at}`;
  if (node.kind === "list") return [at, ...node.entries.map(shown)];
  return { at, ...Object.fromEntries(node.entries.map(({ key, value }) => [key, shown(value)])) };
}

describe("a tree of YAML", () => {
  it("knows where everything is written", () => {
    expect(
      treeOf("title: Seed list\npage:\n  rows: {count: 3}\n  label:\ntags: [a, 'b c']\n"),
    ).toEqual({
      at: "2:1+16",
      title: "Seed list@2:8+9",
      page: { at: "3:1+4", rows: { at: "4:9+10", count: "3@4:17+1" }, label: "@5:3+5" },
      tags: ["6:7+10", "a@6:8+1", "b c@6:11+5"],
    });
  });

  it("counts lines where a quotation mark that nobody opened swallows some of them", () => {
    const text = 'right:  {month}"}}\n  - rows: {label: "{week}"}';
    const reading = readYaml({ path: "a.md", text, firstLine: 2 });
    const told = reading.ok
      ? []
      : reading.issues.map(({ kind, at }) => `${kind} ${at.line}:${at.column}`);
    expect(told).toEqual(["unexpected 2:16", "after-quote 3:20"]);
  });

  it("keeps the words behind numbers and switches", () => {
    expect(treeOf("[007, 2.50, yes, true, null, ~, 0x1f, 2027-05-01]")).toEqual([
      "2:1+49",
      "007@2:2+3",
      "2.50@2:7+4",
      "yes@2:13+3",
      "true@2:18+4",
      "null@2:24+4",
      "~@2:30+1",
      "0x1f@2:33+4",
      "2027-05-01@2:39+10",
    ]);
  });

  it.each([
    ["a: &x 1", ["anchor"]],
    ["a: *x", ["alias"]],
    ["a: {<<: {b: 1}}", ["merge-key"]],
    ["a: !!int 3", ["tag"]],
    ["a: 1\na: 2\nb: 3\nb: 4", ["duplicate-key", "duplicate-key"]],
    ["a: 1\n...\nb: 2", ["several-documents"]],
    ["%YAML 1.1\n---\na: yes", ["directive"]],
    ["a:\n\t- b", ["tab"]],
    ["? [a]\n: b", ["key-not-text"]],
    [": b", ["key-not-text"]],
    [`${"k".repeat(1_100)}: 1`, ["long-key"]],
    ["a: ]", ["not-opened"]],
  ])("%j is %j", (text, kinds) => {
    expect(treeOf(text)).toEqual(kinds);
  });

  it("finds a bracket and a quotation mark where they were opened", () => {
    const opened = (text: string) => {
      const reading = readYaml({ path: "a.md", text, firstLine: 1 });
      const [first] = reading.ok ? [] : reading.issues;
      return first && `${first.kind} ${first.at.line}:${first.at.column}`;
    };
    expect(opened("a: 1\nb: [1, 2\n")).toBe("not-closed 2:4");
    expect(opened("a: {b: [1], c: 2\n")).toBe("not-closed 1:4");
    expect(opened("a: 'one\nb: 2\n")).toBe("open-quote 1:4");
    expect(opened('a: [1, "two]\n')).toBe("open-quote 1:8");
  });
});

describe("YAML that is meant to hurt", () => {
  const times = (text: string, count: number) => text.repeat(count);
  it.each([
    [
      "a bomb of anchors",
      `a: &a [x]\n${Array.from({ length: 40 }, (_, i) => `b${i}: &b${i} [*a, *a, *a]`).join("\n")}`,
    ],
    ["brackets without end", times("[", 20_000)],
    ["braces without end", times("{a: ", 20_000)],
    ["dashes without end", times("- ", 20_000)],
    ["questions without end", times("? ", 20_000)],
    ["keys without end", Array.from({ length: 8_000 }, (_, i) => `k${i}: 1`).join("\n")],
    ["one key over and over", times("k: 1\n", 8_000)],
    ["commas without end", `[${times(",", 20_000)}`],
    ["documents without end", times("---\n", 20_000)],
    ["anchors without end", times("&a ", 20_000)],
    [
      "indentation without end",
      Array.from({ length: 600 }, (_, i) => `${" ".repeat(i)}a:`).join("\n"),
    ],
  ])("%s is refused or read, and ends", (_, text) => {
    const reading = readYaml({ path: "a.md", text, firstLine: 1 });
    expect(reading.ok || reading.issues.length > 0).toBe(true);
  });
});

describe("words and marks of a file", () => {
  const firstOf = (text: string) => {
    const reading = readYaml({ path: "a.md", text, firstLine: 1 });
    const [first] = reading.ok ? [] : reading.issues;
    return first && `${first.kind} ${first.at.line}:${first.at.column}`;
  };
  it.each([
    ["dashes and words", "- a\n".repeat(10_000), "- a\n", "10001:1"],
    ["keys and colons", "a:\n".repeat(10_000), "b: 1\n", "10001:1"],
    ["brackets", "- [{}]\n".repeat(4_000), "- 1\n", "4001:1"],
    ["commas", `- [${",".repeat(19_998)}`, ",]", "1:20002"],
  ])("are 20,000 %s at most", (_, full, more, at) => {
    expect(firstOf(full) ?? "").not.toMatch(/^too-many-words/);
    expect(firstOf(full + more)).toBe(`too-many-words ${at}`);
  });

  it("are not the spaces, remarks and empty lines between them", () => {
    expect(firstOf(`a: 1\n${"  # A remark.\n\n".repeat(10_001)}`)).toBeUndefined();
  });

  it("may be one long text", () => {
    expect(firstOf(`a: |\n${"  a text: with - marks\n".repeat(8_000)}`)).toBeUndefined();
  });
});

describe("front matter", () => {
  it.each([
    ["---\na: 1\n---\nText", "Text"],
    ["---  \na: 1\n---\t\n\n\nText\n\n", "Text"],
    ["---\r\na: 1\r\n---\r\nOne\r\nTwo", "One\nTwo"],
    ["\uFEFF---\na: 1\n---", ""],
    ["---\na: 1\n---\nText\n\n---\n\nMore", "Text\n\n---\n\nMore"],
  ])("of %j leaves the body %j", (text, body) => {
    const reading = readFrontMatter({ path: "a.md", text });
    expect(reading.ok && reading.value.body).toBe(body);
    expect(reading.ok && reading.value.tree.entries.map(({ key }) => key)).toEqual(["a"]);
  });

  it.each([
    ["", "no-front-matter"],
    ["a: 1", "no-front-matter"],
    ["\n---\na: 1\n---", "no-front-matter"],
    [" ---\na: 1\n---", "no-front-matter"],
    ["----\na: 1\n---", "no-front-matter"],
    ["---", "open-front-matter"],
    ["---\na: 1\n ---", "open-front-matter"],
  ])("of %j: %s", (text, kind) => {
    const reading = readFrontMatter({ path: "a.md", text });
    expect(reading.ok ? [] : reading.issues.map((issue) => issue.kind)).toEqual([kind]);
  });

  it("may be empty, and so may a file of YAML", () => {
    expect(readFrontMatter({ path: "a.md", text: "---\n---\n" })).toMatchObject({
      value: { tree: { entries: [] } },
    });
    expect(readYamlFile({ path: "book.yaml", text: "# nothing yet\n" })).toMatchObject({
      value: { tree: { entries: [] }, faults: [] },
    });
  });
});
