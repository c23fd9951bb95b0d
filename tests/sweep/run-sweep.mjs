/** `npm run sweep`: the slow sweeps, whole; `-- --size=10` runs ten percent of each, `-- --seed=7` draws other cases. */
import { spawnSync } from "node:child_process";
import { parseArgs } from "node:util";

const { values } = parseArgs({
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
/** Checks of which the gate runs a part only. */
const CHECKS = [
  "tests/divide/brute-force.test.ts",
  "tests/outside/pdf-strips.test.ts",
  "tests/photo/staged-photos.test.ts",
  "tests/plan/dated-by-the-text.test.ts",
  "tests/plan/plan-spans.test.ts",
  "tests/plan/planned-by-the-text.test.ts",
  "tests/plan/properties.test.ts",
  "tests/view/fit-result.test.ts",
];
const vitest = ["node_modules/vitest/vitest.mjs", "run", "tests/sweep", ...CHECKS];
process.exitCode = spawnSync(process.execPath, vitest, { env, stdio: "inherit" }).status ?? 1;
