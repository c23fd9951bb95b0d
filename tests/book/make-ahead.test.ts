/** Pieces made on several threads: the same as those made on one, and none of them lost. */
import { describe, expect, it } from "vitest";
import { type Content, loadContent } from "../../src/book/content/load-content.ts";
import { makeAhead } from "../../src/book/make-ahead.ts";
import { openMemos } from "../../src/book/open-memos.ts";
import { openPiecePress } from "../../src/book/piece-press.ts";
import { pairsOf, patternSources } from "../../src/book/pieces.ts";
import { PROJECT } from "../setup/run-command.ts";
import { deskFolder, TINY, writeContent } from "./write-content.ts";

// @ts-expect-error The doors are plain JavaScript.
const { loadEngine } = await import("../../src/book/bundle-engine.mjs");

const worker = new URL("../../src/book/press-worker.mjs", import.meta.url);

async function contentOf(folder: string): Promise<Content> {
  const reading = await loadContent(folder);
  if (!reading.ok) throw new Error("the content has a problem");
  return reading.value;
}

/** As many patterns as it takes for helpers to be called, on two notebooks. */
function manyPatterns(): Readonly<Record<string, string>> {
  const patterns = Array.from({ length: 70 }, (_, index) => [
    `patterns/row-${index + 1}.md`,
    `---\ntitle: Row ${index + 1}\npurpose: list\npage: {rows: ${(index % 30) + 1}}\n---\n`,
  ]);
  return { ...TINY, ...Object.fromEntries(patterns) };
}

describe("pieces made by two helpers", () => {
  it("are the same as those made on one thread", async () => {
    const content = await contentOf(writeContent(manyPatterns()));
    const memos = openMemos(deskFolder(), "build");
    const engine = await loadEngine();
    const door = { worker, engine: engine.file };
    await makeAhead({ content, memos, version: "1", door, helpers: 2 });
    const press = openPiecePress(content);
    const pairs = pairsOf(content);
    expect(pairs).toHaveLength(144);
    for (const pair of pairs) {
      const made = memos.patterns.take(patternSources(pair, content, "1"), () => {
        throw new Error(`${pair.pattern} on ${pair.notebook} was not made`);
      });
      expect(made).toEqual(press(pair));
    }
    expect(memos.settle()).toMatchObject({ made: 144 });
  });

  it("are not made a second time", async () => {
    const content = await contentOf(writeContent(TINY));
    const memos = openMemos(deskFolder(), "build");
    const door = { worker: new URL("file:///nowhere.mjs"), engine: "file:///nowhere.mjs" };
    await makeAhead({ content, memos, version: "1", door, helpers: 2 });
    expect(memos.settle()).toMatchObject({ found: 0, made: 0 });
  });

  it("fail as a whole where a helper cannot begin", async () => {
    const content = await contentOf(`${PROJECT}content`);
    const memos = openMemos(deskFolder(), "build");
    const door = { worker, engine: "file:///nowhere.mjs" };
    const making = makeAhead({ content, memos, version: "1", door, helpers: 1 });
    await expect(making).rejects.toThrow("nowhere.mjs");
  });
});
