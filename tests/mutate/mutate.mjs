/**
 * `npm run mutate`: puts one small mistake at a time into the engine and runs its tests, which ought to fail.
 * `npm run mutate -- src/plan` does it for another folder, `-- src/plan/repair/replace-part.ts` for one file.
 */
import { spawn } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import * as esbuild from "esbuild";
import { EQUIVALENT } from "./equivalent.mjs";
import { mutantsOf, mutated } from "./mutations.mjs";

const PROJECT = new URL("../../", import.meta.url).pathname;
const SCRATCH = join(PROJECT, ".cache/mutate");
/** A test that takes so many times as long as it does with the engine as it stands, and then some, runs for ever. */
const LONGEST = 5;
const GRACE_MS = 3_000;

/** Which tests answer for a folder. */
const TESTS = {
  "src/divide": ["tests/divide"],
  "src/measure": ["tests/measure", "tests/divide", "tests/plan"],
  "src/plan": ["tests/plan"],
};

/** Tests that take long, for when the others found nothing. */
const SLOW = /brute-force|planned-by-the-text|near-fits/;

const target = process.argv[2] ?? "src/divide";
const folder = Object.keys(TESTS).find((name) => target.startsWith(name));
if (!folder) throw new Error(`there are no tests named for ${target}`);
mkdirSync(SCRATCH, { recursive: true });

const mutants = filesIn(target).flatMap((file) =>
  counted(mutantsOf(readFileSync(join(PROJECT, file), "utf8"))).map((mutant) => ({
    file,
    ...mutant,
  })),
);
const left = mutants.filter((mutant) => !isEquivalent(mutant));
console.log(`${mutants.length} mutants of ${target}, ${mutants.length - left.length} equivalent`);
const waiting = [...left];
const survivors = [];
const endless = [];
await Promise.all(Array.from({ length: availableParallelism() }, (_, worker) => work(worker)));
rmSync(SCRATCH, { recursive: true });
tell("runs for ever", endless);
tell("survived", survivors);
const killed = left.length - survivors.length;
console.log(`${killed} of ${left.length} killed: ${((100 * killed) / left.length).toFixed(1)} %`);
process.exitCode = survivors.length > 0 ? 1 : 0;

/** Takes mutants from the list until none is waiting. */
async function work(worker) {
  const bundle = join(SCRATCH, `${worker}.mjs`);
  const usual = new Map();
  await bundleTests(bundle, undefined);
  const took = (title, ms) => usual.set(title, Math.max(ms, usual.get(title) ?? 0));
  const sound = await outcome(bundle, () => 3_600_000, took);
  if (sound !== "passes") throw new Error(`the tests as they are: ${sound}`);
  const longest = (title) => LONGEST * (usual.get(title) ?? 0) + GRACE_MS;
  for (let mutant = waiting.shift(); mutant; mutant = waiting.shift()) {
    await bundleTests(bundle, mutant);
    const result = await outcome(bundle, longest);
    if (result === "passes") survivors.push(mutant);
    if (result === "late") endless.push(mutant);
  }
}

/** `passes`, `fails` at the first test that does, or `late` when one takes longer than it may. */
function outcome(bundle, longest, took = () => {}) {
  const run = spawn(process.execPath, [bundle], { stdio: ["ignore", "pipe", "ignore"] });
  return new Promise((done) => {
    let test = { title: "", start: performance.now() };
    const giveUp = () => {
      run.kill("SIGKILL");
      done("late");
    };
    let late = setTimeout(giveUp, longest(""));
    run.stdout.setEncoding("utf8").on("data", (titles) => {
      clearTimeout(late);
      took(test.title, performance.now() - test.start);
      test = { title: titles.trimEnd().split("\n").at(-1), start: performance.now() };
      late = setTimeout(giveUp, longest(test.title));
    });
    run.on("exit", (code) => {
      clearTimeout(late);
      done(code === 0 ? "passes" : "fails");
    });
  });
}

/** All tests as one file, the engine as it stands but for the mutant. */
async function bundleTests(outfile, mutant) {
  const tests = TESTS[folder].flatMap((name) => filesIn(name));
  const own = mutant?.file.replace("src/", "tests/").replace(".ts", ".test.ts");
  const rank = (test) => (test === own ? 0 : SLOW.test(test) ? 2 : 1);
  await esbuild.build({
    stdin: {
      contents: tests
        .toSorted((a, b) => rank(a) - rank(b))
        .map((test) => `import "./${test}";`)
        .join("\n"),
      resolveDir: PROJECT,
    },
    outfile,
    bundle: true,
    packages: "external",
    alias: { vitest: "./tests/mutate/plain-vitest.mjs" },
    absWorkingDir: PROJECT,
    platform: "node",
    format: "esm",
    target: "node20",
    logLevel: "warning",
    plugins: mutant ? [planted(mutant)] : [],
  });
}

function planted(mutant) {
  const path = join(PROJECT, mutant.file);
  const contents = mutated(readFileSync(path, "utf8"), mutant);
  return {
    name: "mutant",
    setup(build) {
      build.onLoad({ filter: /\.ts$/ }, (file) =>
        file.path === path ? { contents, loader: "ts" } : undefined,
      );
    },
  };
}

function filesIn(path) {
  if (path.endsWith(".ts")) return [path];
  return readdirSync(join(PROJECT, path))
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .map((name) => `${path}/${name}`);
}

/** Each with how many of its kind stand before it in its line. */
function counted(found) {
  return found.map((mutant, index) => {
    const isAlike = ({ line, from, to }) =>
      line === mutant.line && from === mutant.from && to === mutant.to;
    return { ...mutant, nth: found.slice(0, index).filter(isAlike).length };
  });
}

function isEquivalent({ file, code, from, to, nth }) {
  return EQUIVALENT.some(
    (known) =>
      known.file === file &&
      known.code === code &&
      known.from === from &&
      known.to === to &&
      (known.nth ?? nth) === nth,
  );
}

function tell(what, list) {
  const sorted = list.toSorted((a, b) => a.file.localeCompare(b.file) || a.at - b.at);
  for (const { file, line, code, from, to } of sorted)
    console.log(`${what}  ${file}:${line}  ${from} → ${to}  in  ${code}`);
}
