/** What edits cost while a large book is served, against reading its content once: `node serve-once.mjs CONTENT EDITS`. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { loadEngine, PROJECT } from "../../src/build/bundle/bundle-engine.mjs";

const [content, edits = "9"] = process.argv.slice(2);
const PORT = 18_000 + (process.pid % 1000);
const IDLE_MS = 250;
process.chdir(PROJECT);
const engine = await loadEngine();

const pattern = readdirSync(join(content, "patterns"))[0].replace(".md", "");
const notebook = readdirSync(join(content, "notebooks"))[0].replace(".md", "");
const recipe = join(content, "patterns", `${pattern}.md`);
const text = readFileSync(recipe, "utf8");
const page = `http://localhost:${PORT}/patterns/${pattern}/${notebook}/index.html`;

/** Processor time of all threads and wall time of what is done until the page shows some words and the process rests. */
async function cost(act, words) {
  const [cpu, wall] = [process.cpuUsage(), performance.now()];
  await act();
  const shows = () =>
    fetch(page).then(
      async (answer) => (await answer.text()).includes(words),
      () => false,
    );
  while (!(await shows())) await setTimeout(50);
  const shown = performance.now() - wall;
  for (;;) {
    const before = process.cpuUsage();
    await setTimeout(IDLE_MS);
    const { user, system } = process.cpuUsage(before);
    if (user + system < 20_000) break;
  }
  const { user, system } = process.cpuUsage(cpu);
  return { work: (user + system) / 1000, shown, memory: process.memoryUsage.rss() / 2 ** 20 };
}

const reading = await (async () => {
  const cpu = process.cpuUsage();
  await engine.readContent(content);
  const { user, system } = process.cpuUsage(cpu);
  return (user + system) / 1000;
})();

function tell(name, { work, shown, memory }) {
  const ratio = (work / reading).toFixed(1);
  console.log(
    `${name.padEnd(26)}${(work / 1000).toFixed(2).padStart(7)} s of work  × ${ratio.padStart(5)}   shown after ${(shown / 1000).toFixed(2)} s   ${memory.toFixed(0)} MiB`,
  );
}

console.log(`reading the content        ${(reading / 1000).toFixed(2)} s of work  × 1`);
const command = { name: "start", content, port: PORT };
const served = () => {
  engine.runCommand({ command, typedIn: PROJECT, project: PROJECT, engine });
};
tell("opening", await cost(served, "</html>"));
for (let round = 1; round <= Number(edits); round += 1) {
  const words = `In round ${round} of it.`;
  tell(`edit ${round}`, await cost(() => writeFileSync(recipe, `${text}\n${words}\n`), words));
  if (round % 10 !== 3) continue;
  const layout = text.replace(/^title: .*$/m, `title: Renamed ${round}`);
  tell("a new title", await cost(() => writeFileSync(recipe, layout), `Renamed ${round}`));
  const broken = text.replace(/^title:/m, "titel:");
  tell("a fault", await cost(() => writeFileSync(recipe, broken), "titel"));
  tell("its mending", await cost(() => writeFileSync(recipe, layout), `Renamed ${round}`));
}
writeFileSync(recipe, text);
process.exit(0);
