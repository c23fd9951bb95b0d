/** `npm run bench:device DEVICE`: what a device saves on the demo book, in pairs with and without it, turn about. */
import { execFileSync } from "node:child_process";
import { appendFileSync, cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { DEVICES } from "./devices.mjs";
import { tellPairs } from "./tell-cost.mjs";

const PAIRS = 5;
const HERE = fileURLToPath(new URL("./", import.meta.url));
const WHERE = {
  draw: "all drawings of one notebook after another",
  print: "all PDF files of one notebook after another",
  edit: "one recipe edited while the book is served",
  build: "a build from nothing",
  changed: "a build after one recipe was edited",
  same: "a build after nothing was edited",
};

const [device, written = "content"] = process.argv.slice(2);
const measuredIn = DEVICES[device]?.measuredIn;
if (!measuredIn) {
  console.error(`There are these devices: ${Object.keys(DEVICES).join(", ")}.`);
  process.exit(1);
}
const desk = mkdtempSync(join(tmpdir(), "spanbook-device-"));
const place = (name) => join(desk, name);
cpSync(written, place("content"), { recursive: true });
console.log(`${device}, in ${WHERE[measuredIn]}`);
if (measuredIn === "draw" || measuredIn === "print")
  run("half-pairs.mjs", place("content"), device);
else if (measuredIn === "edit") run("edit-pairs.mjs", place("content"), place("memo"), device);
else tellPairs(buildPairs());
rmSync(desk, { recursive: true });

function run(script, ...words) {
  execFileSync(process.execPath, [join(HERE, script), ...words], { stdio: "inherit" });
}

function buildPairs() {
  const costs = { with: [], without: [] };
  if (measuredIn !== "build") build("with");
  for (let round = 0; round < PAIRS; round += 1) {
    for (const turn of ["with", "without"]) {
      if (measuredIn === "build") {
        for (const made of ["book", "memo"]) rmSync(place(made), { recursive: true, force: true });
      }
      if (measuredIn === "changed") {
        appendFileSync(
          place("content/general/patterns/two-row-week.md"),
          `\nRound ${round}, ${turn}.\n`,
        );
      }
      costs[turn].push(build(turn));
    }
  }
  return costs;
}

function build(turn) {
  const words = [place("content"), place("book"), place("memo"), device];
  const said = execFileSync(process.execPath, [join(HERE, "build-once.mjs"), ...words], {
    encoding: "utf8",
    env: { ...process.env, WITHOUT: turn === "without" ? device : "" },
  });
  return JSON.parse(said.trim().split("\n").at(-1));
}
