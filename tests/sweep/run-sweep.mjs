/**
 * `npm run sweep`: the slow sweeps, whole; `-- --size=10` runs ten percent of each, `-- --seed=7` draws other cases,
 * `-- tests/fuzz` runs one of them.
 */
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    size: { type: "string", default: "100" },
    seed: { type: "string", default: "70040" },
  },
});
const number = (name) => {
  const found = Number(values[name]);
  if (!(found > 0)) throw new RangeError(`--${name} takes a number above 0, not ${values[name]}`);
  return String(found);
};
const env = { ...process.env, SWEEP_SIZE: number("size"), SWEEP_SEED: number("seed") };
/** Checks of which the gate runs a part only: all that ask how large it is. */
const CHECKS = readdirSync("tests", { recursive: true })
  .filter((name) => /^(?!sweep|fuzz).+\.test\.ts$/.test(name))
  .map((name) => `tests/${name}`)
  .filter((file) => readFileSync(file, "utf8").includes("/sweep/sweep-size.ts"))
  .sort();
/** It measures time, so that nothing runs beside it. */
const FUZZ = ["tests/fuzz/fuzz.test.ts"];

const run = (files) => {
  const vitest = ["node_modules/vitest/vitest.mjs", "run", ...files];
  return spawnSync(process.execPath, vitest, { env, stdio: "inherit" }).status ?? 1;
};
const all = positionals.length > 0 ? [positionals] : [["tests/sweep", ...CHECKS], FUZZ];
process.exitCode = Math.max(...all.map(run));
