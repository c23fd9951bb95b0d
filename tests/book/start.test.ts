/** `npm start` as an author meets it: the address, an edit that shows, a mistake told while the last good page stays. */
import { type ChildProcess, spawn } from "node:child_process";
import { rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { PROJECT, runCommand } from "../setup/run-command.ts";
import { TINY, writeContent } from "./write-content.ts";

const PATIENCE_MS = 60_000;

/** Starts the server on a content folder and waits for the address that it prints. */
async function startOn(
  content: string,
  more: readonly string[] = [],
): Promise<{ address: string; said: () => string }> {
  const server = spawn(
    process.execPath,
    [`${PROJECT}src/book/launch.mjs`, "start", `--content=${content}`, ...more],
    { cwd: PROJECT, stdio: ["ignore", "pipe", "pipe"] },
  );
  onTestFinished(() => stop(server));
  let said = "";
  const hear = (chunk: Buffer) => {
    said += chunk.toString();
  };
  server.stdout.on("data", hear);
  server.stderr.on("data", hear);
  const address = await until(
    () => /http:\/\/localhost:\d+\//.exec(said)?.[0],
    () => said,
  );
  return { address, said: () => said };
}

async function stop(server: ChildProcess): Promise<void> {
  const ended = new Promise((resolve) => server.once("exit", resolve));
  server.kill("SIGTERM");
  await ended;
}

/** What `look` finds, as soon as it finds something. */
async function until<T>(
  look: () => T | undefined | Promise<T | undefined>,
  said: () => string,
): Promise<T> {
  const end = Date.now() + PATIENCE_MS;
  while (Date.now() < end) {
    const found = await look();
    if (found !== undefined) return found;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`waited in vain; the server said:\n${said()}`);
}

it("opens the book, follows edits, and tells a mistake in the page", async () => {
  const content = writeContent(TINY);
  const recipe = join(content, "patterns/halves.md");
  const { address, said } = await startOn(content);
  const page = `${address}patterns/halves/plain/index.html`;
  const shows = (words: string) =>
    until(async () => {
      const html = await fetch(page).then((answer) => answer.text());
      return html.includes(words) ? html : undefined;
    }, said);

  await shows("Halves");
  const text = TINY["patterns/halves.md"] ?? "";
  writeFileSync(recipe, text.replace("title: Halves", "title: Two halves"));
  await shows("Two halves");

  const hasWide = (isThere: boolean) =>
    until(async () => {
      const html = await fetch(`${address}patterns/index.html`).then((answer) => answer.text());
      return html.includes('data-pattern="wide"') === isThere ? html : undefined;
    }, said);
  await hasWide(true);
  rmSync(join(content, "patterns/wide.md"));
  await hasWide(false);

  writeFileSync(recipe, text.replace("count: 2", "colum: 2"));
  const html = await shows("patterns/halves.md:4:");
  expect(html).toContain("Two halves");
  expect(said()).toContain("`colum` is not a key");
  expect(said()).not.toMatch(/^\s+at /m);
});

/** A server on a port that was free, and that port. */
async function listening(): Promise<{ port: number; close: () => Promise<void> }> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("no port was given");
  const close = () => new Promise<void>((resolve) => server.close(() => resolve()));
  return { port: address.port, close };
}

it("listens at the port that it is told", async () => {
  const { port, close } = await listening();
  await close();
  const { address } = await startOn(writeContent(TINY), [`--port=${port}`]);
  expect(address).toBe(`http://localhost:${port}/`);
  expect((await fetch(address)).status).toBe(200);
});

it("says so where something listens there already", async () => {
  const { port, close } = await listening();
  onTestFinished(close);
  expect(runCommand(["start", `--content=${writeContent(TINY)}`, `--port=${port}`])).toEqual({
    code: 1,
    stdout: "",
    stderr: `Port ${port} cannot be had: something else may listen there. Choose another with --port=NUMBER, or leave it out.\n`,
  });
});

it.each([
  ["is not there", "nowhere", "This folder is missing."],
  ["is a file", "book.yaml", "This is a file, not a folder."],
])("ends with the report where the content folder %s", (_, name, sentence) => {
  const folder = join(writeContent(TINY), name);
  const { code, stdout, stderr } = runCommand(["start", `--content=${folder}`]);
  expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
  expect(stderr).toBe(
    `${folder}\n  ${sentence}\n  Content is a folder with \`notebooks\`, \`patterns\`, \`strips\` and \`book.yaml\` in it.\n\n1 problem in 1 file.\n`,
  );
});
