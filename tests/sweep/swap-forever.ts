/** A process that swaps one small book after another in, until it is killed: run with the output's path, and where it is to kill itself. */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { join } from "node:path";
import { freshFolder, recoverOutput } from "../../src/build/output/fresh-folder.ts";

const [output = "", call = "", count = ""] = process.argv.slice(2);
const FILES = 40;

/** So many books are made in any case, so that one is there when the next one is cut short. */
let book = 0;

async function swapInNext(): Promise<void> {
  book += 1;
  const fresh = freshFolder(output);
  await fresh.open();
  fs.mkdirSync(join(fresh.path, "patterns"));
  for (let file = 0; file < FILES; file += 1) {
    fs.writeFileSync(join(fresh.path, file % 2 ? "patterns" : "", `${file}.html`), `${book}`);
  }
  fresh.publish();
}

/** Dies after so many calls of one kind that the second book makes. */
function dieAfter(name: "renameSync" | "rmSync", calls: number): void {
  const act: (...given: never[]) => unknown = fs[name];
  let left = calls;
  Object.assign(fs, {
    [name]: (...given: never[]) => {
      const result = act(...given);
      left -= 1;
      if (left === 0) process.kill(process.pid, "SIGKILL");
      return result;
    },
  });
  syncBuiltinESMExports();
}

await recoverOutput(output);
await swapInNext();
process.stdout.write("ready\n");
if (call === "renameSync" || call === "rmSync") dieAfter(call, Number(count));
for (;;) await swapInNext();
