/** The memo of finished pieces: what is found again, what is not, and how much it keeps. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openMemo } from "../../src/build/artifacts/cache/cache.ts";
import { deskFolder } from "./write-content.ts";

interface Piece {
  readonly text: string;
}

const fail = (): Piece => {
  throw new Error("made again");
};

describe("a piece", () => {
  it("is made once and found again by a later run", () => {
    const folder = deskFolder();
    openMemo<Piece>(folder).take(["week", "a5"], () => ({ text: "drawn" }));
    expect(openMemo<Piece>(folder).take(["week", "a5"], fail)).toEqual({ text: "drawn" });
  });

  it.each([[["week", "a6"]], [["weeka5"]], [["week", "a5", ""]], [["a5", "week"]]])(
    "made from week and a5 is not taken for one made from %j",
    (sources) => {
      const memo = openMemo<Piece>(deskFolder());
      memo.take(["week", "a5"], () => ({ text: "one" }));
      expect(memo.take(sources, () => ({ text: "other" }))).toEqual({ text: "other" });
    },
  );

  it("is made again where the disk has half of it", () => {
    const folder = deskFolder();
    openMemo<Piece>(folder).take(["week"], () => ({ text: "drawn" }));
    const [file = ""] = filesBelow(folder);
    writeFileSync(file, readFileSync(file, "utf8").slice(0, 5));
    expect(openMemo<Piece>(folder).take(["week"], () => ({ text: "again" }))).toEqual({
      text: "again",
    });
  });

  it("is made all the same where the disk takes nothing", () => {
    const file = join(deskFolder(), "a-file");
    writeFileSync(file, "");
    const memo = openMemo<Piece>(join(file, "memo"));
    expect(memo.take(["week"], () => ({ text: "drawn" }))).toEqual({ text: "drawn" });
    expect(memo.settle()).toEqual({ found: 0, made: 1 });
  });
});

describe("the tally", () => {
  it("counts each piece once, however often it is asked for", () => {
    const memo = openMemo<Piece>(deskFolder());
    for (const name of ["week", "week", "month"]) memo.take([name], () => ({ text: name }));
    expect(memo.settle()).toEqual({ found: 0, made: 2 });
    memo.take(["week"], fail);
    expect(memo.settle()).toEqual({ found: 1, made: 0 });
  });
});

describe("the limits", () => {
  it("clear the disk of pieces that this run did not use", () => {
    const folder = deskFolder();
    const limits = { memoryBytes: 100, diskBytes: 100 };
    const before = openMemo<Piece>(folder, limits);
    for (const name of ["a", "b", "c"]) before.take([name], () => ({ text: "x".repeat(60) }));
    before.settle();
    expect(filesBelow(folder)).toHaveLength(3);
    const after = openMemo<Piece>(folder, limits);
    after.take(["d"], () => ({ text: "x".repeat(60) }));
    after.settle();
    expect(filesBelow(folder)).toHaveLength(1);
    expect(openMemo<Piece>(folder).take(["d"], fail)).toEqual({ text: "x".repeat(60) });
  });

  it("let a piece go from memory, which the disk still has", () => {
    const memo = openMemo<Piece>(deskFolder(), { memoryBytes: 50, diskBytes: 1000 });
    memo.take(["a"], () => ({ text: "x".repeat(40) }));
    memo.take(["b"], () => ({ text: "y".repeat(40) }));
    expect(memo.take(["a"], fail)).toEqual({ text: "x".repeat(40) });
  });
});

function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}
