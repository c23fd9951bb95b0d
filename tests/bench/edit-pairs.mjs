/** Serves a book and edits one recipe again and again, with and without a device, turn about: `node edit-pairs.mjs CONTENT CACHE DEVICE`. */
import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { Eleventy } from "@11ty/eleventy";
import { loadEngine, PROJECT } from "../../src/build/bundle/bundle-engine.mjs";
import { without } from "./devices.mjs";
import { measured, tellPairs } from "./tell-cost.mjs";

const PAIRS = 6;
/** Whatever an edit leaves to be done is done by then. */
const CALM_MS = 300;

const [content, cache, device] = process.argv.slice(2);
process.chdir(PROJECT);
// One name for all engines: what one has drawn serves them all.
const engine = { ...(await loadEngine(without(device))), version: "bench" };
const caches = engine.openCaches(cache);
const read = await engine.readContent(content);
const calling = { content: read.content, caches, engine, project: PROJECT };
const first = { ...calling, workers: engine.startWorkers(calling) };
let settle = () => {};
const pages = engine.openServedPages(() => {});
const settings = { content, mode: "serve", first, pages, onSettled: () => settle() };
const output = mkdtempSync(join(tmpdir(), "spanbook-edit-"));
const eleventy = new Eleventy("site", output, {
  configPath: ".eleventy.js",
  quietMode: true,
  runMode: "serve",
  config: (config) => config.addGlobalData("settings", settings),
});
eleventy.disableLogger();
await eleventy.init();
await eleventy.watch();

const file = join(content, "general/patterns/two-row-week.md");
const before = readFileSync(file);
const costs = { with: [], without: [] };
for (let round = 0; round <= PAIRS; round += 1) {
  const turns = round % 2 === 0 ? ["with", "without"] : ["without", "with"];
  for (const turn of turns) {
    globalThis.without = turn === "without" ? device : "";
    const cost = await measured(() => {
      const settled = new Promise((resolve) => {
        settle = resolve;
      });
      appendFileSync(file, `\nRound ${round}, ${turn}.\n`);
      return settled;
    });
    // The first pair warms up.
    if (round > 0) costs[turn].push(cost);
    await setTimeout(CALM_MS);
  }
}
writeFileSync(file, before);
rmSync(output, { recursive: true, force: true });
tellPairs(costs);
process.exit(0);
