/**
 * `npm run mutate`: puts one small mistake at a time into a copy of the engine and runs its tests, which ought to fail.
 * `npm run mutate -- src/plan` does it for another folder, `-- src/plan/replace.ts` for one file.
 */
import { spawn } from "node:child_process";
import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { EQUIVALENT } from "./equivalent.mjs";
import { mutantsOf, mutated } from "./mutations.mjs";

const PROJECT = new URL("../../", import.meta.url).pathname;
const COPIED = ["src", "tests", "content", "package.json", "tsconfig.json"];
/** A mutant that runs so many times as long as the engine does is taken to run for ever. */
const LONGEST = 10;

/** Which tests answer for a folder. */
const TESTS = {
  "src/divide": ["tests/divide"],
  "src/measure": [
    "tests/measure",
    "tests/divide/trade-arithmetic",
    "tests/plan/paper-notes",
    "tests/plan/planned-by",
  ],
  "src/plan": ["tests/plan"],
};

const target = process.argv[2] ?? "src/divide";
const folder = Object.keys(TESTS).find((name) => target.startsWith(name));
if (!folder) throw new Error(`there are no tests named for ${target}`);

const mutants = filesOf(target).flatMap((file) =>
  mutantsOf(readFileSync(join(PROJECT, file), "utf8")).map((mutant) => ({ file, ...mutant })),
);
const left = mutants.filter((mutant) => !isEquivalent(mutant));
console.log(
  `${mutants.length} mutants of ${target}, ${mutants.length - left.length} of them equivalent`,
);
const waiting = [...left];
const survivors = [];
const endless = [];
await Promise.all(Array.from({ length: availableParallelism() }, worker));
tell("runs for ever", endless);
tell("survived", survivors);
const killed = left.length - survivors.length;
console.log(`${killed} of ${left.length} killed: ${((100 * killed) / left.length).toFixed(1)} %`);
process.exitCode = survivors.length > 0 ? 1 : 0;

/** Takes mutants from the list until none is waiting, in a copy of its own. */
async function worker() {
  const copy = mkdtempSync(join(tmpdir(), "spanbook-mutate-"));
  for (const name of COPIED) cpSync(join(PROJECT, name), join(copy, name), { recursive: true });
  symlinkSync(join(PROJECT, "node_modules"), join(copy, "node_modules"));
  const start = performance.now();
  const sound = await outcome(copy, 3_600_000);
  if (sound !== "passes") throw new Error(`the tests as they are: ${sound}`);
  const longest = LONGEST * (performance.now() - start);
  for (let mutant = waiting.shift(); mutant; mutant = waiting.shift()) {
    const path = join(copy, mutant.file);
    const text = readFileSync(path, "utf8");
    writeFileSync(path, mutated(text, mutant));
    const result = await outcome(copy, longest);
    if (result === "passes") survivors.push(mutant);
    if (result === "late") endless.push(mutant);
    writeFileSync(path, text);
  }
  rmSync(copy, { recursive: true });
}

/** `passes`, `fails` at the first test that does, or `late` when it takes longer than it may. */
function outcome(copy, longest) {
  const words = ["run", "--bail=1", "--no-file-parallelism", "--reporter=dot", ...TESTS[folder]];
  const run = spawn(join(copy, "node_modules/.bin/vitest"), words, {
    cwd: copy,
    stdio: "ignore",
    detached: true,
  });
  return new Promise((done) => {
    const late = setTimeout(() => {
      process.kill(-run.pid, "SIGKILL");
      done("late");
    }, longest);
    run.on("exit", (code) => {
      clearTimeout(late);
      done(code === 0 ? "passes" : "fails");
    });
  });
}

function tell(what, mutants) {
  for (const { file, line, code, from, to } of mutants.toSorted(byPlace))
    console.log(`${what}  ${file}:${line}  ${from} → ${to}  in  ${code}`);
}

function filesOf(path) {
  if (path.endsWith(".ts")) return [path];
  return readdirSync(join(PROJECT, path))
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .map((name) => `${path}/${name}`);
}

function isEquivalent({ file, code, from, to }) {
  return EQUIVALENT.some(
    (known) => known.file === file && known.code === code && known.from === from && known.to === to,
  );
}

function byPlace(a, b) {
  return a.file.localeCompare(b.file) || a.at - b.at;
}
