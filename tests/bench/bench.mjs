/** `npm run bench`: a book of 45 patterns on 10 notebooks beside a bare Eleventy build that writes the same files as ready strings, in one run. */
import { execFile, execFileSync } from "node:child_process";
import { appendFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import { writeSizedContent } from "./sized-content.mjs";

const HERE = fileURLToPath(new URL("./", import.meta.url));
const ROUNDS = 3;
/** What a build makes side by side. */
const HALVES = ["draw", "print"];
const written = resolve(process.argv[2] ?? "content");
const scratch = mkdtempSync(join(tmpdir(), "spanbook-bench-"));
const place = (name) => join(scratch, name);
const content = place("content");
writeSizedContent(written, content, { patterns: 45, notebooks: 10 });

/** Runs one of the scripts beside this one and reads the cost that it tells. */
function cost(script, ...words) {
  const said = execFileSync(process.execPath, [join(HERE, script), ...words], { encoding: "utf8" });
  return JSON.parse(said.trim().split("\n").at(-1));
}

/** The same of a script that runs beside another: two that run side by side take longer each, as threads of a build do. */
async function costBeside(script, ...words) {
  const { stdout } = await promisify(execFile)(process.execPath, [join(HERE, script), ...words]);
  return JSON.parse(stdout.trim().split("\n").at(-1));
}

/** As if nothing were ready but the PDF files. */
function keepOnlyPdfs() {
  for (const name of readdirSync(place("cache"))) {
    if (name !== "pdfs") rmSync(join(place("cache"), name), { recursive: true });
  }
}

/** Another line below one pattern's text: all its pages change. */
function changeOnePattern(round) {
  const [first] = readdirSync(join(content, "patterns"));
  appendFileSync(join(content, "patterns", first), `\nRound ${round}.\n`);
}

/** From a small book to a large one, each from nothing; the last column is to stay level. */
function grow() {
  console.log("\nFrom nothing, with all PDF files, at several sizes");
  for (const [patterns, notebooks] of [
    [45, 10],
    [90, 20],
    [200, 20],
  ]) {
    const folder = place(`${patterns}-${notebooks}`);
    writeSizedContent(written, folder, { patterns, notebooks });
    const made = [place("grown"), place("grown-cache")];
    const whole = cost("build-once.mjs", folder, ...made);
    const bare = cost("bare-once.mjs", place("grown"), place("bare"));
    const each = whole.processor / (patterns * notebooks);
    const gallery = gzipSync(readFileSync(join(place("grown"), "patterns/index.html"))).length;
    console.log(
      `${row(`${patterns} × ${notebooks}`, whole, bare)}   ${each.toFixed(1)} ms of work each (bare: ${bare.memory.toFixed(0)} MiB); the gallery's page ${gallery} bytes`,
    );
    for (const name of [...made, place("bare")]) rmSync(name, { recursive: true, force: true });
  }
}

/** The kinds take turns, so that a busy moment of the machine falls on all of them. */
async function runAll() {
  const costs = {
    cold: [],
    printed: [],
    changed: [],
    warm: [],
    bare: [],
    stock: [],
    draw: [],
    print: [],
  };
  const build = () => cost("build-once.mjs", content, place("book"), place("cache"));
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const name of ["cache", "book"]) rmSync(place(name), { recursive: true, force: true });
    costs.cold.push(build());
    keepOnlyPdfs();
    costs.printed.push(build());
    changeOnePattern(round);
    costs.changed.push(build());
    costs.warm.push(build());
    for (const kind of ["bare", "stock"]) {
      costs[kind].push(cost(`${kind}-once.mjs`, place("book"), place(kind)));
      rmSync(place(kind), { recursive: true, force: true });
    }
    const halves = await Promise.all(
      HALVES.map((half) => costBeside("half-once.mjs", content, half)),
    );
    for (const [index, half] of HALVES.entries()) costs[half].push(halves[index]);
  }
  return costs;
}

/** A build from nothing against the sum of what it cannot do without: drawings beside PDF files, and bare Eleventy. */
function tellParts({ cold, draw, print, bare }) {
  const parts = [draw, print, bare].reduce((sum, each) => sum + best(each).processor, 0);
  const ratio = best(cold).processor / parts;
  console.log(
    `The book from nothing takes × ${ratio.toFixed(2)} the work of its parts alone: drawings, PDF files, bare Eleventy.`,
  );
}

/** The least of each measure: what is above it was the machine's other work. */
function best(costs) {
  const least = (name) => Math.min(...costs.map((each) => each[name]));
  return { wall: least("wall"), processor: least("processor"), memory: least("memory") };
}

function row(name, { wall, processor, memory }, bare) {
  const seconds = (ms) => (ms / 1000).toFixed(2).padStart(7);
  const ratio = (wall / bare.wall).toFixed(2);
  const work = (processor / bare.processor).toFixed(2);
  return `${name.padEnd(30)}${seconds(wall)} s${seconds(processor)} s${memory.toFixed(0).padStart(7)} MiB   × ${ratio}   × ${work}`;
}

const costs = await runAll();
const bare = best(costs.bare);
console.log(`${"".padEnd(30)}   wall     work   memory      wall     work (against bare)`);
console.log(row("bare Eleventy, ready strings", bare, bare));
console.log(row("Eleventy as it comes", best(costs.stock), bare));
console.log(row("all drawings alone", best(costs.draw), bare));
console.log(row("all PDF files alone", best(costs.print), bare));
console.log(row("the book, nothing ready", best(costs.cold), bare));
console.log(row("the book, PDF files ready", best(costs.printed), bare));
console.log(row("the book, one pattern changed", best(costs.changed), bare));
console.log(row("the book, nothing changed", best(costs.warm), bare));
tellParts(costs);

grow();

console.log("\nThe fit page, from a key press to the new drawing");
execFileSync(process.execPath, [join(HERE, "fit-once.mjs"), place("book")], { stdio: "inherit" });
rmSync(scratch, { recursive: true, force: true });

console.log("\nThe division engine");
execFileSync(process.execPath, [join(HERE, "divide-once.mjs")], { stdio: "inherit" });
