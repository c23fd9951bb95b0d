/** Artifacts and PDF files made on several threads: the same as those made on one, none of them lost, and what stops them is told. */
import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import {
  pairSources,
  setupSources,
  stripSources,
} from "../../src/build/artifacts/cache/sources.ts";
import { openCaches } from "../../src/build/artifacts/caches.ts";
import { pairsOf } from "../../src/build/artifacts/make/page-artifacts.ts";
import { openPatternRenderer } from "../../src/build/artifacts/make/pattern-renderer.ts";
import { openSetupRenderer, setupPairs } from "../../src/build/artifacts/make/setup-renderer.ts";
import { openStripRenderer, stripPairs } from "../../src/build/artifacts/make/strip-renderer.ts";
import { pdfFiles } from "../../src/build/artifacts/pdf/pdf-file.ts";
import { startWorkers } from "../../src/build/artifacts/prebuild/start-workers.ts";
import { closeWorkQueue, openWorkQueue, takeFrom } from "../../src/build/artifacts/work-queue.ts";
import { loadEngine } from "../../src/build/bundle/bundle-engine.mjs";
import type { Engine } from "../../src/build/bundle/loaded-engine.ts";
import { type Content, loadContent } from "../../src/build/content/load-content.ts";
import { PROJECT } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

async function contentOf(files: Readonly<Record<string, string>>): Promise<Content> {
  const reading = await loadContent(writeContent(files));
  if (!reading.ok) throw new Error("the content has a problem");
  return reading.value;
}

/** A book of so many patterns and the two of the small one, on two notebooks. */
const bookOf = (count: number) => ({
  ...TINY,
  "strips/rows.md": "---\ntitle: Rows\nacross: [row-1]\ndown: [row-1, row-2]\n---\nRows.\n",
  "setups/may.md": "---\ntitle: May\ndates: 2027-05\npages: [row-1, row-2]\n---\nMay.\n",
  ...Object.fromEntries(
    Array.from({ length: count }, (_, index) => [
      `patterns/row-${index + 1}.md`,
      `---\ntitle: Row ${index + 1}\npurpose: list\npage: {rows: ${(index % 30) + 1}}\n---\n`,
    ]),
  ),
});

/** As many patterns as it takes for two workers to be called; with their PDF files half as many are enough. */
const [MANY, PRINTED] = [bookOf(70), bookOf(30)];

/** A call whose caches are empty. */
async function callWith(content: Content, engine?: Engine) {
  const caches = openCaches(scratchFolder());
  return { content, caches, engine: engine ?? (await loadEngine()), project: PROJECT };
}

/** An engine whose workers run some code and nothing else. */
const engineOf = (code: string): Engine => ({
  version: "1",
  file: `data:text/javascript,${encodeURIComponent(code)}`,
});

function bookFolder(): string {
  const output = join(scratchFolder(), "book");
  mkdirSync(output);
  return output;
}

const unmade = () => {
  throw new Error("this artifact was not made");
};

describe("what is made with two workers", () => {
  it("are the artifacts that one thread makes, each once", async () => {
    const content = await contentOf(MANY);
    const call = await callWith(content);
    const { caches, engine } = call;
    const workers = startWorkers({ ...call, most: 2 });
    await workers.makeArtifacts();
    await workers.finish();
    const [render, renderStrip] = [openPatternRenderer(content), openStripRenderer(content)];
    const renderSetup = openSetupRenderer(content);
    const pairs = pairsOf(content);
    const strips = stripPairs(content);
    expect([pairs.length, strips.length]).toEqual([144, 2]);
    for (const pair of pairs) {
      const sources = [engine.version, ...pairSources(pair, content)];
      expect(caches.patterns.take(sources, unmade)).toEqual(render(pair));
    }
    for (const pair of strips) {
      const sources = [engine.version, ...stripSources(pair, content)];
      expect(caches.strips.take(sources, unmade)).toEqual(renderStrip(pair));
    }
    for (const pair of setupPairs(content)) {
      const sources = [engine.version, ...setupSources(pair, content)];
      expect(caches.setups.take(sources, unmade)).toEqual(renderSetup(pair));
    }
    expect(caches.settle()).toEqual({ found: 0, made: 148 });
  });

  it("are all PDF files of the book, each in its place", async () => {
    const content = await contentOf(PRINTED);
    const output = bookFolder();
    const workers = startWorkers({ ...(await callWith(content)), output, most: 2 });
    const files = pdfFiles(content).map(({ path }) => path);
    expect(await workers.finish()).toEqual({ found: 0, made: files.length });
    expect(files.filter((path) => !existsSync(join(output, path)))).toEqual([]);
  });
});

describe("with few artifacts", () => {
  it("no worker is called, and nothing is made before it is asked for", async () => {
    const call = await callWith(await contentOf(TINY), engineOf("throw new Error('called');"));
    const workers = startWorkers({ ...call, most: 2 });
    await workers.makeArtifacts();
    expect(await workers.finish()).toEqual({ found: 0, made: 0 });
    expect(call.caches.settle()).toEqual({ found: 0, made: 0 });
  });
});

describe("a worker that fails", () => {
  it("fails all artifacts", async () => {
    const call = await callWith(await contentOf(MANY), engineOf("throw new Error('no ink');"));
    await expect(startWorkers({ ...call, most: 1 }).makeArtifacts()).rejects.toThrow("no ink");
  });

  it("is told when the build asks for its PDF files", async () => {
    const code = 'export const work = async () => { throw new Error("no paper"); };';
    const call = await callWith(await contentOf(TINY), engineOf(code));
    const { finish } = startWorkers({ ...call, output: bookFolder() });
    await expect(finish()).rejects.toThrow("no paper");
  });

  it("can be stopped while it is at work", async () => {
    const code = "export const work = () => { for (;;); };";
    const call = await callWith(await contentOf(TINY), engineOf(code));
    const { stop } = startWorkers({ ...call, output: bookFolder() });
    await expect(stop()).resolves.toBeUndefined();
  });
});

describe("a shared queue", () => {
  it("gives each thing once, whoever takes it", () => {
    const queue = openWorkQueue(["a", "b", "c", "d"]);
    const [one, other] = [takeFrom(queue)[Symbol.iterator](), takeFrom(queue)[Symbol.iterator]()];
    const taken = [one, other, other, one, other, one].map((taker) => taker.next().value);
    expect(taken).toEqual([[0, "a"], [1, "b"], [2, "c"], [3, "d"], undefined, undefined]);
  });

  it("gives nothing more when it is closed", () => {
    const queue = openWorkQueue(["a", "b"]);
    closeWorkQueue(queue);
    expect([...takeFrom(queue)]).toEqual([]);
  });
});
