/** The cache of finished artifacts: what is found again, what is not, and how much it keeps. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openCache } from "../../src/build/artifacts/cache/cache.ts";
import { scratchFolder } from "./write-content.ts";

interface Artifact {
  readonly text: string;
}

const fail = (): Artifact => {
  throw new Error("made again");
};

describe("an artifact", () => {
  it("is made once and found again by a later run", () => {
    const folder = scratchFolder();
    openCache<Artifact>(folder).take(["week", "a5"], () => ({ text: "drawn" }));
    expect(openCache<Artifact>(folder).take(["week", "a5"], fail)).toEqual({ text: "drawn" });
  });

  it.each([[["week", "a6"]], [["weeka5"]], [["week", "a5", ""]], [["a5", "week"]]])(
    "made from week and a5 is not taken for one made from %j",
    (sources) => {
      const cache = openCache<Artifact>(scratchFolder());
      cache.take(["week", "a5"], () => ({ text: "one" }));
      expect(cache.take(sources, () => ({ text: "other" }))).toEqual({ text: "other" });
    },
  );

  it("is made again where the disk has half of it", () => {
    const folder = scratchFolder();
    openCache<Artifact>(folder).take(["week"], () => ({ text: "drawn" }));
    const [file = ""] = filesBelow(folder);
    writeFileSync(file, readFileSync(file, "utf8").slice(0, 5));
    expect(openCache<Artifact>(folder).take(["week"], () => ({ text: "again" }))).toEqual({
      text: "again",
    });
  });

  it("is made all the same where the disk takes nothing", () => {
    const file = join(scratchFolder(), "a-file");
    writeFileSync(file, "");
    const cache = openCache<Artifact>(join(file, "cache"));
    expect(cache.take(["week"], () => ({ text: "drawn" }))).toEqual({ text: "drawn" });
    expect(cache.settle()).toEqual({ found: 0, made: 1 });
  });
});

describe("the tally", () => {
  it("counts each artifact once, however often it is asked for", () => {
    const cache = openCache<Artifact>(scratchFolder());
    for (const name of ["week", "week", "month"]) cache.take([name], () => ({ text: name }));
    expect(cache.settle()).toEqual({ found: 0, made: 2 });
    cache.take(["week"], fail);
    expect(cache.settle()).toEqual({ found: 1, made: 0 });
  });
});

describe("the limits", () => {
  it("clear the disk of artifacts that this run did not use", () => {
    const folder = scratchFolder();
    const limits = { memoryBytes: 100, diskBytes: 100 };
    const before = openCache<Artifact>(folder, limits);
    for (const name of ["a", "b", "c"]) before.take([name], () => ({ text: "x".repeat(60) }));
    before.settle();
    expect(filesBelow(folder)).toHaveLength(3);
    const after = openCache<Artifact>(folder, limits);
    after.take(["d"], () => ({ text: "x".repeat(60) }));
    after.settle();
    expect(filesBelow(folder)).toHaveLength(1);
    expect(openCache<Artifact>(folder).take(["d"], fail)).toEqual({ text: "x".repeat(60) });
  });

  it("keep on disk what was asked for and not taken, as most of a book is after an edit", () => {
    const folder = scratchFolder();
    const limits = { memoryBytes: 100, diskBytes: 100 };
    const before = openCache<Artifact>(folder, limits);
    for (const name of ["a", "b", "c"]) before.take([name], () => ({ text: "x".repeat(60) }));
    before.settle();
    const after = openCache<Artifact>(folder, limits);
    expect(["a", "b", "d"].map((name) => after.has([name]))).toEqual([true, true, false]);
    after.put(["d"], { text: "x".repeat(60) });
    after.settle();
    const left = openCache<Artifact>(folder);
    expect(["a", "b", "c", "d"].map((name) => left.has([name]))).toEqual([true, true, false, true]);
  });

  it("let an artifact go from memory, which the disk still has", () => {
    const cache = openCache<Artifact>(scratchFolder(), { memoryBytes: 50, diskBytes: 1000 });
    cache.take(["a"], () => ({ text: "x".repeat(40) }));
    cache.take(["b"], () => ({ text: "y".repeat(40) }));
    expect(cache.take(["a"], fail)).toEqual({ text: "x".repeat(40) });
  });
});

function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}
