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
const vitest = ["node_modules/vitest/vitest.mjs", "run", "--project", "book", "tests/sweep"];
process.exitCode = spawnSync(process.execPath, vitest, { env, stdio: "inherit" }).status ?? 1;
