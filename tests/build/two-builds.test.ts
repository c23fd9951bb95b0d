/** Two builds at once into one place: one whole book lies there, each has an end that can be told, and nothing is left beside it. */
import { spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { dirname } from "node:path";
import { expect, it } from "vitest";
import { LAUNCH } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { pagesIn } from "./files-in.ts";
import { tinyBook, writeContent } from "./write-content.ts";

const TITLES = ["One", "Other"] as const;

function build(title: string, output: string): Promise<{ code: number | null; said: string }> {
  const content = writeContent({ ...TINY, "book.yaml": `title: ${title}\nnotebooks: [small]\n` });
  const words = [LAUNCH, "build", `--content=${content}`, `--output=${output}`];
  const child = spawn(process.execPath, words, { stdio: ["ignore", "ignore", "pipe"] });
  let said = "";
  child.stderr.on("data", (chunk) => {
    said += chunk;
  });
  return new Promise((resolve) => child.once("close", (code) => resolve({ code, said })));
}

it.each([["where a book lies", tinyBook]])("%s", async (_, placeOf) => {
  const output = placeOf();
  const ends = await Promise.all(TITLES.map((title) => build(title, output)));
  for (const { code, said } of ends) {
    if (code === 0) expect(said).toBe("");
    else expect(said).toBe(swappedMeanwhile(output));
  }
  expect(ends.some(({ code }) => code === 0)).toBe(true);
  const titles = new Set(
    [...pagesIn(output)].map(([, html]) => /<title>.*?(\w+)<\/title>/.exec(html)?.[1]),
  );
  expect(titles.size).toBe(1);
  expect(TITLES).toContain([...titles][0]);
  expect(readdirSync(dirname(output))).toEqual(["book"]);
});

/** Both put theirs there in the same instant. */
function swappedMeanwhile(output: string): string {
  return `The output ${output} cannot be written: somebody else wrote into it meanwhile. Choose another with --output=FOLDER.\n`;
}
